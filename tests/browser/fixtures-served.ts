import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launch } from "../../src/cli/chromium.ts";
import type { SiteFile } from "../../src/site/site.ts";
import { renderLookedAt } from "../site/fixture-site.ts";
import { type StaticServer, serveFiles } from "./static-server.ts";

/** The fixture site, served, and a browser to look at it with. */
export interface Served {
  files: SiteFile[];
  server: StaticServer;
  browser: Browser;
}

/** Makes them before the tests of a file and closes them afterwards; filled when the first test runs. */
export function fixturesServed(): Served {
  const served = {} as Served;
  beforeAll(async () => {
    served.files = await renderLookedAt();
    served.server = await serveFiles(served.files);
    served.browser = await launch();
  });
  afterAll(async () => {
    await served.browser?.close();
    await served.server?.close();
  });
  return served;
}
