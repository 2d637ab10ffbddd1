import { join } from "node:path";
import { preview } from "./build.ts";
import { realEffects } from "./cli/effects.ts";
import { thisTerminal } from "./cli/terminal.ts";
import type { SiteInput } from "./site/site.ts";

/** What plain Eleventy renders: the season in the folder it was started in, through the same consent filter as the build. */
export function previewInput(): Promise<SiteInput> {
  const terminal = thisTerminal();
  const { home } = terminal;
  const paths = { content: join(home, "content"), data: join(home, "data"), state: join(home, ".winterbook") };
  const effects = realEffects(terminal.tell, terminal.display);
  return preview(paths, {}, effects).finally(effects.finished);
}
