import { join } from "node:path";
import { launch } from "../../src/cli/chromium.ts";
import { linksOnDesk } from "../opened-site.ts";

/** Takes README.md's picture from the built demo: the top of one family page and the club's page beside it. */
const links = linksOnDesk("_desk");
const address = (wanted: string): string => {
  const link = links.find(({ athlete, reader }) => athlete === "corwin-tallowby" && reader === wanted)!;
  const file = `file://${join(process.cwd(), "_site", link.path, "index.html")}`;
  return link.key === null ? file : `${file}#${link.key}`;
};
const browser = await launch();
const shot = async (reader: string, width: number) => {
  const page = await browser.newPage({ viewport: { width, height: 1180 }, colorScheme: "light" });
  await page.goto(address(reader));
  await page.locator("body:not(.plain)").waitFor();
  await page.evaluate("document.fonts.ready");
  const picture = await page.screenshot();
  await page.close();
  return `data:image/png;base64,${picture.toString("base64")}`;
};
const [family, club] = [await shot("family", 390), await shot("club", 860)];
const page = await browser.newPage({ viewport: { width: 1330, height: 1240 } });
await page.setContent(
  `<body style="margin:30px;background:#dfe3df;display:flex;gap:20px"><img src="${family}"><img src="${club}"></body>`,
);
await page.waitForLoadState("networkidle");
await page.screenshot({ path: join(".readme", "report.png") });
await browser.close();
