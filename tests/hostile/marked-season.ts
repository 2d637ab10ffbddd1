import { DOT } from "../cli/small-season.ts";

/** Who may be shown a field: everybody who has a page, those of its athlete alone, or nobody but the trainer. */
export type Shown = "everybody" | "own" | "desk";

/** Gives the text that stands in a field. */
export type Mark = (field: string, shown: Shown) => string;

/** The athletes of the season: a grown hitter whose pages are open, and a child whose pages are sealed. */
export const ATHLETES = [
  { id: "ada-lund", name: "Ada Lundqvist", born: "1999-03-14", as: "self" },
  { id: "ben-ridge", name: "Benjamin Ridgewell", born: "2012-11-27", as: "guardian" },
] as const;

const yaml = (value: unknown): string => JSON.stringify(value);
const page = (front: object, body: string): string =>
  `---\n${Object.entries(front)
    .map(([key, value]) => `${key}: ${yaml(value)}`)
    .join("\n")}\n---\n${body}\n`;
const cell = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const csv = (rows: readonly (readonly (string | number)[])[]): string =>
  `${rows.map((row) => row.map((one) => (typeof one === "number" ? one : cell(one))).join(",")).join("\n")}\n`;
/** As much of a text as a file's name may hold. */
const inName = (text: string): string => text.replaceAll("/", "").slice(0, 80).replace(/^\./, "");
const days = Array.from(
  { length: 24 },
  (_, i) => `2026-${i < 20 ? "01" : "02"}-${String(i < 20 ? i + 8 : i - 19).padStart(2, "0")}`,
);

function athleteFiles({ id, name, born, as }: (typeof ATHLETES)[number], m: Mark): Record<string, string | Uint8Array> {
  const own = `content/athletes/${id}`;
  const f = (field: string, shown: Shown) => m(`${id} ${field}`, shown);
  const both = ["family", "club"];
  const picture = "stance.png";
  return {
    [`${own}/profile.md`]: page(
      {
        name,
        born,
        aliases: [f("alias", "desk")],
        sport: "baseball",
        level: f("level", "own"),
        bats: "right",
        throws: "right",
        positions: [f("position", "own")],
        heights: [{ date: "2026-01-05", in: 66 }],
        game_bat: "bat-33",
        away: [{ from: "2026-01-12", to: "2026-01-13", kind: f("away kind", "desk"), say: f("away say", "own") }],
        limits: [
          { from: "2026-02-01", to: "2026-02-02", none_of: ["overload"], decided_by_role: f("decided by", "desk") },
        ],
        consent: [{ by: f("consent by", "desk"), as, on: "2026-01-02", readers: both }],
        recipients: [
          { id: "home", reader: "family", label: f("recipient", "desk") },
          { id: "club", reader: "club", label: f("other recipient", "desk") },
        ],
        goals: [
          {
            metric: "bat_speed",
            condition: { environment: "tee" },
            target: 71,
            by: "2026-02-20",
            set: "2026-01-05",
            why: f("why", "own"),
          },
        ],
      },
      f("profile body", "desk"),
    ),
    [`${own}/assessment.md`]: page(
      {
        date: "2026-01-05",
        by: "kay",
        priorities: [{ id: "path", text: f("priority", "own"), measures: ["bat_speed"], drills: ["tee-high"] }],
      },
      f("assessment body", "own"),
    ),
    [`${own}/plan.md`]: page(
      {
        date: "2026-02-20",
        by: "kay",
        warm_up: f("warm up", "own"),
        own_cue: f("own cue", "own"),
        items: [
          {
            drill: "tee-high",
            purpose: f("purpose", "own"),
            implement: "bat-33",
            sets: 2,
            reps: 5,
            cue: f("cue", "own"),
            caution: f("caution", "own"),
            where: "home",
          },
        ],
      },
      f("plan body", "own"),
    ),
    [`${own}/closing.md`]: page({ date: "2026-02-20", by: "kay", readers: both }, f("closing", "own")),
    [`${own}/closing.es.md`]: page({ date: "2026-02-20", by: "kay", readers: both }, f("closing in Spanish", "own")),
    [`${own}/notes/${inName(f("note file", "desk"))}.md`]: page(
      {
        date: "2026-01-20",
        author: f("author", "own"),
        kind: "observation",
        about: [f("about", "own")],
        readers: both,
      },
      `${f("note", "own")}\n\n![${f("picture", "own")}](${picture})`,
    ),
    [`${own}/notes/own-words.md`]: page(
      { date: "2026-01-21", author: "athlete", readers: ["family"] },
      f("own words", "own"),
    ),
    [`${own}/notes/hidden.md`]: page({ date: "2026-01-22", author: "kay" }, f("note for the desk", "desk")),
    [`${own}/notes/${picture}`]: DOT,
  };
}

