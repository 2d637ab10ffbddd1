import type { LinkState } from "../schema/link-state.ts";
import type { Profile } from "../schema/profile.ts";
import { READERS, type Reader } from "../schema/reasons.ts";
import { csv } from "./csv.ts";
import { historyOf } from "./link-state.ts";
import { tokenFor } from "./token.ts";

/** An athlete as the links see one: who may be given the report, and why somebody may not. */
export interface LinkSubject {
  readonly id: string;
  readonly recipients: Profile["recipients"];
  /** For each reader null when the report may be published, else the reason why not. */
  readonly withheld: Readonly<Record<Reader, string | null>>;
  /** Day on which somebody agreed, for each reader who may be given the report. */
  readonly agreedOn: Readonly<Record<Reader, string | null>>;
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
}

/** Folder of each reader's pages. */
export const READER_FOLDER: Readonly<Record<Reader, string>> = { family: "r", club: "c" };

/**
 * Every link of the season in the order of athletes, then of their recipients. Without `recipients` there is one for
 * each kind of reader. A link that is not live is listed too, with its reason.
 *
 * @param state what was done with links so far
 * @param asOf day `yyyy-mm-dd`; a recipient whose `until` lies before it has no live link
 * @throws when two links would be the same
 */
export function linksOf(secret: Uint8Array, state: LinkState, subjects: readonly LinkSubject[], asOf: string): Link[] {
  const links = subjects.flatMap(({ id, recipients, withheld, agreedOn }) =>
    (recipients ?? READERS.map((reader) => ({ id: reader, reader, label: undefined, until: undefined }))).map(
      ({ id: recipient, reader, label, until }): Link => {
        const { rotation, since, revoked, handed } = historyOf(state, { athlete: id, recipient });
        const token = tokenFor(secret, { athlete: id, recipient, reader, rotation });
        const ended = revoked ? "link-revoked" : until !== undefined && until < asOf ? "link-ended" : null;
        const path = `${READER_FOLDER[reader]}/${token}/`;
        return {
          athlete: id,
          recipient,
          reader,
          label: label ?? null,
          token,
          path,
          withheld: withheld[reader] ?? ended,
          since: since ?? agreedOn[reader],
          handed,
        };
      },
    ),
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

/** A link's address: below the published site, or its path alone where nobody has said where that is. */
export const addressOf = ({ path }: Pick<Link, "path">, siteUrl: string | null): string =>
  siteUrl === null ? path : `${siteUrl}${siteUrl.endsWith("/") ? "" : "/"}${path}`;

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
