import { describe, expect, it } from "vitest";
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
