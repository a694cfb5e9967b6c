// What a plan says is never markup. Checked by two independent readers: jsdom for HTML (elements and attributes counted
// against the same plan with harmless texts), markdown-it for Markdown with raw HTML, links and tables switched on.
// The strings: OWASP XSS filter evasion and CSV injection pages, CommonMark 0.31 constructs; recalled from memory.
import { briefHtml, briefSheet, preBriefHtml, preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { preBriefOf } from "@leeway/core";
import fc from "fast-check";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { briefed, fullPlan, planOf } from "../../contract/brief/plans.ts";
import { newDocument } from "../../contract/charts/newDocument.ts";

const CORPUS = [
  "<script>alert(1)</script>",
  '"><img src=x onerror=alert(1)>',
  "</style><script>alert(1)</script>",
  "</main></body><iframe src=javascript:alert(1)>",
  "<svg/onload=alert(1)>",
  "' onmouseover='alert(1)",
  "&lt;b&gt; &#60;b&#62; &amp;amp;",
  "<!-- comment --> <![CDATA[x]]> <?php ?>",
  "[click](javascript:alert(1))",
  "![pixel](https://example.org/x.png)",
  "<https://example.org> and https://example.org/a",
  "[ref]: https://example.org",
  "# heading\n## another",
  "- item\n1. item\n> quotation",
  "| a | b |\n|---|---|\n| c | d |",
  "`code` ```fence``` ~~gone~~ **bold** __bold__ *it* _it_",
  "\\[escaped\\](x) \\\\",
  "=cmd|' /C calc'!A0",
  "+1+1 @SUM(1) -2+3",
  "$x^2$ $$y$$",
  "{{7*7}} $" + "{7*7} <%= 7 %>",
  "\u202Egnirts\u202C \u2066x\u2069",
  "\u0000\u0007\u001b[31mred",
  "a\r\nb\u2028c\u2029d",
  "مرحبا שלום 你好 👩‍👩‍👧‍👦 é",
  "x".repeat(5000),
  "1. 2) - + # = ===",
];

const told = (() => {
  const plan = planOf(fullPlan);
  const { brief, answers } = briefed(plan, 60);
  return { pre: preBriefOf(plan, brief, answers, "bo"), forecast: answers.forecast };
})();

/** Where a brief holds free text of the plan. */
const FREE = new Set(
  "title name role interest ask recommend text answer conditions note basis signpost lost action unit statement looksFor seed releaseRule".split(
    " ",
  ),
);

/** The same brief with one text in every place that is free text. */
function saying<T>(value: T, said: string): T {
  const walk = (part: unknown, key: string): unknown => {
    if (typeof part === "string") return FREE.has(key) ? said : part;
    if (Array.isArray(part)) {
      const texts = key === "out" || key === "constraints";
      return part.map((each) => walk(each, texts ? "text" : key));
    }
    if (part === null || typeof part !== "object") return part;
    return Object.fromEntries(Object.entries(part).map(([name, each]) => [name, walk(each, name)]));
  };
  return walk(value, "") as T; // the same shape: texts are replaced by texts
}

function written(said: string) {
  const pre = saying(told.pre, said);
  return {
    html: [briefHtml(pre.brief, told.forecast), preBriefHtml(pre)],
    markdown: [sheetMarkdown(briefSheet(pre.brief)), sheetMarkdown(preBriefSheet(pre))],
  };
}

const harmless = written("harmless words");
const reader = new MarkdownIt({ html: true, linkify: false });

/** How many of each element and attribute there are. */
function shape(html: string, document: Document): Map<string, number> {
  const holder = document.implementation.createHTMLDocument("");
  holder.documentElement.innerHTML = html;
  const counts = new Map<string, number>();
  const add = (what: string) => counts.set(what, (counts.get(what) ?? 0) + 1);
  for (const element of holder.querySelectorAll("*")) {
    add(element.localName);
    for (const { name } of element.attributes) add(`@${name}`);
  }
  return counts;
}

const document = newDocument();
/** Lines and halves of names vary with their length, so counts of these may; nothing else may appear or go. */
const kinds = (counts: Map<string, number>) => [...counts.keys()].sort();

describe.each(CORPUS.map((said) => [said.slice(0, 40), said] as const))("a plan that says %s", (_, said) => {
  const { html, markdown } = written(said);

  it("makes no element and no attribute of it in HTML", () => {
    html.forEach((page, i) => {
      const own = shape(page, document);
      expect(kinds(own)).toEqual(kinds(shape(harmless.html[i] ?? "", document)));
      for (const forbidden of ["script", "img", "iframe", "object", "form", "input", "link", "base"]) {
        expect(own.get(forbidden)).toBeUndefined();
      }
      expect([...own.keys()].filter((key) => /^@(on|src|style|action)/.test(key))).toEqual([]);
      // A figure leads to where it is explained on the same page; nothing leads anywhere else.
      expect(page.replaceAll('<a href="#commitment">', "")).not.toMatch(/<a\b|\shref=/);
      expect(page.match(/<style>/g)?.length).toBe(1);
    });
  });

  it("makes no markup of it in Markdown", () => {
    markdown.forEach((text, i) => {
      const own = shape(reader.render(text), document);
      const counted = shape(reader.render(harmless.markdown[i] ?? ""), document);
      expect(kinds(own)).toEqual(kinds(counted));
      for (const kind of ["h1", "h2", "table", "tr", "td", "th", "ul", "li", "strong"]) {
        expect([kind, own.get(kind)]).toEqual([kind, counted.get(kind)]);
      }
      expect(text).not.toMatch(/[^\P{Cc}\n]|[\u202a-\u202e\p{Zl}\p{Zp}]/u);
    });
  });

  it("is still told, word for word, where it has room", () => {
    if (said.length > 80) return;
    const words = said
      .replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g, "")
      .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, " ")
      .trim();
    const bare = (text: string) => text.replace(/[\u2066-\u2069]/g, "").replace(/\u00a0/g, " ");
    for (const page of html) {
      const holder = document.implementation.createHTMLDocument("");
      holder.documentElement.innerHTML = page;
      expect(bare(holder.body.textContent ?? "")).toContain(words);
    }
    for (const text of markdown) {
      const holder = document.implementation.createHTMLDocument("");
      holder.body.innerHTML = reader.render(text);
      expect(bare(holder.body.textContent ?? "")).toContain(words);
    }
  });
});

describe("any text at all", () => {
  it("makes no markup", () => {
    const { brief } = told.pre;
    const counted = kinds(shape(briefHtml(brief, told.forecast), document));
    fc.assert(
      fc.property(fc.string({ unit: "binary", minLength: 1, maxLength: 60 }), (said) => {
        const own = {
          ...brief,
          plan: { ...brief.plan, title: said },
          decision: { ...brief.decision, ask: said },
          scope: { ...brief.scope, out: [said] },
          objections: {
            ...brief.objections,
            open: [{ id: "x", text: said, state: "open" as const, changedPlan: false }],
          },
        };
        expect(kinds(shape(briefHtml(own, told.forecast), document))).toEqual(counted);
        const heads = reader.render(sheetMarkdown(briefSheet(own))).match(/<h[12]>/g)?.length;
        expect(heads).toBe(13);
      }),
      { numRuns: 40, seed: 20270120 },
    );
  });
});
