import { dirname } from "node:path/posix";
import type { Sides } from "../log/streams.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import { deviceSide } from "./device-side.ts";

/** Rows of one sensor on one day, by one athlete. */
export interface SensorRows {
  readonly athlete: number;
  readonly folder: string;
  readonly rows: RowAt[];
}

/** Rows of one day that may be paired: sensors, and the screens of the day. */
export interface DayRows {
  readonly day: number;
  readonly sensors: SensorRows[];
  readonly screens: { readonly folder: string; readonly rows: RowAt[] }[];
}

/** A row that stands, or that only the session log could not place: its partner may. */
const open = (fates: RowFates, at: RowAt): boolean =>
  fates.files[at.table]?.table.kept[at.row] === 1 || fates.reasonOf(at) === "unassigned-block";

/** Days on which one device saw bats alone and another saw balls alone. Files of one folder are one device's. */
export function dayRows(fates: RowFates, sides: Sides): DayRows[] {
  const days = new Map<number, DayRows>();
  for (const [index, file] of fates.files.entries()) {
    const side = deviceSide(file, sides);
    if (side === null) continue;
    const { table } = file;
    const folder = dirname(file.file);
    for (let row = 0; row < table.n; row++) {
      const at = { table: index, row };
      if (!open(fates, at)) continue;
      const day = table.day[row] ?? Number.NaN;
      const athlete = table.athlete[row] ?? -1;
      const found = days.get(day) ?? { day, sensors: [], screens: [] };
      days.set(day, found);
      if (side === "ball") placeIn(found.screens, (one) => one.folder === folder, { folder, rows: [] }).rows.push(at);
      else if (athlete >= 0) {
        const same = (one: SensorRows) => one.athlete === athlete && one.folder === folder;
        placeIn(found.sensors, same, { athlete, folder, rows: [] }).rows.push(at);
      }
    }
  }
  return [...days.values()]
    .filter(({ sensors, screens }) => sensors.length > 0 && screens.length > 0)
    .sort((one, other) => one.day - other.day);
}

function placeIn<T>(list: T[], same: (one: T) => boolean, fresh: T): T {
  const found = list.find(same);
  if (found !== undefined) return found;
  list.push(fresh);
  return fresh;
}
