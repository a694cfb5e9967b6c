// Charts of opinions and of the scorecard: readable at every width, and in proportion. No outside source exists for these.
import { opinionsBars, palette, scorecardBars } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { newDocument } from "../charts/newDocument.ts";
import { expectReadable } from "../charts/readable.ts";
import {
  hardPoolings,
  hardScorecards,
  sampleAbout,
  samplePooling,
  sampleScorecard,
} from "./sampleEstimates.ts";

const document = newDocument();
const colours = palette();
const at = (element: Element | undefined, name: string) => Number(element?.getAttribute(name));

describe("opinionsBars(pooling)", () => {
  const figure = opinionsBars(samplePooling(), sampleAbout, { document, width: 720 });
  it("draws every bar from low to high on one axis, and the pooled one last and heavy", () => {
    const bars = Array.from(figure.svg.querySelectorAll("rect"));
    // 3-9, 5-13, 20-30 and their averages 9.33-17.33: widths in px stand to each other as the days do.
    const widths = bars.map((bar) => at(bar, "width"));
    const day = (widths[0] ?? 0) / 6;
    expect(widths.map((width) => Number((width / day).toFixed(1)))).toEqual([6, 8, 10, 8]);
    expect(bars.at(-1)?.getAttribute("fill")).toBe(colours.committed);
  });
  it("says in the title who stands alone, and has everything in the table", () => {
    expect(figure.title).toBe("Cid stands alone on “Dig”");
    expect(figure.table.rows.map((row) => row.join(" "))).toEqual([
      "Ana 3 5 9",
      "Ben 5 7 13",
      "Cid 20 25 30",
      "Pooled 9.33 12.3 17.3",
    ]);
    expect(figure.summary).toContain("No value is possible to all");
  });
  it.each(Object.entries(hardPoolings()))("is readable: %s", (_, [pooling, about]) => {
    expectReadable((options) => opinionsBars(pooling, about, options), document);
  });
});

describe("scorecardBars(card)", () => {
  const figure = scorecardBars(sampleScorecard(), { document, width: 720 });
  it("puts the dot at the actual value over the likely one, a ring where it is outside", () => {
    const dots = Array.from(figure.svg.querySelectorAll("circle"));
    // Actual over likely: 12/5, 7/5, 4/5; the furthest over first. Distances in px are as those of the ratios.
    const [far, middle, near] = dots.map((dot) => at(dot, "cx"));
    expect(((far ?? 0) - (middle ?? 0)) / ((middle ?? 0) - (near ?? 0))).toBeCloseTo(
      (2.4 - 1.4) / (1.4 - 0.8),
      1,
    );
    expect(dots.map((dot) => dot.getAttribute("fill"))).toEqual([colours.paper, colours.ink, colours.ink]);
  });
  it("says how many held, and of how many it is meant", () => {
    expect(figure.title).toBe("2 of 3 tasks stayed inside their one-in-ten range; 8 in 10 are meant to");
    expect(figure.table.rows.map(([name]) => name)).toEqual(["Task 2", "Task 1", "Task 0"]);
  });
  it.each(Object.entries(hardScorecards()))("is readable: %s", (_, card) => {
    expectReadable((options) => scorecardBars(card, options), document);
  });
});
