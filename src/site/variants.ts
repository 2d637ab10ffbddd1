import type { UnitSystem } from "./figures.ts";

/**
 * What a page of a link holds: the report, or a note in its place while the season lasts; all the numbers behind it; the athlete's card
 * for the cage.
 */
export type PagePart = "report" | "interim" | "numbers" | "card";

/** The part that lies at the link itself. */
export const isFirst = (part: PagePart): boolean => part === "report" || part === "interim";

/** One way in which a report is shown: language, units, part. */
export interface Variant {
  readonly language: string;
  readonly units: UnitSystem;
  readonly part: PagePart;
  /** Folder below the link's own, with a slash at its end, or nothing: `es/metric/numbers/`. */
  readonly folder: string;
}

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = { imperial: "metric", metric: "imperial" };

/**
 * Every way in which a link's report is shown. The athlete's language and the facility's units lie at the link itself, all others beside it, named
 * by what differs.
 *
 * @param languages that pages are offered in; the athlete's own is always among them
 */
export function variantsOf(
  own: { readonly language: string; readonly units: UnitSystem },
  languages: readonly string[],
  parts: readonly PagePart[],
): Variant[] {
  const offered = [own.language, ...languages.filter((language) => language !== own.language)];
  return offered.flatMap((language) =>
    [own.units, OTHER[own.units]].flatMap((units) =>
      parts.map((part) => ({
        language,
        units,
        part,
        folder: [
          language === own.language ? "" : `${language}/`,
          units === own.units ? "" : `${units}/`,
          isFirst(part) ? "" : `${part}/`,
        ].join(""),
      })),
    ),
  );
}

/** Way from a variant's folder to the link's own: `""`, `"../../"`. */
export const wayUp = ({ folder }: Pick<Variant, "folder">): string => "../".repeat(folder.split("/").length - 1);

/** Way from one variant's page to another's. */
export const wayTo = (from: Pick<Variant, "folder">, to: Pick<Variant, "folder">): string =>
  `${wayUp(from)}${to.folder}index.html`;
