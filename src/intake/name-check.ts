import type { Problem } from "../schema/season.ts";
import type { Known } from "./known.ts";
import { near } from "./near.ts";
import type { ReadPage } from "./page.ts";
import { fault, remark, withSuggestion } from "./problem.ts";
import { dotted } from "./schema-issues.ts";

type Path = readonly (string | number)[];
type List = Exclude<keyof Known, "bats">;

/** Holds the names on one page against the lists that declare them. */
export class NameCheck {
  readonly problems: Problem[] = [];
  readonly #page: Pick<ReadPage<unknown>, "at">;
  readonly #known: Known;
  readonly #athlete: string | null;

  constructor(page: Pick<ReadPage<unknown>, "at">, known: Known, athlete: string | null) {
    this.#page = page;
    this.#known = known;
    this.#athlete = athlete;
  }

  /** Nothing is said about an absent name, or when the list is not known. */
  name(
    list: List,
    path: Path,
    name: string | undefined,
    allowed: ReadonlySet<string> | null = this.#known[list],
  ): void {
    const found = this.#unlisted(list, path, name, allowed);
    if (found !== null) this.problems.push(fault("not-in-list", found.at, found.args, this.#athlete));
  }

  /** A name that is only shown: where nobody has described it, it stands for itself, and that is remarked on. */
  mention(list: List, path: Path, name: string | undefined): void {
    const found = this.#unlisted(list, path, name, this.#known[list]);
    if (found !== null) this.problems.push(remark("not-in-list", found.at, found.args));
  }

  mentions(list: List, path: Path, names: readonly string[] | undefined): void {
    for (const [index, name] of (names ?? []).entries()) this.mention(list, [...path, index], name);
  }

  #unlisted(
    list: List,
    path: Path,
    name: string | undefined,
    allowed: ReadonlySet<string> | null,
  ): Pick<Problem, "at" | "args"> | null {
    if (name === undefined || allowed === null || allowed.has(name)) return null;
    const args = withSuggestion({ key: dotted(path), found: name, list }, near(name, allowed));
    return { at: this.#page.at(path, "value"), args };
  }

  names(list: List, path: Path, names: readonly string[] | undefined): void {
    for (const [index, name] of (names ?? []).entries()) this.name(list, [...path, index], name);
  }

  /** The parts of a condition, each one name or several. */
  condition(path: Path, condition: Readonly<Record<string, unknown>> | undefined): void {
    const lists = { environment: "environments", implement: "implements", ball: "balls" } as const;
    for (const [key, list] of Object.entries(lists)) {
      const value = condition?.[key];
      if (typeof value === "string") this.name(list, [...path, key], value);
      else if (Array.isArray(value)) this.names(list, [...path, key], value);
    }
  }

  /** Things with a metric and, perhaps, a condition: measures, goals, tests, aims. */
  measured(
    path: Path,
    list: readonly { metric?: string; condition?: object | undefined; zone?: string }[] | undefined,
  ): void {
    for (const [index, item] of (list ?? []).entries()) {
      this.name("metrics", [...path, index, "metric"], item.metric);
      this.condition([...path, index, "condition"], item.condition as Record<string, unknown> | undefined);
      this.name("zones", [...path, index, "zone"], item.zone);
    }
  }

  /** No two entries of a list share their id. */
  unique(path: Path, list: readonly { readonly id: string }[] | undefined): void {
    const seen = new Set<string>();
    for (const [index, { id }] of (list ?? []).entries()) {
      const at = [...path, index, "id"];
      if (seen.has(id))
        this.problems.push(
          fault("repeated-id", this.#page.at(at, "value"), { key: dotted(at), found: id }, this.#athlete),
        );
      seen.add(id);
    }
  }
}
