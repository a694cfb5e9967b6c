import { movesDays, movesMoney, sharesDays, sharesMoney, walkDays, walkMoney } from "@leeway/charts";
import type { Explanation } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { newDocument } from "../newDocument.ts";
import { hardComparisons } from "./hardComparisons.ts";
import { hardExplanations } from "./hardExplanations.ts";
import { sampleComparison, sampleMoves } from "./sampleComparison.ts";
import { sampleExplanation, sampleShares, sampleWalk } from "./sampleExplanation.ts";

// Each title is worked out by hand from the figures of the sample it is of. No outside source exists for wording.

const document = newDocument();
const of = <T>(cases: Record<string, T>, name: string): T => {
  const found = cases[name];
  if (found === undefined) throw new Error(`no case "${name}"`);
  return found;
};

describe("sharesDays(explanation), sharesMoney(explanation)", () => {
  // 14.2 + 11.3 + 8.4 + 7.6 + 6.1 + 9.9 + 3.2 - 4.7 = 56.0 days
  it("name the largest share and the contingency", () => {
    expect(sharesDays(sampleExplanation(), { document }).title).toBe(
      "“Permit decided” makes 14 of 56 working days of contingency, the largest single share",
    );
    expect(sharesMoney(sampleExplanation(), { document }).title).toBe(
      "“Quay wall needs pinning” makes EUR 18,400 of EUR 48,800 of contingency, the largest single share",
    );
  });
  it("name a single cause even where causes gathered together make more", () => {
    const shares = sampleShares.map((share) =>
      share.id === "other-spread" ? { ...share, workingDays: 40 } : share,
    );
    expect(sharesDays(sampleExplanation(shares), { document }).title).toMatch(
      /^“Permit decided” makes 14 of 86/,
    );
  });
  it.each([
    ["no cause at all", "No contingency: the committed date is that of the plan as written"],
    ["causes that come to nothing", "No contingency: the committed date is that of the plan as written"],
    ["zero contingency", "No contingency: what “Tide too low” adds, 5 working days, the rest saves"],
    ["one cause", "All 4 working days of contingency come from “Permit decided”"],
    ["all equal", "No cause stands out: each of 5 makes 4 working days of 20 working days"],
    [
      "negative shares",
      "The committed date is 56 working days before the plan as written: “Permit decided” saves most, 14 working days",
    ],
  ])("%s", (name, title) => expect(sharesDays(of(hardExplanations(), name), { document }).title).toBe(title));
  it("table all shares and their sum, however many are drawn", () => {
    const { table, svg } = sharesDays(of(hardExplanations(), "forty causes"), { document });
    expect(table.rows).toHaveLength(41);
    expect(table.rows[40]?.[0]).toBe("Contingency");
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("26 smaller ones");
    expect(words).toContain("Cause number 14");
    expect(words).not.toContain("Cause number 15");
  });
  it("say how orders were taken, and mark no limits where all were", () => {
    const sampled = sharesDays(sampleExplanation(), { document });
    expect(sampled.subtitle).toContain("95 % limits");
    expect(sampled.summary).toContain("400 orders of the causes were sampled");
    const exact = sharesDays(of(hardExplanations(), "one cause"), { document });
    expect(exact.subtitle).not.toContain("limits");
    expect(exact.summary).toContain("every order of the causes was taken");
  });
  it("write an error that shows no digit as less than the digit", () => {
    const errors = [0, 0.01, 0.4];
    const shares = sampleShares.slice(0, 3).map((share, k) => ({
      ...share,
      error: { workingDays: errors[k] ?? 0, money: 0 },
    }));
    const { table, svg } = sharesDays(sampleExplanation(shares), { document });
    expect(table.rows.map((row) => row[3])).toEqual(["exact", "under 0.1", "0.4", ""]);
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words.filter((text) => text?.startsWith("±"))).toEqual(["± 0.8"]); // 1.96 of them
  });
  it("show a sum to the place its limits support", () => {
    // Half the width of the limits is 3,000: thousands.
    const limits = {
      lowDate: "2027-10-29",
      highDate: "2027-11-03",
      low: { workingDays: 194, money: 644_000 },
      high: { workingDays: 197, money: 650_000 },
    };
    const { svg } = sharesMoney(sampleExplanation(undefined, { limits }), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("EUR 598,000");
    expect(words).toContain("EUR 647,000 · 80 %");
  });
});

