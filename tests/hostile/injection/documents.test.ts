import { type Figure, figureSvg, renderFigure } from "@leeway/charts";
import { briefHtml, briefSheet, preBriefHtml, preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import {
  type BriefAnswers,
  brief,
  documentOf,
  estimateTable,
  type Plan,
  preBriefOf,
  readPlan,
} from "@leeway/core";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { levelsOf } from "../../../apps/notebook/src/handing/page/levels.ts";
import { notebookHtml } from "../../../apps/notebook/src/handing/page/notebookHtml.ts";
import { figuresOf } from "../../../packages/charts/gallery/figures.ts";
import { newDocument } from "../../contract/charts/newDocument.ts";
import { type HostilePlan, hostilePlan, planSaying } from "./hostilePlan.ts";
import { bare, type Opened, opened } from "./shape.ts";

// A plan that says something hostile in every field, through to the documents that leave the house, each read by an
// independent parser: jsdom with scripts running for HTML and SVG, markdown-it with raw HTML on for Markdown. The measure
// is the same plan with harmless words of the same length in the same fields.

/** Enough turns that each text comes to about thirty fields; the brief alone has its own test with every text in all. */
const turns = [0, 9, 17, 25];
/** What is shown and yet does something: controls, turns of direction without an end, lines of Unicode. */
const loud = /.{0,40}(?:[^\P{Cc}\n]|[\u202a-\u202e\p{Zl}\p{Zp}]).{0,20}/u;

function written({ text }: HostilePlan): Record<string, string> {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const found = brief(plan, { today: "2027-01-20", iterations: 20 });
  if (found.brief === undefined || found.answers === undefined)
    throw new Error(JSON.stringify(found.problems));
  const { answers } = found;
  const pre = preBriefOf(plan, found.brief, answers, "chair");
  return {
    brief: briefHtml(found.brief, answers.forecast),
    "pre-brief": preBriefHtml(pre),
    notebook: notebook(plan, found.brief, answers, text),
    "brief.md": new MarkdownIt({ html: true, linkify: true }).render(sheetMarkdown(briefSheet(found.brief))),
    "pre-brief.md": new MarkdownIt({ html: true, linkify: true }).render(sheetMarkdown(preBriefSheet(pre))),
  };
}

function notebook(
  plan: Plan,
  asked: Parameters<typeof briefHtml>[0],
  answers: BriefAnswers,
  text: string,
): string {
  const one = { width: 860, x: () => 0 };
  const place = { broad: one, slim: one };
  const none = { futures: [], drivers: [], contingency: [], responses: [] };
  return notebookHtml({
    plan,
    forecast: answers.forecast,
    brief: asked,
    figures: none,
    levels: levelsOf(answers.forecast, place, place),
    estimates: estimateTable(documentOf(text) ?? {}),
  });
}

describe.each(turns)("the documents of a hostile plan, turn %i", (turn) => {
  const plan = hostilePlan(turn);
  // As long, marked, and with the ends of clauses in the same places, where a text is cut: whichever of these can be read
  // whole, the hostile text in its place can be too.
  const words = planSaying((field) => {
    const said = plan.said[field] ?? "";
    const mark = `w${field}w `;
    const ends = (at: number) => at >= mark.length && /^[.!?;:,]\s/.test(said.slice(at, at + 2));
    return `${mark}${"ab ".repeat(50)}`
      .slice(0, said.length)
      .replace(/./g, (letter, at: number) => (ends(at) ? (said[at] ?? "") : ends(at - 1) ? " " : letter))
      .trimEnd();
  });
  const hostile = written(plan);
  const harmless = written(words);
  // Short of room a page tells what brings a plan back without the names; letters differ in width, so rooms may too.
  const leftOut = new Set(readPlan(words.text).plan?.returnTriggers.map(({ name }) => name));

  it.each(["brief", "pre-brief", "notebook", "brief.md", "pre-brief.md"])(
    "%s: text and nothing else",
    (name) => {
      const theirs: Opened = opened(hostile[name] ?? "");
      const ours: Opened = opened(harmless[name] ?? "");
      expect(theirs.ran).toBe(false);
      expect(theirs.kinds).toEqual(ours.kinds);
      for (const kind of ["h1", "h2", "section", "table", "script", "style"])
        expect([kind, theirs.count(kind)]).toEqual([kind, ours.count(kind)]);
      expect(theirs.kinds.filter((kind) => / (on|href|src|action|xlink)/.test(kind))).toEqual([]);
      const lost = words.said.flatMap((word, field) => {
        const said = bare(plan.said[field] ?? "");
        return / ?ab$/.test(word) &&
          !(name === "brief" && leftOut.has(word)) &&
          word.length < 60 &&
          ours.text.includes(word) &&
          !theirs.text.includes(said)
          ? [said]
          : [];
      });
      expect(lost).toEqual([]);
      if (!name.endsWith(".md")) {
        expect(hostile[name]?.match(loud)).toBeNull();
        expect(hostile[name]?.indexOf("Content-Security-Policy")).toBeLessThan(
          hostile[name]?.indexOf("<title") ?? 0,
        );
      }
    },
  );
});

describe("the charts of a hostile plan", () => {
  const document = newDocument();
  const draw = ({ text }: HostilePlan): [string, Figure][] => {
    const { plan } = readPlan(text);
    if (plan === undefined) throw new Error("The plan does not read.");
    return figuresOf(plan, { iterations: 20 }).map(({ call, draw: drawn }) => [
      call,
      drawn({ document, width: 760, theme: "light" }),
    ]);
  };
  const hostile = draw(hostilePlan(3));
  const harmless = new Map(draw(planSaying((field) => `w${field}w some words`)));

  it.each(hostile)("%s: text and nothing else, in the file and on the page", (call, figure) => {
    const ours = harmless.get(call);
    if (ours === undefined) throw new Error("Not drawn.");
    for (const as of [figureSvg, (one: Figure) => renderFigure(one, document).outerHTML]) {
      const theirs = opened(as(figure));
      expect(theirs.ran).toBe(false);
      // Lengths of names decide what is cut or has a tip; nothing beyond the vocabulary of all charts may appear.
      expect(theirs.kinds.filter((kind) => !vocabulary.has(kind))).toEqual([]);
    }
    expect(figureSvg(figure).match(loud)).toBeNull();
  });

  /** Elements and attributes of all charts with harmless words, in both forms. */
  const vocabulary = new Set(
    [...harmless.values()].flatMap((one) => [
      ...opened(figureSvg(one)).kinds,
      ...opened(renderFigure(one, document).outerHTML).kinds,
    ]),
  );
});
