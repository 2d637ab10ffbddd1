import { contrast } from "../schema/colour.ts";

/** A colour's role with its values by day and by night, and how far it stands out from the paper. */
interface Role {
  readonly name: string;
  readonly day: string;
  readonly night: string;
  /** WCAG contrast with the paper, 1 to 21. */
  readonly onDay: number;
  readonly onNight: number;
}

/** A size or a distance of the style sheet. */
interface Step {
  readonly name: string;
  readonly value: string;
}

/** What the page about the look shows, read from the style sheet itself. */
export interface StyleView {
  readonly roles: readonly Role[];
  readonly type: readonly Step[];
  readonly gaps: readonly Step[];
}

const steps = (css: string, prefix: string): Step[] =>
  [...css.matchAll(new RegExp(`--(${prefix}-[\\w-]+):\\s*([^;]+);`, "g"))].map(([, name, value]) => ({
    name: name!,
    value: value!,
  }));

/**
 * Roles, sizes and distances of a style sheet; what comes before its first `@media` is by day, what comes after it by night.
 *
 * @throws when a colour has no value by night
 */
export function styleView(css: string): StyleView {
  const [day = "", night = ""] = css.split("@media");
  const colours = (part: string) =>
    new Map([...part.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name, value]) => [name!, value!]));
  const [byDay, byNight] = [colours(day), colours(night)];
  const paper = { day: byDay.get("paper")!, night: byNight.get("paper")! };
  const roles = [...byDay].map(([name, value]) => {
    const dark = byNight.get(name);
    if (dark === undefined) throw new Error(`the colour ${name} has no value by night`);
    return { name, day: value, night: dark, onDay: contrast(value, paper.day), onNight: contrast(dark, paper.night) };
  });
  return { roles, type: steps(day, "type"), gaps: steps(day, "gap") };
}
