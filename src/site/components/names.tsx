import type { AthleteReport } from "../../report/schema.ts";
import { useReading } from "../reading.ts";
import type { Words } from "../words.ts";

/** A catalogue word for a closed or well-known value, else the trainer's own word, marked as such. */
export function Named(props: {
  readonly kind: string;
  readonly id: string;
  /** Inside a sentence: without its capital. */
  readonly within?: boolean;
}) {
  const { kind, id, within = false } = props;
  const { words } = useReading();
  const key = `${kind}.${id}`;
  if (!words.has(key)) return <span data-own>{ownWord(id)}</span>;
  const name = words.text(key);
  return <>{within ? name.charAt(0).toLowerCase() + name.slice(1) : name}</>;
}

/** The same as plain text. */
export function plainName(words: Words, kind: string, id: string): string {
  const key = `${kind}.${id}`;
  return words.has(key) ? words.text(key) : ownWord(id);
}

/** An id as a person would write it: "exit_tempo" and "long-tee" lose their joints. */
function ownWord(id: string): string {
  return id.replaceAll(/[-_]/g, " ");
}

/** The trainer's label of a bat or ball, by its id; roles such as `game` have words of their own. */
export function bagLabel(report: AthleteReport, id: string): string | null {
  const { bats, balls } = report.measuring;
  const found = [...bats, ...report.athlete.gameBats, ...balls].find((thing) => thing.id === id);
  return found?.label ?? null;
}

/** A bat or a ball. */
export function Gear({
  report,
  kind,
  id,
}: {
  readonly report: AthleteReport;
  readonly kind: string;
  readonly id: string;
}) {
  const label = bagLabel(report, id);
  return label === null ? <Named kind={kind} id={id} /> : <span data-own>{label}</span>;
}

export function plainGear(report: AthleteReport, words: Words, kind: string, id: string): string {
  return bagLabel(report, id) ?? plainName(words, kind, id);
}
