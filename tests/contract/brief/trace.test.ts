// Every figure of a brief can be followed to the answer it stands in, and asked for again: an answer made anew with the
// run's seed and iterations has the same value at the same place. JSON pointers: RFC 6901 (recalled).
import { type BriefFigure, explain, forecast, responses, testAssumptions, whyConfidence } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { briefed, fullPlan, planOf } from "./plans.ts";

const at = (answer: unknown, pointer: string): unknown =>
  pointer
    .split("/")
    .slice(1)
    .reduce((node: unknown, key) => (node as Record<string, unknown> | undefined)?.[key], answer);

describe("the trace of a brief", () => {
  const plan = planOf(fullPlan);
  const { brief } = briefed(plan, 200);
  const trace = brief.trace ?? [];
  const { seed, iterations } = brief.stamp;
  const again = { seed, iterations };
  const answers: Partial<Record<BriefFigure["from"], unknown>> = {
    forecast: forecast(plan, again).forecast,
    explain: explain(plan, again).explanation,
    responses: responses(plan, again).responses,
    confidence: whyConfidence(plan, again).confidence,
  };
  const tested = testAssumptions(plan, again).tested;

  it("has each figure once, at its place and as it stands there", () => {
    expect(new Set(trace.map(({ figure }) => figure)).size).toBe(trace.length);
    for (const { figure, value } of trace) expect([figure, at(brief, figure)]).toEqual([figure, value]);
    for (const wanted of [
      "/commitment/committed/date",
      "/commitment/committed/cost",
      "/commitment/chance/both",
    ])
      expect(trace.map(({ figure }) => figure)).toContain(wanted);
  });

  it("leads to the same value in an answer made anew", () => {
    const led = trace.filter((one) => one.at !== undefined && one.from !== "assumptions");
    expect(led.length).toBeGreaterThan(40);
    for (const { figure, value, from, at: place = "" } of led)
      expect([figure, at(answers[from], place)]).toEqual([figure, value]);
  });

  it("leads from an assumption to the plan with it false", () => {
    const led = trace.filter(({ from }) => from === "assumptions");
    expect(led.length).toBeGreaterThan(0);
    for (const { value, at: place = "" } of led) {
      const [, , id, , , part = ""] = place.split("/");
      const moved = tested?.assumptions.find((one) => one.id === id)?.ifFalse?.moved;
      expect(at(moved, `/${part}`)).toBe(value);
    }
  });

  it("leaves to the brief itself only what it adds up, and to the plan what the plan states", () => {
    const own = trace.filter(({ from }) => from === "brief").map(({ figure }) => figure);
    for (const figure of own)
      expect(figure).toMatch(
        /^\/(recommendation\/doNothing|drivers\/(rest|rows)|commitment\/asWritten\/\w+Chance|assumptions\/)|causes$/,
      );
    expect(trace.find(({ figure }) => figure === "/commitment/reserve")?.from).toBe("plan");
  });
});
