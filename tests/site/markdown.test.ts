import { expect, test } from "vitest";
import { renderMarkdown } from "../../src/site/markdown.ts";

const style = {
  links: true,
  under: 2,
  image: (name: string) => (name === "tee one.png" ? "img-abc.png" : null),
  reference: (text: string) => (text === "bat_speed: start" ? "<data>61.5</data>" : null),
};
const html = (text: string) => renderMarkdown(text, style);

test("raw HTML is shown as the characters it is made of", () => {
  expect(html('<script>alert(1)</script> <b onclick="x">')).toBe(
    "<p>&lt;script&gt;alert(1)&lt;/script&gt; &lt;b onclick=&quot;x&quot;&gt;</p>",
  );
});

test("a good link keeps its address and gives nothing away to the page it leads to", () => {
  expect(html("[drill](https://example.org/a?b=1)")).toBe(
    '<p><a href="https://example.org/a?b=1" rel="noreferrer noopener">drill</a></p>',
  );
});

test.each(["javascript:alert(1)", "JAVASCRIPT:alert(1)", "&#x6a;avascript:alert(1)", "data:text/html,x", "//host/x"])(
  "a link to %s keeps its words and loses its address",
  (address) => {
    const made = html(`[words **bold**](${address}) after`);
    expect(made).toBe("<p><span>words <strong>bold</strong></span> after</p>");
  },
);

test("pictures come only from files beside the note", () => {
  expect(html("![the tee](<tee one.png>)")).toBe('<p><img src="img-abc.png" alt="the tee" loading="lazy"></p>');
  expect(html('![far <away>](https://example.org/x.png "t")')).toBe("<p>far &lt;away&gt;</p>");
  expect(html("![up](../../secret.png)")).toBe("<p>up</p>");
});

test("headings step down below the heading of the page, whatever level the coach began with", () => {
  expect(html("# A\n\n## B")).toBe("<h3>A</h3>\n<h4>B</h4>");
  expect(html("### A")).toBe("<h3>A</h3>");
  expect(html("# A\n\n###### B")).toBe("<h3>A</h3>\n<h6>B</h6>");
});

test("no text makes no paragraph", () => {
  expect(html("")).toBe("");
});

test("a reference becomes what stands for it; one that leads nowhere is its words, and brackets elsewhere stay", () => {
  expect(renderMarkdown("From [[bat_speed: start]] on", style)).toBe("<p>From <data>61.5</data> on</p>");
  expect(renderMarkdown("[[ bat_speed: start ]]", style)).toBe("<p><data>61.5</data></p>");
  expect(renderMarkdown("From [[<i>: no]] on", style)).toBe("<p>From &lt;i&gt;: no on</p>");
  expect(renderMarkdown("`[[bat_speed: start]]` and [[a\nb]] and [one](https://example.org/)", style)).toContain(
    "<code>[[bat_speed: start]]</code> and [[a\nb]] and <a",
  );
});
