import { changeLinks, type LinkChange, links } from "../build.ts";
import { EXIT, type Exit, Stopped } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { WITHHELD } from "./messages.ts";
import { leftTable } from "./table.ts";
import type { Terminal } from "./terminal.ts";
import { today } from "./today.ts";

const KINDS = { rotate: "rotated", revoke: "revoked", handed: "handed" } as const;

/** The change that the options ask for; null when they only look. */
function changeOf({ texts }: Called["flags"], on: string): LinkChange | null {
  const asked = (["rotate", "revoke", "handed"] as const).filter((name) => texts[name] !== undefined);
  const [name, more] = asked;
  if (more !== undefined) throw wrong(`--${name} and --${more} are asked for at once`, "do one after the other");
  const { recipient = null, to } = texts;
  if (name === undefined) {
    if (recipient !== null || to !== undefined)
      throw wrong("--recipient and --to go with a change", "add --rotate, --revoke or --handed");
    return null;
  }
  const about = { athlete: texts[name]!, recipient, on };
  if (name !== "handed") return { ...about, kind: KINDS[name] };
  if (to === undefined) throw wrong("--handed needs --to", 'say to whom: --to "grandmother, on paper"');
  return { ...about, kind: "handed", to };
}

const wrong = (problem: string, remedy: string) => new Stopped(EXIT.usage, problem, remedy);

/** `npm run links`: who can open what, since when, and to whom it was handed out; replaces a link, makes it dead, or notes a hand-out. */
export async function linksCommand({ paths, asOf, json, flags }: Called, terminal: Terminal): Promise<Exit> {
  const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess };
  const change = changeOf(flags, today());
  const found = await (change === null
    ? links(paths, { asOf }, effects)
    : changeLinks(paths, change, { asOf }, effects)
  ).finally(effects.finished);
  if (json) {
    terminal.print(JSON.stringify(found, null, 1));
    return EXIT.done;
  }
  const rows = found.map(({ athlete, recipient, reader, withheld, since, handed }) => [
    athlete,
    recipient,
    reader,
    withheld === null ? "opens" : (WITHHELD[withheld] ?? withheld),
    since === null ? "" : `since ${since}`,
    handed.map(({ to, on }) => `${to} (${on})`).join("; "),
  ]);
  for (const line of leftTable([["athlete", "recipient", "reader", "", "", "handed to"], ...rows]))
    terminal.print(line);
  if (change !== null && change.kind !== "handed")
    terminal.print("The next build takes the old address away. Upload the site again; only then is it dead.");
  return EXIT.done;
}