describe("walkDays(explanation), walkMoney(explanation)", () => {
  // Of 56 days the largest step is 31 %, of EUR 48,800 it is 42 %.
  it("name the largest step", () => {
    expect(walkDays(sampleExplanation(), { document }).title).toBe(
      "The 80 % date is 56 working days later than the plan as written; the largest step is “Risks and assumptions”, 17 working days",
    );
    expect(walkMoney(sampleExplanation(), { document }).title).toBe(
      "The 80 % sum is EUR 48,800 more than the plan as written; the largest step is “Risks and assumptions”, EUR 20,500",
    );
  });
  it.each([
    ["no cause at all", "Nothing lies between the plan as written and the 80 % date"],
    [
      "a walk that turns back",
      "The 80 % date is 56 working days later than the plan as written; the largest step is “Merging of paths”, 30 working days earlier",
    ],
  ])("%s", (name, title) => expect(walkDays(of(hardExplanations(), name), { document }).title).toBe(title));
  it("name the only step", () => {
    const walk = sampleWalk(56, 48_800)
      .slice(0, 1)
      .map((step) => ({ ...step, workingDays: 56 }));
    expect(walkDays(sampleExplanation(undefined, { walk }), { document }).title).toBe(
      "The 80 % date is 56 working days later than the plan as written, all of it by one step: “Spread along the driving path”",
    );
  });
  // Bars are told apart by what a step lets in; its words are for reading.
  it("tint a step by its kind, whatever it is called", () => {
    const paints = (walk: Explanation["walk"]) => {
      const { svg } = walkDays(sampleExplanation(undefined, { walk }), { document });
      const bars = [...svg.querySelectorAll("g")].filter((group) => group.firstChild?.nodeName === "title");
      return bars.map((group) =>
        [...group.children].map((each) => `${each.getAttribute("fill")} ${each.getAttribute("stroke")}`),
      );
    };
    const walk = sampleWalk(56, 48_800);
    const plain = paints(walk);
    expect(plain).toHaveLength(walk.length);
    const [spread, merging, people, register, percentile] = plain;
    expect([merging, percentile]).toEqual([spread, spread]);
    expect(people).not.toEqual(spread);
    expect(register).not.toEqual(spread);
    expect(register).not.toEqual(people);
    expect(paints(walk.map((step, k) => ({ ...step, step: `Risk of people ${k}` })))).toEqual(plain);
    expect(paints(walk.map((step) => ({ ...step, kind: "spread" })))).toEqual(plain.map(() => spread));
  });
  it("keep the steps in their order and add them up", () => {
    const { table } = walkDays(sampleExplanation(), { document });
    expect(table.rows.map((row) => row[0])).toEqual([
      "Spread along the driving path",
      "Merging of paths",
      "Limited people",
      "Risks and assumptions",
      "From the mean to 80 %",
      "Contingency",
    ]);
    expect(table.rows[4]?.[2]).toBe("+56.0");
  });
});

describe("movesDays(comparison), movesMoney(comparison)", () => {
  // 8.3 + 3.1 - 6.2 + 2.4 + 1.2 = 8.8 days; 4200 + 900 - 14,300 + 7600 + 3100 = 1500 euro.
  it("say of a sum moved by less than it is rounded to that it is still the same", () => {
    // Half the width of the limits is 3,000: thousands, and 655,100 is 655,000 as 655,400 is.
    const [first] = sampleMoves;
    if (first === undefined) throw new Error("no move");
    const comparison = sampleComparison([{ ...first, money: 300 }]);
    Object.assign(comparison.from, { cost: 655_100, costLow: 652_100, costHigh: 658_100 });
    Object.assign(comparison.to, { cost: 655_400, costLow: 652_400, costHigh: 658_400 });
    expect(movesMoney(comparison, { document }).title).toBe(
      "The committed sum rises by EUR 300, still EUR 655,000 as rounded: “Permit decided”",
    );
  });
  it("say how far, where to, and what moved most", () => {
    expect(movesDays(sampleComparison(), { document }).title).toBe(
      "The committed date moves 8.8 working days later, to 14 Nov 2027, most by “Permit decided”, 8.3 working days",
    );
    expect(movesMoney(sampleComparison(), { document }).title).toBe(
      "The committed sum rises by EUR 1,500, to EUR 656,900, most by “Risk “Quay wall needs pinning” closed”, EUR 14,300 cheaper",
    );
  });
  it.each([
    ["no change", "The committed date stays 2 Nov 2027: nothing moved it"],
    ["changes that move nothing", "The committed date stays 2 Nov 2027: nothing moved it"],
    ["one change", "The committed date moves 8.3 working days later, to 14 Nov 2027: “Permit decided”"],
    [
      "changes that cancel out",
      "The committed date stays 2 Nov 2027: changes cancel out, the largest “Permit decided”, 8.3 working days later",
    ],
  ])("%s", (name, title) => expect(movesDays(of(hardComparisons(), name), { document }).title).toBe(title));
  it("leave out of the picture what moves no date, and keep it in the table", () => {
    const { svg, table } = movesDays(sampleComparison(), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).not.toContain("Rate of the electrician");
    expect(table.rows.map((row) => row[0])).toContain("Rate of the electrician");
  });
});
