import { briefHtml } from "@leeway/charts/brief";
import { documentOf, estimateTable, PAGE_SECTIONS } from "@leeway/core";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { levelsOf } from "../../apps/notebook/src/handing/page/levels.ts";
import { notebookHtml } from "../../apps/notebook/src/handing/page/notebookHtml.ts";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import { moveText } from "../../apps/notebook/src/plan/moveText.ts";
import { markdownHtml, markdownNodes } from "../../apps/notebook/src/words/markdown.ts";
import { briefed, fullPlan, planOf } from "../contract/brief/plans.ts";
import { newDocument } from "../contract/charts/newDocument.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { answerDate, type Notebook } from "./support/notebook.ts";
import { planText } from "./support/planText.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

const document = newDocument();

describe("Markdown as a part of the page", () => {
  // CommonMark 0.31 (spec.commonmark.org), recalled: emphasis, lists, code, block quotes, hard breaks, links.
  it.each([
    ["*a* **b** `c<d`", "<p><em>a</em> <strong>b</strong> <code>c&lt;d</code></p>"],
    ["- a\n- b", "<ul><li>a</li><li>b</li></ul>"],
    ["3. a\n4. b", '<ol start="3"><li>a</li><li>b</li></ol>'],
    ["> a\n> b", "<blockquote><p>a\nb</p></blockquote>"],
    ["a  \nb", "<p>a<br>b</p>"],
    ["```js\n<b>\n```", "<pre><code>&lt;b&gt;\n</code></pre>"],
    ["---", "<hr>"],
    ["a\n\nb", "<p>a</p><p>b</p>"],
    ["&amp; \\*c\\*", "<p>&amp; *c*</p>"],
    ["[a](#work)", '<p><a href="#work">a</a></p>'],
    [
      "<https://example.org/a?b&c>",
      '<p><a href="https://example.org/a?b&amp;c" target="_blank" rel="noopener noreferrer">https://example.org/a?b&amp;c</a></p>',
    ],
  ])("%j reads as the standard says", (text, html) => {
    expect(markdownHtml(text, document)).toBe(html);
  });

  it("headings begin below those of the sections and skip no level", () => {
    expect(markdownHtml("# A\n\n### B\n\n# C", document)).toBe("<h3>A</h3><h4>B</h4><h3>C</h3>");
    expect(markdownHtml("###### A", document)).toBe("<h3>A</h3>");
  });

  // Ways to have a script run out of Markdown or HTML; common practice, no source.
  it.each([
    "<script>alert(1)</script>",
    "<img src=x onerror=alert(1)>",
    "![x](https://example.org/x.png)",
    "[x](javascript:alert(1))",
    "[x](JaVaScRiPt:alert(1))",
    "[x](&#106;avascript:alert(1))",
    "[x](java\tscript:alert(1))",
    "[x](<java\nscript:alert(1)>)",
    "[x](data:text/html,<script>alert(1)</script>)",
    "[x](vbscript:x)",
    "[x](file:///etc/passwd)",
    "[x](//example.org/x)",
    "[x](/x)",
    '[x](https://example.org/"onmouseover="alert(1))',
    '[x](https://example.org "<b onclick=alert(1)>")',
    "<a href='javascript:alert(1)'>x</a>",
    "<https://example.org/\u202egpj.exe>",
    "[x]: javascript:alert(1)\n\n[x]",
    "<style>*{display:none}</style>",
    "```<script>\nalert(1)\n```",
    "`<img onerror=alert(1)>`",
    "| <b onclick=x> |\n|---|\n| [y](javascript:z) |",
    "<!-- --><svg onload=alert(1)>",
    "a\u0000b\u2028c",
    "[".repeat(5000),
    "> ".repeat(2000),
    "*".repeat(20_000),
    "x".repeat(200_000),
  ])("%j becomes text and harmless elements only", (text) => {
    const root = document.createElement("div");
    root.append(markdownNodes(text, document));
    // Once more as the reader of the written page has it.
    const again = document.createElement("div");
    again.innerHTML = markdownHtml(text, document);
    expect(again.innerHTML).toBe(root.innerHTML);
    for (const element of root.querySelectorAll("*")) {
      expect(element.localName).toMatch(
        /^(p|h[3-6]|ul|ol|li|blockquote|pre|code|em|strong|s|a|br|hr|table|thead|tbody|tr|th|td)$/,
      );
      for (const { name, value } of element.attributes) {
        expect(name).toMatch(/^(href|target|rel|start)$/);
        if (name === "href") expect(value).toMatch(/^(https?:\/\/|mailto:|#)/i);
      }
    }
    expect(root.textContent).not.toMatch(/[\u202a-\u202e\p{Zl}\p{Zp}]/u);
    expect(root.textContent).not.toContain("\u0000");
  });
});

describe("moveText()", () => {
  const stated = {
    texts: ["work", "purpose", "work", "register"].map((after, k) => ({ after, text: `t${k}` })),
  };
  const order = (texts: readonly { after: string; text: string }[]) =>
    PAGE_SECTIONS.flatMap((section) =>
      texts.filter(({ after }) => after === section).map(({ text }) => text),
    );
  const moved = (at: number, by: -1 | 1) => {
    const move = moveText(stated, at, by);
    if (move === undefined) return undefined;
    const made = applyEdits(JSON.stringify(stated), move.edits);
    expect(made.problems).toEqual([]);
    const { texts } = parse(made.text);
    expect(texts[move.at].text).toBe(`t${at}`);
    expect(texts[move.at].after).toBe(move.after);
    return order(texts);
  };

  it("goes one place up or down the page, past a neighbour or below another section", () => {
    expect(order(stated.texts)).toEqual(["t1", "t0", "t2", "t3"]);
    expect(moved(0, 1)).toEqual(["t1", "t2", "t0", "t3"]);
    expect(moved(2, -1)).toEqual(["t1", "t2", "t0", "t3"]);
    expect(moved(2, 1)).toEqual(["t1", "t0", "t2", "t3"]);
    expect(moveText(stated, 2, 1)?.after).toBe("register");
    expect(moved(3, -1)).toEqual(["t1", "t0", "t2", "t3"]);
    expect(moveText(stated, 3, -1)?.after).toBe("work");
    expect(moveText({ texts: { after: "answer", text: "a" } }, 0, -1)).toBeUndefined();
    expect(moveText({ texts: { after: "hand-over", text: "a" } }, 0, 1)).toBeUndefined();
  });
});

it("the read-only page carries the texts where they stand, the brief does not", () => {
  const text = `${fullPlan}\ntexts:\n  - { after: work, text: "The *crew* is [here](javascript:x)" }\n  - { after: money, text: Last }\n`;
  const plan = planOf(text);
  const { brief, answers } = briefed(plan, 50);
  const one = { width: 860, x: () => 0 };
  const place = { broad: one, slim: one };
  const page = notebookHtml({
    plan,
    brief,
    forecast: answers.forecast,
    figures: { futures: [], drivers: [], contingency: [], responses: [] },
    levels: levelsOf(answers.forecast, place, place),
    estimates: estimateTable(documentOf(text) ?? {}),
    texts: plan.texts.map((one) => ({ after: one.after, html: markdownHtml(one.text, document) })),
  });
  const at = (words: string) => page.indexOf(words);
  expect(at("The <em>crew</em> is [here](javascript:x)")).toBeGreaterThan(at("<h2>Work</h2>"));
  expect(at("The <em>crew</em>")).toBeLessThan(at("<h2>Register</h2>"));
  expect(at('<div class="prose" dir="auto"><p>Last</p>')).toBeGreaterThan(at("<h2>Register</h2>"));
  expect(JSON.stringify(brief)).not.toContain("crew");
  expect(briefHtml(brief, answers.forecast)).not.toContain("crew");
});

describe("free text on the page", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
    await fillPlan(notebook.page, smallPlan);
  });

  const text = () => planText(notebook.page);
  const texts = async (): Promise<unknown> => parse(await text()).texts;
  /** Words for listeners begin with a colon; whether a space stands before it is the browser's. */
  const button = (name: string) =>
    notebook.page.getByRole("button", { name: new RegExp(`^${name.replace(":", "\\s*:")}$`) });
  const focused = () =>
    notebook.page.evaluate(() => document.activeElement?.textContent?.replace(/\s+/g, " ").trim());

  it("is added, edited, moved and removed by keys, each one step of undo", async () => {
    const { page } = notebook;
    const before = await text();
    const date = await answerDate(page);
    await button("Add a text below People").focus();
    await page.keyboard.press("Enter");
    await page.keyboard.type("# Why now\n\nThe *lease* ends. <b>x</b>");
    await page.keyboard.press("Control+Enter");
    await page.locator("#people + leeway-texts h3", { hasText: "Why now" }).waitFor();
    expect(await texts()).toEqual([{ after: "people", text: "# Why now\n\nThe *lease* ends. <b>x</b>" }]);
    expect(await page.locator(".prose em").textContent()).toBe("lease");
    expect(await page.locator(".prose b").count()).toBe(0);
    expect(await answerDate(page)).toBe(date);

    await expect.poll(focused).toBe("Edit: text 1 below People");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Control+End");
    await page.keyboard.type("\n\nAnd **soon**.");
    await page.keyboard.press("Control+Enter");
    await page.locator(".prose strong", { hasText: "soon" }).waitFor();

    // Escape asks once before what was typed is lost.
    await expect.poll(focused).toBe("Edit: text 1 below People");
    await page.keyboard.press("Enter");
    await page.keyboard.type("lost");
    await page.keyboard.press("Escape");
    expect(await page.locator(".text-cell textarea").inputValue()).toContain("lost");
    await page.keyboard.press("Escape");
    await page.locator(".text-cell textarea").waitFor({ state: "detached" });
    expect(JSON.stringify(await texts())).not.toContain("lost");

    await button("Down: text 1 below People").focus();
    await page.keyboard.press("Enter");
    await page.locator("#calendar + leeway-texts .prose").waitFor();
    await expect.poll(focused).toBe("Down: text 1 below Calendar");
    expect(await texts()).toMatchObject([{ after: "calendar" }]);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await violations(page, "#calendar + leeway-texts")).toEqual([]);
    }
    await page.setViewportSize({ width: 1280, height: 900 });

    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#calendar + leeway-texts .prose").isVisible()).toBe(true);
    expect(await button("Add a text below People").isVisible()).toBe(false);
    expect(await button("Edit: text 1 below Calendar").isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen" });

    await button("Remove: text 1 below Calendar").click();
    await page.locator(".prose").waitFor({ state: "detached" });
    expect(await text()).toBe(before);
    for (const after of ["calendar", "people"]) {
      await button("Undo").click();
      await expect.poll(texts).toMatchObject([{ after }]);
    }
    await button("Undo").click();
    await button("Undo").click();
    await expect.poll(text).toBe(before);
    expect(notebook.troubles).toEqual([]);
  });

  it("what is typed is kept when the reader goes elsewhere, and nothing comes of nothing", async () => {
    const { page } = notebook;
    await button("Add a text below Money").click();
    await page.keyboard.type("Paid in advance");
    await button("Add a text below Futures").click();
    await expect.poll(texts).toEqual([{ after: "money", text: "Paid in advance" }]);
    await button("Done").click();
    await expect.poll(texts).toHaveLength(1);
    expect(await page.locator(".text-cell").count()).toBe(1);
  });
});
