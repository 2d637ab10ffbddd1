import { useAthlete } from "../reading.ts";
import { Say } from "./say.tsx";
import { WeekTable } from "./work.tsx";

const WEEKS = 4;

/** Work of the season's last weeks. */
export function ClubWeeks() {
  const { weeks } = useAthlete().report.work;
  if (weeks.length === 0)
    return (
      <p>
        <Say k="work.none" />
      </p>
    );
  return <WeekTable from={Math.max(0, weeks.length - WEEKS)} short />;
}
