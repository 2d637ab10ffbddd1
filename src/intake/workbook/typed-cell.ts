import { MS_PER_DAY } from "../calendar-day.ts";
/** A cell of a workbook. Dates are what the sheet's own clock shows, kept as if that were UTC. */
export type TypedCell = string | number | boolean | Date | null;

/** Before this day a date cell is a clock time alone: days are counted from the end of 1899. */
const FIRST_DAY = Date.UTC(1900, 0, 2);
/** Clock times are fractions of a day: what is this near to a second is that second. */
const FUZZ_MS = 2;

/**
 * The cell as it would stand in a CSV file: days and clock times in ISO 8601, numbers with the decimal mark given. Blank is
 * the empty text.
 */
export function writtenCell(cell: TypedCell, decimal: "." | ","): string {
  if (cell === null) return "";
  if (typeof cell === "string") return cell;
  if (typeof cell === "boolean") return String(cell);
  return typeof cell === "number" ? writtenNumber(cell).replace(".", decimal) : writtenMoment(cell.getTime());
}

const writtenNumber = (value: number): string => {
  const text = String(value);
  return text.includes("e") ? value.toFixed(12).replace(/\.?0+$/, "") : text;
};

function writtenMoment(exact: number): string {
  if (!Number.isFinite(exact)) return "";
  const second = Math.round(exact / 1000) * 1000;
  const ms = Math.abs(exact - second) <= FUZZ_MS ? second : Math.round(exact);
  const [day = "", clock = ""] = new Date(ms).toISOString().slice(0, -1).split("T");
  const time = clock.replace(/\.000$/, "");
  if (ms < FIRST_DAY) return time;
  return ms % MS_PER_DAY === 0 ? day : `${day}T${time}`;
}
