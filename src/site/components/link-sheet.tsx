import encodeQR from "qr";
import type { AssetNames } from "../assets.ts";
import type { DeskInput, DeskLink } from "../desk-view.ts";
import { wordsFor } from "../words.ts";
import { Day } from "./day.tsx";
import { DeskPage } from "./desk-page.tsx";
import { Say } from "./say.tsx";

/** Cells of quiet ground that a reader of QR codes needs on every side: four, ISO/IEC 18004. */
const QUIET = 4;

/** The address as a QR code: dark on light, by day and by night. */
function Code({ address }: { readonly address: string }) {
  const cells = encodeQR(address, "raw", { ecc: "medium", border: QUIET });
  const size = cells.length;
  const dark = cells.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg class="code" viewBox={`0 0 ${size} ${size}`} aria-hidden="true" shape-rendering="crispEdges">
      <rect width={size} height={size} fill="#ffffff" />
      <path d={dark.join("")} fill="#000000" />
    </svg>
  );
}

/** Does a link stand on its athlete's sheet? */
export const hasSheet = (link: DeskLink): link is DeskLink & { readonly address: string } =>
  link.withheld === null && link.address !== null;

/** One sheet for each athlete: every live link with its code and address, to be handed to the one it is for. Null where nothing is live. */
export function linkSheet(
  { facility }: Pick<DeskInput, "facility">,
  { report, links }: DeskInput["athletes"][number],
  assets: AssetNames,
) {
  const live = links.filter(hasSheet);
  if (live.length === 0) return null;
  const words = wordsFor("en");
  const name = report.athlete.displayName;
  return (
    <DeskPage
      title={words.text("sheet.title", { name })}
      source={live}
      words={words}
      facility={facility}
      assets={assets}
      head={
        <>
          <h1 data-own>{name}</h1>
          <p class="facts">
            <Say k="sheet.about" />
          </p>
        </>
      }
    >
      {live.map(({ recipient, reader, address, sealed, asks, until }, index) => (
        <section key={address} class="sheet" aria-labelledby={`link-${index}`}>
          <h2 id={`link-${index}`} data-own>
            {recipient}
          </h2>
          <Code address={address} />
          <div>
            <p>
              <Say k={reader === "family" ? "desk.family" : "desk.club"} />
            </p>
            <p>
              <a href={address} data-own>
                {address}
              </a>
            </p>
            {sealed ? (
              <p>
                <Say k="sheet.sealed" />
              </p>
            ) : null}
            {asks ? (
              <p>
                <Say k="sheet.asks" />
              </p>
            ) : null}
            {until === null ? null : (
              <p>
                <Say k="sheet.until" with={{ day: <Day at={`/${index}/until`} /> }} />
              </p>
            )}
            <p class="care">
              <Say k="sheet.care" />
            </p>
          </div>
        </section>
      ))}
    </DeskPage>
  );
}
