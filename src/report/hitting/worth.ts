import { weatherDensity } from "../../hitting/air.ts";
import { exitSpeed } from "../../hitting/collision.ts";
import { fly } from "../../hitting/flight.ts";
import { METRES_PER_FOOT, MPS_PER_MPH } from "../../schema/units.ts";
import { median } from "../../stats/median.ts";
import type { HittingReport } from "../hitting-schema.ts";
import type { Series } from "../schema.ts";
import { ballFor, plateSpeed } from "./contact.ts";
import { type Hitting, rowsFor } from "./swings.ts";

type Worth = NonNullable<HittingReport["worth"]>;

/** A line drive well hit: the middle of what the flight model was fitted to. */
const LAUNCH = 28;
const BACKSPIN = 2000;
/** Height at which a ball meets the bat, m: 3 ft, as the published runs of the model have it. */
const HEIGHT = 3 * METRES_PER_FOOT;
/** Exit speeds that the flight model was fitted to, mph. */
const FITTED_FROM = 90;
/** Slopes of carry differ by so much between sources; the range is widened by it. */
const SLOPE_DOUBT = 0.2;
const STANDARD_PA = 101_325;
const ROOM_CELSIUS = 21.1;
const SPREADS = [1 - SLOPE_DOUBT, 1 + SLOPE_DOUBT];

/** The measure whose change is weighed: bat speed with the game bat nearest to a game that has a change. */
const NEAREST = ["game", "live", "machine", "overhand", "front-toss", "side-toss", "tee"];

/** What the athlete's own change of bat speed is worth, by the models; null where nothing of it can be said. */
export function worthReport(hitting: Hitting, series: readonly Series[]): Worth | null {
  const weighed = series
    .map((one, index) => ({ one, index }))
    .filter(({ one }) => one.metric === "bat_speed" && one.measure !== null && one.change !== null && judged(one))
    .sort((a, b) => place(a.one) - place(b.one) || a.index - b.index)[0];
  const { change, trend } = weighed?.one ?? {};
  if (weighed === undefined || !change || !trend?.sessionLine) return null;
  const { environment = null, side = null } = weighed.one.condition;
  const at = circumstances(hitting, environment, side);
  if (at === null) return null;
  const { q, plate } = at;
  const start = trend.sessionLine.start;
  const gains = [change.estimate, ...change.ci95];
  const exit = gains.map((gain) => (1 + q) * gain);
  return {
    series: weighed.index,
    environment,
    side,
    batSpeed: { start, change: change.estimate, ci95: [...change.ci95] },
    q,
    pitchAtPlate: plate,
    exit: { estimate: exit[0]!, range: [exit[1]!, exit[2]!] },
    carry: carryOf(hitting, start, gains, q, plate, at.baseball),
  };
}

/** A change that too few days stand behind is worth nothing yet. */
const judged = ({ change }: Series): boolean => change?.verdict !== "too-few" && change?.verdict !== "not-a-measure";

const place = ({ condition }: Series): number => {
  const found = NEAREST.indexOf(condition.environment ?? "");
  return found === -1 ? NEAREST.length : found;
};

/** The ball's q and the usual pitch at the plate of the swings behind the series. */
function circumstances(hitting: Hitting, environment: string | null, side: string | null) {
  const rows = rowsFor("bat", hitting).filter((row) => {
    const condition = hitting.conditions[row]!;
    return (
      (environment === null || condition.environment === environment) &&
      (side === null || condition.side === side) &&
      condition.implement === "game"
    );
  });
  const balls = rows.map((row) => ballFor(hitting, hitting.conditions[row]!.ball ?? null));
  const qs = balls.flatMap((of) => (of?.q == null ? [] : [of.q]));
  const plates = rows.flatMap((row) => plateSpeed(hitting, row) ?? []);
  const [q, plate] = [median(qs), median(plates)];
  if (q === null || plate === null) return null;
  return { q, plate, baseball: hitting.athlete.profile.sport === "baseball" };
}

/** Feet that the gain adds to a well-hit fly ball, as a range to the nearest five; adult baseball alone bears the model. */
function carryOf(
  { season, athlete }: Hitting,
  start: number,
  gains: readonly number[],
  q: number,
  plate: number,
  baseball: boolean,
): Worth["carry"] {
  if (!baseball || start <= 0) return null;
  const density = densityOf(season, athlete.reps.words.site?.find((site) => site !== null) ?? null);
  const far = (bat: number) => {
    const speed = exitSpeed(q, plate, Math.max(bat, 1)) * MPS_PER_MPH;
    return fly({ speed, angle: LAUNCH, backspin: BACKSPIN, height: HEIGHT }, density).carry / METRES_PER_FOOT;
  };
  const feet = gains.map((gain) => far(start + gain) - far(start));
  const ends = feet.slice(1).flatMap((one) => SPREADS.map((doubt) => one * doubt));
  const five = (value: number) => 5 * Math.round(value / 5) + 0;
  return {
    estimate: five(feet[0]!),
    range: [five(Math.min(...ends)), five(Math.max(...ends))],
    launch: LAUNCH,
    backspin: BACKSPIN,
    airKgM3: density,
    extrapolated: exitSpeed(q, plate, start) < FITTED_FROM,
  };
}

/** Air of the site where the athlete swung, else of a room at sea level. */
function densityOf({ facility }: Hitting["season"], id: string | null): number {
  const site = facility.sites?.find((one) => one.id === id) ?? facility.sites?.[0];
  const fahrenheit = site?.temperature_f;
  return weatherDensity({
    celsius: fahrenheit === undefined ? ROOM_CELSIUS : ((fahrenheit - 32) * 5) / 9,
    humidity: 0.5,
    seaLevelPa: STANDARD_PA,
    altitudeM: (site?.altitude_ft ?? 0) * METRES_PER_FOOT,
  });
}
