import { fromBase64url } from "../seal/base64url.ts";
import type { Bytes } from "../seal/bytes.ts";
import { KEY_BYTES } from "../seal/derive.ts";
import { opened } from "../seal/open.ts";
import { withPassphrase } from "../seal/passphrase.ts";
import { fetched, parsed } from "./pages.ts";
import type {} from "./sealed-pages.ts";

/**
 * Opens a sealed report. The key stands behind `#` in the address, which browsers send to nobody; it stays there, so that the page can be loaded
 * again, and it goes along to the pages beside this one.
 */

/** The element of a sealed page that holds what was sealed. */
const envelopeOf = (page: Document) => page.getElementById("sealed")!;
const sealedText = (page: Document): string => envelopeOf(page).textContent ?? "";
const fragment = location.hash;

/** Shows one of the page's own messages in place of the others. */
function say(state: string): void {
  for (const part of document.querySelectorAll<HTMLElement>("[data-state]")) part.hidden = part.dataset.state !== state;
}

/** Today where the reader is. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

const asText = (bytes: Bytes) => new TextDecoder().decode(bytes);

/** A file that lies sealed beside the page, as an address in this browser's memory. */
async function fileAt(address: string, key: Bytes, type = ""): Promise<string> {
  return URL.createObjectURL(new Blob([await opened(await fetched(`${address}.jwe`), key)], { type }));
}

/** Ways inside the page scroll by script, as the address is the key's; ways to pages beside it take the key along. */
function directWays(page: Document): void {
  for (const way of page.querySelectorAll("a")) {
    const to = way.getAttribute("href") ?? "";
    if (to.startsWith("#")) {
      way.dataset.jump = decodeURIComponent(to.slice(1));
      // Opened in a window of its own it needs the key. The skip link is pressed where it stands, and names its target.
      if (way.className !== "skip") way.setAttribute("href", fragment);
    } else if (way.type !== "application/pdf" && !/^[a-z][a-z0-9+.-]*:/i.test(to))
      way.setAttribute("href", to + fragment);
  }
}

/** Pictures of notes are sealed; those of the facility are everybody's. */
function openPictures(page: Document, key: Bytes): void {
  for (const picture of page.querySelectorAll("img")) {
    const from = picture.getAttribute("src") ?? "";
    if (/assets\/[^/]*$/.test(from)) continue;
    picture.removeAttribute("src");
    fileAt(from, key).then(
      (address) => {
        picture.src = address;
      },
      () => {},
    );
  }
}

function jumpTo(id: string): void {
  const target = document.getElementById(id);
  if (target === null) return;
  target.scrollIntoView();
  if (target.tabIndex < 0) target.tabIndex = -1;
  target.focus({ preventScroll: true });
}

async function savePdf(way: HTMLAnchorElement, key: Bytes): Promise<void> {
  const copy = document.createElement("a");
  copy.href = await fileAt(way.href, key, way.type);
  copy.download = "report.pdf";
  copy.click();
}

function show(html: string, key: Bytes): void {
  const page = parsed(html);
  directWays(page);
  openPictures(page, key);
  window.sealedPages = {
    read: async (address) => asText(await opened(sealedText(parsed(await fetched(address))), key)),
  };
  document.title = page.title;
  document.documentElement.lang = page.documentElement.lang;
  document.body.replaceWith(page.body);
  document.addEventListener("click", (event) => {
    const way = event.target instanceof Element ? event.target.closest("a") : null;
    if (way === null || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (way.dataset.jump !== undefined) jumpTo(way.dataset.jump);
    else if (way.type === "application/pdf") void savePdf(way, key);
    else return;
    event.preventDefault();
  });
  // What a parser makes of a text does not run by itself.
  for (const { src } of page.querySelectorAll("script[src]") as NodeListOf<HTMLScriptElement>) {
    const script = document.createElement("script");
    script.src = src;
    document.head.append(script);
  }
}

async function open(key: Bytes, otherwise: string): Promise<void> {
  let html: string;
  try {
    html = asText(await opened(sealedText(document), key));
  } catch {
    say(otherwise);
    return;
  }
  show(html, key);
}

function ask(linkKey: Bytes, token: string): void {
  say("words");
  const form = document.querySelector("form")!;
  const input = form.querySelector("input")!;
  input.focus();
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    say("wait");
    void withPassphrase(linkKey, input.value, token)
      .then((key) => open(key, "words"))
      .then(() => {
        if (!form.isConnected) return;
        document.querySelector<HTMLElement>(".wrong")!.hidden = false;
        input.select();
      });
  });
}

function linkKey(): Bytes | null {
  try {
    const key = fromBase64url(fragment.slice(1));
    return key.length === KEY_BYTES ? key : null;
  } catch {
    return null;
  }
}

const { until = "9999", token } = envelopeOf(document).dataset;
const key = linkKey();
// Another key in the same address is another try.
addEventListener("hashchange", () => location.reload());
if (!globalThis.crypto?.subtle || typeof DecompressionStream === "undefined") say("cannot");
else if (until < today()) say("ended");
else if (key === null) say("no-key");
else if (token !== undefined) ask(key, token);
else void open(key, "broken");
