import type { HittingReport } from "../hitting-schema.ts";
import type { AthleteReport, Series } from "../schema.ts";
import { flightReport, planeReport } from "./ball.ts";
import { carryOverReport, contactShares } from "./carry-over.ts";
import { contactReport } from "./contact.ts";
import { fittingReport } from "./fitting.ts";
import { growthReport } from "./growth.ts";
import { implementsReport } from "./implements.ts";
import { loadReport } from "./load.ts";
import { machineReport } from "./machine.ts";
import { recoveryReport, roundsOf, roundsReport } from "./rounds.ts";
import type { Hitting } from "./swings.ts";
import { unseenReport } from "./unseen.ts";
import { worthReport } from "./worth.ts";

/** What a trainer means by "it carries over": rounds, environments, bats, plane, balls, contact, worth, machine and growth. */
export function hittingReport(
  hitting: Hitting,
  series: readonly Series[],
  person: AthleteReport["athlete"],
  asOf: string,
): HittingReport {
  const rounds = roundsOf(hitting);
  return {
    load: loadReport(hitting, asOf),
    rounds: roundsReport(hitting, rounds),
    recovery: recoveryReport(hitting, rounds),
    carryOver: carryOverReport(hitting),
    contactShares: contactShares(hitting),
    implements: implementsReport(hitting),
    fittings: fittingReport(hitting),
    plane: planeReport(hitting),
    flight: flightReport(hitting),
    contact: contactReport(hitting),
    worth: worthReport(hitting, series),
    machine: machineReport(hitting),
    unseen: unseenReport(hitting),
    growth: growthReport(person, hitting.season.facility.season, series),
  };
}
