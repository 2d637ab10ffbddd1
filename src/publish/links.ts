import type { LinkState } from "../schema/link-state.ts";
import type { Reader } from "../schema/reasons.ts";
import { csv } from "./csv.ts";
import { firstRotation, historyOf } from "./link-state.ts";
import { tokenFor } from "./token.ts";

/** A recipient as the links see one: who is to be given the report, and why it may not be. */
export interface Audience {
  readonly recipient: string;
  readonly reader: Reader;
  readonly label: string | null;
  /** Last day on which the link is meant to open. */
  readonly until: string | null;
  readonly sealed: boolean;
  /** Null when the report may be published, else the reason why not. */
  readonly withheld: string | null;
  /** Day on which somebody agreed. */
  readonly agreedOn: string | null;
}

/** An athlete as the links see one. */
export interface LinkSubject {
  readonly id: string;
  readonly audiences: readonly Audience[];
}

export interface Link {
  readonly athlete: string;
  readonly recipient: string;
  readonly reader: Reader;
  readonly label: string | null;
  readonly token: string;
  /** Address below the site's root: `r/<token>/` or `c/<token>/`. */
  readonly path: string;
  /** Null when the link is live. */
  readonly withheld: string | null;
  /** Day from which it may open: of its last new address, else of the agreement. */
  readonly since: string | null;
  readonly handed: LinkState["handed"];
  /** How often it was replaced. */
  readonly rotation: number;
  readonly until: string | null;
  readonly sealed: boolean;
  /** What opens a sealed report, and stands behind `#` in its address; null for one that is not sealed. */
  readonly key: string | null;
  /** Words that a sealed report asks for besides. */
  readonly passphrase: string | null;
}

/** Folder of each reader's pages. */
export const READER_FOLDER: Readonly<Record<Reader, string>> = { family: "r", club: "c" };

/**
 * Every link of the season in the order of athletes, then of their recipients. A link that is not live is listed too, with its
 * reason. Those that are sealed have no key yet.
 *
 * @param state what was done with links so far
 * @param asOf day `yyyy-mm-dd`; a recipient whose `until` lies before it has no live link
 * @throws when two links would be the same
 */
export function linksOf(secret: Uint8Array, state: LinkState, subjects: readonly LinkSubject[], asOf: string): Link[] {
  const links = subjects.flatMap(({ id, audiences }) =>
    audiences.map(({ recipient, reader, label, until, sealed, withheld, agreedOn }): Link => {
      const { rotation: times, since, revoked, handed, passphrase } = historyOf(state, { athlete: id, recipient });
      const rotation = firstRotation(state, secret, id) + times;
      const token = tokenFor(secret, { athlete: id, recipient, reader, rotation });
      const ended = revoked ? "link-revoked" : until !== null && until < asOf ? "link-ended" : null;
      return {
        ...{ athlete: id, recipient, reader, label, token, rotation, until, sealed, handed },
        path: `${READER_FOLDER[reader]}/${token}/`,
        withheld: withheld ?? ended,
        since: since ?? agreedOn,
        key: null,
        passphrase: sealed ? passphrase : null,
      };
    }),
  );
  const seen = new Map<string, Link>();
  for (const link of links) {
    const twin = seen.get(link.token);
    if (twin) {
      throw new Error(`${link.athlete}/${link.recipient} and ${twin.athlete}/${twin.recipient} would share one link`);
    }
    seen.set(link.token, link);
  }
  return links;
}

/** A place of a link's page with the key that opens it, where it is sealed. No browser sends the key to the host. */
export const withKey = (place: string, { key }: Pick<Link, "key">): string =>
  key === null ? place : `${place}#${key}`;

/** A link's address: below the published site, or its path alone where nobody has said where that is. */
export const addressOf = (link: Pick<Link, "path" | "key">, siteUrl: string | null): string =>
  withKey(siteUrl === null ? link.path : `${siteUrl}${siteUrl.endsWith("/") ? "" : "/"}${link.path}`, link);

/**
 * `_desk/links.csv`. A link that is not live has a blank address and says why.
 *
 * @param siteUrl address of the published site, or null: then the path alone stands there
 */
export function linksCsv(links: readonly Link[], siteUrl: string | null): string {
  return csv(
    ["athlete", "recipient", "reader", "link", "published"],
    links.map((link) => [
      link.athlete,
      link.recipient,
      link.reader,
      link.withheld === null ? addressOf(link, siteUrl) : null,
      link.withheld === null ? "yes" : `no: ${link.withheld}`,
    ]),
    "spreadsheet",
  );
}
