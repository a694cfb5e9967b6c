// That one move is told as one figure, and that a name is read whole: what readers stumbled over; common practice, no source.
import { formatMoney, movedSentence, movesDays, movesMoney } from "@leeway/charts";
import type { Comparison } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { newDocument } from "../newDocument.ts";
import { sampleComparison } from "./sampleComparison.ts";

const what =
  "The first inspection is failed: response “Hire a retired inspector for a mock inspection in the week before” adopted, chance from 35 % to 12 %, for EUR 1,500";

/** A comparison that one change makes. */
function moved(workingDays: number, money: number): Comparison {
  const sample = sampleComparison();
  const [move] = sample.moves;
  if (move === undefined) throw new Error("the sample has no move");
  const effect = { ...sample.difference, workingDays, money };
  return { ...sample, difference: effect, moves: [{ ...move, what, workingDays, money }] };
}

describe("what a change moved", () => {
  it.each([
    [12.4, 5490, "12", "5,500"],
    [-3.87, -1319, "3.9", "1,300"],
    [30.6, 12_345_678, "31", "12,000,000"],
  ])(
    "by %d days and %d is one figure in the sentence, the titles, the bars and the tables",
    (days, money, d, m) => {
      const comparison = moved(days, money);
      expect(movedSentence(comparison).replace(/\s/g, " ")).toContain(`: ${d} working days`);
      expect(movedSentence(comparison)).toContain(`EUR ${m}`);
      const options = { document: newDocument() };
      const [inDays, inMoney] = [movesDays(comparison, options), movesMoney(comparison, options)];
      expect(inDays.title.replace(/\s/g, " ")).toContain(` ${d} working days`);
      expect(inMoney.title.replace(/\s/g, " ")).toContain(` EUR ${m},`);
      const sign = days < 0 ? "−" : "+";
      for (const row of inDays.table.rows) expect(row[2]).toBe(`${sign}${d}`);
      const column = Math.abs(money) < 1e7 ? m : "12";
      for (const row of inMoney.table.rows) expect(row[2]).toBe(`${sign}${column}`);
      const texts = Array.from(inDays.svg.querySelectorAll("text"), (each) => each.textContent);
      expect(texts.filter((text) => text === `${sign}${d}`)).toHaveLength(2);
    },
  );

  // What an approver does with a column: adds it up.
  it("by several changes is seen to add up", () => {
    const sample = sampleComparison();
    const { rows } = movesMoney(sample, { document: newDocument() }).table;
    const figures = rows.map((row) => Number(row[2]?.replace("−", "-").replace(/[+,\s]/g, "")));
    const whole = figures.pop() ?? Number.NaN;
    expect(figures.length).toBeGreaterThan(2);
    expect(figures.reduce((sum, one) => sum + one, 0)).toBe(whole);
  });

  it("says cents where the move is smaller than them", () => {
    const comparison = moved(1, 3.46);
    expect(movesMoney(comparison, { document: newDocument() }).table.rows[0]?.[2]).toBe("+3.50");
    expect(movedSentence(comparison)).toContain(formatMoney(3.5, "EUR"));
  });

  it.each([320, 500, 640])("names the change whole at %d px", (width) => {
    const { svg } = movesDays(moved(12.4, 5490), { document: newDocument(), width });
    const texts = Array.from(svg.querySelectorAll("text"), (each) => each.textContent ?? "");
    const said = texts.join(" ").replace(/\s/g, " ");
    expect(said).toContain(what.replace(/\s/g, " "));
    expect(said).not.toContain("…");
  });
});
