import { fetched, parsed } from "./pages.ts";
import type {} from "./sealed-pages.ts";

/**
 * What a day's dot stands for: point at it, or give the picture the focus and press the arrow keys. Nothing on a page needs this. The
 * words are those of the tables on the page with all the numbers; nothing is worked out here.
 */

/** A row of a measure's table: the day, and what was measured on it. */
interface DayRow {
  readonly day: string;
  readonly says: string;
}

/** A picture of a measure: its dots from left to right, and the line under it that tells of one. */
interface Picture {
  readonly figure: HTMLElement;
  readonly measure: string;
  readonly dots: readonly SVGCircleElement[];
  readonly line: HTMLElement;
  rows: readonly DayRow[];
  /** Place of the dot that is told of. */
  at: number;
}

const pictures = [...document.querySelectorAll<HTMLElement>(".measure figure[data-days]")].flatMap(pictureOf);

function pictureOf(figure: HTMLElement): Picture[] {
  const measure = figure.closest("[id]")?.id ?? "";
  const dots = [...figure.querySelectorAll("circle")].sort((a, b) => a.cx.baseVal.value - b.cx.baseVal.value);
  if (dots.length === 0) return [];
  const line = document.createElement("p");
  line.className = "told";
  line.setAttribute("role", "status");
  figure.tabIndex = 0;
  return [{ figure, measure, dots, line, rows: [], at: -1 }];
}

/** The page with all the numbers, which holds the tables. Asked for once, when it is first wanted. */
let tables: Promise<Document> | null = null;

function tablesOf(): Promise<Document> {
  const way = document.querySelector<HTMLAnchorElement>("a[data-numbers]");
  if (way === null) return Promise.reject(new Error("no numbers"));
  return (window.sealedPages?.read(way.href) ?? fetched(way.href)).then(parsed);
}

const textOf = (of: Element | null | undefined): string => (of?.textContent ?? "").trim();

/** Rows of a measure: "Oct 6: mean 65.8 mph, swings 9", in the words of the table's own head. */
function rowsIn(page: Document, measure: string): DayRow[] {
  const table = page.getElementById(measure)?.querySelector("table[data-unit]");
  const heads = [...(table?.querySelectorAll("thead th") ?? [])];
  const unit = table?.getAttribute("data-unit") ?? "";
  const column = (key: string) => heads.findIndex((head) => head.hasAttribute(`data-${key}`));
  return [...(table?.querySelectorAll("tbody tr") ?? [])].map((row) => {
    const part = (key: string, after = "") =>
      `${textOf(heads[column(key)])} ${textOf(row.children[column(key)])}${after}`;
    return {
      day: row.querySelector("time")?.dateTime ?? "",
      says: `${textOf(row.children[0])}: ${part("mean", unit)}, ${part("swings")}`,
    };
  });
}

/** Rows of a picture's measure, read once; none where they cannot be had. */
async function rowsOf(picture: Picture): Promise<readonly DayRow[]> {
  tables ??= tablesOf();
  const page = await tables.catch(() => null);
  if (page !== null && picture.rows.length === 0) picture.rows = rowsIn(page, picture.measure);
  return picture.rows;
}

async function tell(picture: Picture, at: number): Promise<void> {
  // Put in when it is first wanted: until then the page is as it is without a script.
  if (!picture.line.isConnected) picture.figure.after(picture.line);
  picture.at = Math.max(0, Math.min(picture.dots.length - 1, at));
  for (const [i, dot] of picture.dots.entries()) dot.classList.toggle("chosen", i === picture.at);
  const rows = await rowsOf(picture);
  // A table that does not fit the dots would tell of another day.
  if (rows.length === picture.dots.length) picture.line.textContent = rows[picture.at]?.says ?? "";
}

/** The same day in every other picture that has it. */
async function choose(picture: Picture): Promise<void> {
  await tell(picture, picture.at);
  const day = picture.rows[picture.at]?.day;
  if (!day) return;
  for (const other of pictures) {
    if (other === picture) continue;
    const same = (await rowsOf(other)).findIndex((row) => row.day === day);
    if (same >= 0) await tell(other, same);
    else forget(other);
  }
}

function forget(picture: Picture): void {
  picture.at = -1;
  picture.line.textContent = "";
  for (const dot of picture.dots) dot.classList.remove("chosen");
}

/** The dot whose place along the season is nearest. */
function nearest({ dots }: Picture, x: number): number {
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  dots.forEach((dot, i) => {
    const box = dot.getBoundingClientRect();
    const away = Math.abs(box.left + box.width / 2 - x);
    if (away < least) [best, least] = [i, away];
  });
  return best;
}

for (const picture of pictures) {
  const { figure } = picture;
  figure.addEventListener("pointermove", ({ clientX }) => void tell(picture, nearest(picture, clientX)));
  figure.addEventListener("click", ({ clientX }) => {
    picture.at = nearest(picture, clientX);
    void choose(picture);
  });
  figure.addEventListener("focus", () => {
    if (picture.at < 0) void tell(picture, picture.dots.length - 1);
  });
  figure.addEventListener("keydown", (event) => {
    const places: Readonly<Record<string, number>> = {
      ArrowLeft: picture.at - 1,
      ArrowRight: picture.at + 1,
      Home: 0,
      End: picture.dots.length - 1,
    };
    const to = places[event.key];
    if (to !== undefined) void tell(picture, to);
    else if (event.key === "Enter" || event.key === " ") void choose(picture);
    else if (event.key === "Escape") pictures.forEach(forget);
    else return;
    event.preventDefault();
  });
}