/** Every field of every file in which a text may stand, each filled by `m`. */
export function markedSeason(m: Mark): Record<string, string | Uint8Array> {
  const local = (field: string, shown: Shown) => ({ en: m(`${field} en`, shown), es: m(`${field} es`, shown) });
  const swings = ATHLETES.flatMap(({ id }, a) =>
    days.flatMap((day, i) =>
      [0, 1, 2].map((rep) => [
        id,
        day,
        "17:00:00",
        m(`${id} session`, "own"),
        "1",
        "tee",
        "tee-high",
        "bat-33",
        "leather",
        a === 0 ? 66 + i * 0.2 + rep * 0.7 : 48 + i * 0.2 + rep * 0.7,
        75 + i * 0.2 + rep,
        12,
        m("lane", "desk"),
        "knob",
        m(`${id} swing comment`, "desk"),
        m("column of a device", "desk"),
      ]),
    ),
  );
  return {
    "content/facility.md": page(
      {
        name: m("facility", "everybody"),
        season: {
          name: m("season name", "everybody"),
          start: "2026-01-05",
          end: "2026-02-28",
          phases: [{ id: "base", label: local("phase", "everybody"), from: "2026-01-05", to: "2026-01-20" }],
        },
        contact: m("contact", "everybody"),
        notice: local("notice", "everybody"),
        languages: ["en", "es"],
        cautions: [local("facility caution", "everybody")],
        staff: [{ id: "kay", name: m("staff name", "everybody"), role: m("staff role", "everybody") }],
        measures: [{ metric: "bat_speed", condition: { environment: "tee" } }, { metric: "rhythm" }],
        tests: [{ id: "max", metric: "bat_speed", warm_up: m("test warm up", "desk") }],
        publish_pdf: false,
      },
      m("facility body", "desk"),
    ),
    "content/metrics.md": page(
      {
        metrics: [
          {
            id: "rhythm",
            label: local("metric", "everybody"),
            unit: "s",
            better: "lower",
            plausible: [0, 5],
            decimals: 2,
          },
        ],
        zones: [{ id: "gap", label: local("zone", "everybody"), exit_velocity: [60, 120] }],
      },
      m("metrics body", "desk"),
    ),
    "content/drills.md": page(
      {
        drills: [
          {
            id: "tee-high",
            label: local("drill", "everybody"),
            environment: "tee",
            purpose: local("drill purpose", "everybody"),
            treats: [m("treats", "desk")],
            cue: local("drill cue", "everybody"),
            good_rep: local("good rep", "everybody"),
            feedback: local("drill feedback", "everybody"),
            caution: local("drill caution", "everybody"),
          },
        ],
      },
      m("drills body", "desk"),
    ),
    [`content/plans/${inName(m("plan file name", "desk"))}.md`]: page(
      { date: "2026-01-12", title: m("day plan", "desk") },
      m("day plan body", "desk"),
    ),
    ...Object.assign({}, ...ATHLETES.map((athlete) => athleteFiles(athlete, m))),
    "data/swings/january.csv": csv([
      [
        ..."athlete_id,date,time,session,block,environment,drill,implement,ball".split(","),
        ..."bat_speed_mph,exit_velocity_mph,launch_angle_deg,lane,device_bat,comment".split(","),
        m("name of a column", "desk"),
      ],
      ...swings,
      [m("unknown athlete", "desk"), "2026-01-20", ...Array<string>(13).fill("")],
      ["ada-lund", m("date that is none", "desk"), ...Array<string>(13).fill("")],
      [
        "ada-lund",
        "2026-01-20",
        "",
        "",
        "",
        "tee",
        "",
        "",
        "",
        m("number that is none", "desk"),
        ...Array<string>(5).fill(""),
      ],
    ]),
    [`data/swings/${inName(m("file name", "desk"))}.csv`]: csv([
      ["Who", "Day", "Speed", "Remark"],
      ["ada-lund", "2026-02-10", "71", m("remark of an export", "desk")],
    ]),
    [`data/mappings/${inName(m("mapping file name", "desk"))}.json`]: JSON.stringify({
      label: m("mapping label", "desk"),
      header: ["Who", "Day", "Speed", "Remark"],
      columns: {
        Who: { field: "athlete_id" },
        Day: { field: "date" },
        Speed: { field: "bat_speed", unit: "mph" },
      },
    }),
    [`data/blocks/${inName(m("log file name", "desk"))}.csv`]: csv([
      "date,session,group,athlete_id,block,environment,drill,implement,aim,feedback,rounds,reps,lane,trainer,measured,comment".split(
        ",",
      ),
      [
        ...["2026-01-20", m("log session", "desk"), "", "ada-lund", "9", "tee", "tee-high", "bat-33"],
        ...[m("aim", "desk"), m("feedback", "desk"), 2, 5, "", m("trainer", "desk"), "none", m("log comment", "desk")],
      ],
    ]),
    "data/corrections.csv": csv([
      "by,on,reason,file,line,action,field,from,to".split(","),
      [
        m("corrected by", "desk"),
        "2026-02-01",
        m("reason", "desk"),
        "data/swings/january.csv",
        5,
        "set",
        "bat_speed",
        "",
        "67",
      ],
    ]),
    "data/implements.csv": csv([
      "id,label,length_in,weight_oz,role,material,certification,owner".split(","),
      [
        "bat-33",
        m("bat label", "everybody"),
        33,
        30,
        "game",
        m("material", "desk"),
        m("certification", "desk"),
        m("owner", "desk"),
      ],
    ]),
    "data/balls.csv": csv([
      "id,label,kind,mass_oz,flight".split(","),
      ["leather", m("ball label", "everybody"), "baseball", 5.1, "full"],
    ]),
    "data/devices.csv": csv([
      "id,kind,measures,point_on_bat,firmware,comment".split(","),
      [
        "knob",
        m("device kind", "everybody"),
        "bat_speed",
        m("point on bat", "everybody"),
        m("firmware", "desk"),
        m("device comment", "desk"),
      ],
    ]),
    "data/tests/jumps.csv": csv([
      "athlete_id,date,test,value,unit,protocol,tester,device,comment".split(","),
      ...ATHLETES.map(({ id }) => [
        ...[id, "2026-01-10", "rhythm", 1.2, "s", m(`${id} protocol`, "own")],
        ...[m("tester", "desk"), m("test device", "desk"), m("test comment", "desk")],
      ]),
    ]),
    "data/reference/table.csv": csv([
      "metric,unit,environment,sport,sex,level,age_lo,age_hi,kind,mean,sd,n,source,year".split(","),
      ["bat_speed", "mph", "tee", "baseball", "male", "", 10, 14, "mean-sd", 50, 5, 40, m("source", "everybody"), 2024],
    ]),
  };
}
