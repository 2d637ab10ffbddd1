import { useAthlete } from "../reading.ts";
import { wayUp } from "../variants.ts";

/** Whose page it is: the facility's logo, where it has one, and its name. */
export function Imprint() {
  const { report, assets, variant } = useAthlete();
  return (
    <p class="imprint">
      {assets.logo === null ? null : <img class="logo" src={`../../${wayUp(variant)}${assets.logo}`} alt="" />}
      <span data-own>{report.facility.name}</span>
    </p>
  );
}
