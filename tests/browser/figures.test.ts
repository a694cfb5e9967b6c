import { documentOf, estimateTable, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { tableHtml } from "../../apps/notebook/src/handing/page/tableHtml.ts";
import { writtenEstimates } from "../../apps/notebook/src/handing/page/writtenEstimates.ts";
import { estimateCells } from "../../apps/notebook/src/plan/estimateEntry.ts";
import { figureText } from "../../apps/notebook/src/plan/figureText.ts";
import { readNumber } from "../../apps/notebook/src/plan/readNumber.ts";

// Digits in groups of three: ISO 80000-1, 7.3 (from memory); with a comma between: common practice in English, no source.
describe("a figure in a field", () => {
  it.each([
    [0, "0"],
    [999, "999"],
    [1000, "1,000"],
    [205000, "205,000"],
    [-12345.678, "-12,345.678"],
    [1234567.5, "1,234,567.5"],
    [0.0005, "0.0005"],
    [1e21, "1e+21"],
  ])("%d is written %s", (value, text) => {
    expect(figureText(value)).toBe(text);
  });

  it("is read back to the last digit, with a sign or without", () => {
    for (let i = 0; i < 2000; i++) {
      const value = Number((((i * 7919) % 10007) * 10 ** ((i % 9) - 3) * (i % 2 === 0 ? 1 : -1)).toFixed(6));
      expect(readNumber(figureText(value), "a number", "1")).toEqual({ value });
    }
    expect(readNumber("+12,000", "a number", "1")).toEqual({ value: 12000 });
    expect(readNumber("+ 3", "a number", "1")).toHaveProperty("words");
    expect(readNumber("++3", "a number", "1")).toHaveProperty("words");
  });

  it("stands so in the three cells of an estimate", () => {
    expect(estimateCells({ kind: "fixed", value: 18200, unit: "days" })).toMatchObject({ likely: "18,200" });
  });
});

// What an approver who never saw the document can read is judgement, no source.
describe("estimates in the page to be read", () => {
  const text = `format: 1
title: Shed
start: 2027-02-01
currency: GBP
people: [{ id: mo, name: Mo Ferris }]
tasks:
  - { id: roof, name: Roof, duration: [2, 3, 6], cost: [1500, 2000, 3500], estimatedBy: mo, basis: As drawn }
  - { id: wall, name: Wall, duration: { low: 1, high: 4, unit: weeks, shape: uniform } }
`;

  it("are told in names and units, without columns that say nothing, figures ending in line", () => {
    const { plan, problems } = readPlan(text);
    if (plan === undefined) throw new Error(JSON.stringify(problems));
    const table = writtenEstimates(estimateTable(documentOf(text) ?? {}), plan);
    const headings = [
      "Task",
      "Of its",
      "Low",
      "Likely",
      "High",
      "In",
      "Shape",
      "Estimated by",
      "Why they would know",
    ];
    expect(table).toEqual({
      header: headings,
      rows: [
        ["Roof", "duration", "2", "3", "6", "working days", "", "Mo Ferris", "As drawn"],
        ["Roof", "cost", "1,500", "2,000", "3,500", "GBP", "", "", ""],
        ["Wall", "duration", "1", "", "4", "working weeks", "uniform", "", ""],
      ],
    });
    const html = tableHtml("Estimates", table);
    expect(html.match(/<th scope="col" class="number">/g)).toHaveLength(3);
    expect(html).toContain('<td data-head="High" class="number">3,500</td>');
    expect(html).not.toMatch(/<th scope="col" class="number">In</);
  });
});
