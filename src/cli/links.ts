import { changeLinks, type Link, type LinkChange, links } from "../build.ts";
import { EXIT, type Exit, Stopped } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { WITHHELD } from "./messages.ts";
import { orStop } from "./new/ask.ts";
import { leftTable } from "./table.ts";
import type { Terminal } from "./terminal.ts";
import { today } from "./today.ts";

const CHANGES = ["rotate", "revoke", "handed", "passphrase", "no-passphrase"] as const;

/** The change that the options ask for; null when they only look. */
async function changeOf({ texts }: Called["flags"], on: string, interactive: boolean): Promise<LinkChange | null> {
  const asked = CHANGES.filter((name) => texts[name] !== undefined);
  const [name, more] = asked;
  if (more !== undefined) throw wrong(`--${name} and --${more} are asked for at once`, "do one after the other");
  const { recipient = null, to, phrase } = texts;
  if (name === undefined) {
    if (recipient !== null || to !== undefined || phrase !== undefined)
      throw wrong(
        "--recipient, --to and --phrase go with a change",
        "add --rotate, --revoke, --handed, --passphrase or --no-passphrase",
      );
    return null;
  }
  const about = { athlete: texts[name]!, recipient, on };
  switch (name) {
    case "rotate":
      return { ...about, kind: "rotated" };
    case "revoke":
      return { ...about, kind: "revoked" };
    case "passphrase":
      return { ...about, kind: "passphrase", words: phrase ?? (await askForWords(interactive)) };
    case "no-passphrase":
      return { ...about, kind: "passphrase", words: null };
    case "handed":
      if (to === undefined) throw wrong("--handed needs --to", 'say to whom: --to "grandmother, on paper"');
      return { ...about, kind: "handed", to };
  }
}

/** Asked for, words stay out of the shell's history. */
async function askForWords(interactive: boolean): Promise<string> {
  if (!interactive) throw wrong("--passphrase needs words", 'give them: --phrase "four quiet words"');
  const { password } = await import("@clack/prompts");
  return orStop(await password({ message: "The words that the report asks for:" }));
}

/** A link as it may be printed: that it asks for words, not which. */
export const printed = ({ passphrase, ...link }: Link) => ({ ...link, asksForWords: passphrase !== null });

/** What a link's pages are like on the host. */
function likeness({ sealed, passphrase, until }: Link): string {
  const kind = sealed ? (passphrase === null ? "sealed" : "sealed, asks for words") : "not sealed";
  return until === null ? kind : `${kind}, until ${until}`;
}

const wrong = (problem: string, remedy: string) => new Stopped(EXIT.usage, problem, remedy);

/** `npm run links`: who can open what, since when, and to whom it was handed out; replaces a link, makes it dead, or notes a hand-out. */
export async function linksCommand({ paths, asOf, json, flags }: Called, terminal: Terminal): Promise<Exit> {
  const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess };
  const change = await changeOf(flags, today(), terminal.interactive);
  const found = await (change === null
    ? links(paths, { asOf }, effects)
    : changeLinks(paths, change, { asOf }, effects)
  ).finally(effects.finished);
  if (json) {
    terminal.print(JSON.stringify(found.map(printed), null, 1));
    return EXIT.done;
  }
  const rows = found.map((link) => [
    link.athlete,
    link.recipient,
    link.reader,
    link.withheld === null ? "opens" : (WITHHELD[link.withheld] ?? link.withheld),
    link.since === null ? "" : `since ${link.since}`,
    likeness(link),
    link.handed.map(({ to, on }) => `${to} (${on})`).join("; "),
  ]);
  for (const line of leftTable([["athlete", "recipient", "reader", "", "", "on the host", "handed to"], ...rows]))
    terminal.print(line);
  if (change?.kind === "rotated" || change?.kind === "revoked")
    terminal.print("The next build takes the old address away. Upload the site again; only then is it dead.");
  if (change?.kind === "passphrase")
    terminal.print(
      "The next build seals it so. Say the words by voice, never beside the link, and upload the site again.",
    );
  return EXIT.done;
}
