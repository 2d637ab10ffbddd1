import type { Profile } from "../../schema/profile.ts";
import { isoDay } from "../calendar-day.ts";
import type { SwingTable } from "../swing-table.ts";
import type { LogRow } from "./log-rows.ts";

/**
 * Who trained on a day. A member of a group was there with reps of that day, or when the log names them. Where no member
 * of the group has reps under their own name (nothing was measured, or by a device that knows no names), everybody was
 * there who was not away.
 */
export function presence(
  tables: readonly SwingTable[],
  athletes: readonly string[],
  rows: readonly LogRow[],
  profiles: ReadonlyMap<string, Pick<Profile, "away">>,
): (athlete: string, date: string) => boolean {
  const withReps = new Set<string>();
  const nameless = new Set<string>();
  for (const table of tables) addDays(table, athletes, withReps, nameless);
  const named = new Set<string>();
  const byReps = new Map<string, boolean>();
  for (const { owner, block } of rows) {
    if ("athlete" in owner) named.add(`${owner.athlete} ${block.date}`);
    else
      for (const id of owner.members) {
        const key = `${id} ${block.date}`;
        const some = owner.members.some((other) => withReps.has(`${other} ${block.date}`));
        byReps.set(key, (byReps.get(key) ?? true) && some);
      }
  }
  return (athlete, date) => {
    const key = `${athlete} ${date}`;
    if (withReps.has(key) || named.has(key)) return true;
    if (byReps.get(key) === true && !nameless.has(date)) return false;
    return !(profiles.get(athlete)?.away ?? []).some(({ from, to }) => from <= date && date <= to);
  };
}

function addDays(table: SwingTable, athletes: readonly string[], withReps: Set<string>, nameless: Set<string>): void {
  let [lastDay, lastAthlete] = [Number.NaN, Number.NaN];
  for (let row = 0; row < table.n; row++) {
    const day = table.day[row] ?? Number.NaN;
    const athlete = table.athlete[row] ?? -1;
    if (table.kept[row] !== 1 || (day === lastDay && athlete === lastAthlete)) continue;
    [lastDay, lastAthlete] = [day, athlete];
    if (athlete < 0) nameless.add(isoDay(day));
    else withReps.add(`${athletes[athlete]} ${isoDay(day)}`);
  }
}
