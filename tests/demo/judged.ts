import { type Judgement, judgeSeason } from "../../src/build/judge.ts";
import { pairByPhysics } from "../../src/build/physics.ts";
import { readSeason } from "../../src/intake/season.ts";
import { memoryEffects } from "../intake/memory-disk.ts";

/** Reads and judges a season whose files are given by their path in the season folder. */
export async function judged(files: ReadonlyMap<string, string>): Promise<Judgement> {
  const effects = memoryEffects(new Map([...files].map(([path, text]) => [`/season/${path}`, text])));
  return judgeSeason(
    await readSeason({ content: "/season/content", data: "/season/data" }, effects, pairByPhysics),
    undefined,
    effects,
  );
}
