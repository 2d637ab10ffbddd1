import { type DayStyle, formatDay } from "../figures.ts";
import { readText } from "../pointer.ts";
import { useReading } from "../reading.ts";

export interface DayProps {
  /** JSON pointer to an ISO day. */
  readonly at: string;
  readonly form?: DayStyle;
}

/** A day of the report, in the reader's way of writing days. */
export function Day({ at, form = "long" }: DayProps) {
  const { source, words } = useReading();
  const day = readText(source, at);
  return <time dateTime={day}>{formatDay(day, form, words.language)}</time>;
}
