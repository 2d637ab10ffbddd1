import { anselm } from "./texts/anselm.ts";
import { bastian } from "./texts/bastian.ts";
import { corwin } from "./texts/corwin.ts";
import { desmond } from "./texts/desmond.ts";
import { drills } from "./texts/drills.ts";
import { facility } from "./texts/facility.ts";
import { juniper } from "./texts/juniper.ts";
import { marisol } from "./texts/marisol.ts";
import { metrics } from "./texts/metrics.ts";
import { rufus } from "./texts/rufus.ts";
import { thaddeus } from "./texts/thaddeus.ts";
import { wrenna } from "./texts/wrenna.ts";

/** Everything the invented coaches wrote about one hitter: file name in the athlete's folder -> text. */
export type Folder = Readonly<Record<string, string>>;

const FOLDERS: Readonly<Record<string, Folder>> = {
  "anselm-drovik": anselm,
  "bastian-oakhollow": bastian,
  "corwin-tallowby": corwin,
  "desmond-farrowick": desmond,
  "juniper-brackwell": juniper,
  "marisol-quintalba": marisol,
  "rufus-ellingthorpe": rufus,
  "thaddeus-marchbane": thaddeus,
  "wrenna-stillbourne": wrenna,
};

/** All Markdown of the season, by path in the season folder. */
export function contentFiles(): Map<string, string> {
  const files = new Map([
    ["content/facility.md", facility],
    ["content/drills.md", drills],
    ["content/metrics.md", metrics],
  ]);
  for (const [id, folder] of Object.entries(FOLDERS)) {
    for (const [name, text] of Object.entries(folder)) files.set(`content/athletes/${id}/${name}`, text);
  }
  return files;
}
