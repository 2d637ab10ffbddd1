/** Options that only some commands have. */
const TEXTS = {
  map: ["date-form", "time-form", "delimiter", "decimal", "encoding", "sheet", "zone", "name"],
  new: [
    "id",
    "name",
    "born",
    "sport",
    "level",
    "sex",
    "bats",
    "throws",
    "joined",
    "game-bat",
    "language",
    "guardian",
    "group",
    "season-name",
    "start",
    "end",
    "time-zone",
    "units",
    "contact",
  ],
  links: ["rotate", "revoke", "handed", "recipient", "to", "passphrase", "phrase", "no-passphrase"],
} as const;
const LISTS = { map: ["column", "ignore", "words", "fixed"], new: ["alias", "position"] } as const;
const SWITCHES = {
  build: ["interim"],
  pdf: ["interim"],
  start: ["interim"],
  check: ["all", "codes"],
  map: ["yes", "replace"],
  new: ["yes"],
  forget: ["yes"],
} as const;

type Values = Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;

/** Options as they were given. */
export interface Flags {
  readonly all: boolean;
  readonly codes: boolean;
  readonly yes: boolean;
  readonly replace: boolean;
  readonly interim: boolean;
  /** Option -> its text; one that was not given is not there. */
  readonly texts: Readonly<Record<string, string>>;
  /** Option -> its texts in the order given; nothing for one that was not given. */
  list(name: string): readonly string[];
}

const each = <T>(kind: Readonly<Record<string, readonly string[]>>, value: T): Record<string, T> =>
  Object.fromEntries(
    Object.values(kind)
      .flat()
      .map((name) => [name, value]),
  );

/** All of them, as `parseArgs` wants them. */
export const FLAGS = {
  ...each(TEXTS, { type: "string" as const }),
  ...each(LISTS, { type: "string" as const, multiple: true }),
  ...each(SWITCHES, { type: "boolean" as const }),
};

/** The first option given that the command does not have; null when there is none. */
export function strangeFlag(values: Values, command: string): string | null {
  const own = [TEXTS, LISTS, SWITCHES].flatMap(
    (kind: Readonly<Record<string, readonly string[]>>) => kind[command] ?? [],
  );
  return Object.keys(values).find((name) => Object.hasOwn(FLAGS, name) && !own.includes(name)) ?? null;
}

export function flagsOf(values: Values): Flags {
  const texts = Object.entries(values).filter(
    ([name, value]) => Object.hasOwn(FLAGS, name) && typeof value === "string",
  );
  return {
    all: values.all === true,
    codes: values.codes === true,
    yes: values.yes === true,
    replace: values.replace === true,
    interim: values.interim === true,
    texts: Object.fromEntries(texts) as Record<string, string>,
    list: (name) => {
      const given = values[name];
      return Array.isArray(given) ? given.map(String) : [];
    },
  };
}
