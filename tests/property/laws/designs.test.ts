import { describe, expect, it } from "vitest";
import { bandHalfWidth } from "../exact/shares.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * Latin hypercube sampling and plain sampling answer the same question. One plan of a dozen estimates and three
 * risks, 20,000 iterations each, seed `designs`.
 *
 * Chance of a false alarm: two Dvoretzky-Kiefer-Wolfowitz bands (Massart 1990) at alpha = 1e-6 for each of two
 * distribution functions, and two means within six standard errors (2e-9 each): below 1 in 200,000. The band is
 * proved for plain draws; the stratified ones lie nearer, their variance of a mean being no larger asymptotically
 * (M. Stein, 1987, Technometrics 29(2), 143-151, recalled).
 */
const iterations = 20_000;
const seed = "designs";
const document = {
  format: 1,
  title: "Designs",
  start: "2027-02-01",
  people: [
    { id: "ann", name: "Ann", rate: 400 },
    { id: "bob", name: "Bob", rate: 350 },
  ],
  tasks: [
    { id: "a", name: "A", duration: [3, 5, 12], people: "ann", cost: [100, 200, 900] },
    { id: "b", name: "B", duration: { low: 2, high: 9, shape: "uniform" }, people: "bob" },
    { id: "c", name: "C", effort: [4, 6, 15], after: "a", people: ["ann", "bob"] },
    { id: "d", name: "D", duration: { low: 3, high: 8, shape: "lognormal", bounds: "p10-p90" }, after: "b" },
    { id: "e", name: "E", duration: { low: 2, likely: 4, high: 9, shape: "triangular" }, after: ["c", "d"] },
    { id: "f", name: "F", duration: [1, 2, 6], after: { task: "b", lag: [1, 3, 6] }, chance: 0.6 },
  ],
  risks: [
    { id: "r", name: "R", probability: 0.3, impacts: { tasks: "d", delay: [2, 4, 10], cost: [50, 80, 300] } },
    { id: "s", name: "S", probability: 0.2, impacts: { tasks: "e", factor: [1.1, 1.5, 2] } },
  ],
};

function distance(a: Float64Array, b: Float64Array): number {
  const [x, y] = [a.slice().sort(), b.slice().sort()];
  let [i, j, worst] = [0, 0, 0];
  while (i < x.length && j < y.length) {
    const at = Math.min(x[i] as number, y[j] as number);
    while (i < x.length && (x[i] as number) <= at) i++;
    while (j < y.length && (y[j] as number) <= at) j++;
    worst = Math.max(worst, Math.abs(i / x.length - j / y.length));
  }
  return worst;
}

describe("Latin hypercube and plain sampling", () => {
  const plain = runOf(document, { iterations, seed, design: "plain" });
  const latin = runOf(document, { iterations, seed, design: "latin-hypercube" });
  if (plain === undefined || latin === undefined) throw new Error("the plan does not run");

  it("give the same distributions of finish and cost within their sampling error, from other draws", () => {
    const allowed = 2 * bandHalfWidth(iterations, 1e-6);
    for (const what of ["finish", "cost"] as const) {
      const apart = distance(plain.trials[what], latin.trials[what]);
      expect(apart).toBeLessThan(allowed);
      expect(apart).toBeGreaterThan(0);
    }
  });

  it("give the same means within six standard errors of plain sampling", () => {
    const [a, b] = (["plain", "latin-hypercube"] as const).map((design) =>
      forecastOf(document, { iterations, seed, design }),
    );
    if (a === undefined || b === undefined) throw new Error("no forecast");
    for (const what of ["finish", "cost"] as const) {
      const error = (a[what].sd * Math.SQRT2) / Math.sqrt(iterations);
      expect(Math.abs(a[what].mean - b[what].mean)).toBeLessThan(6 * error);
    }
    expect([a.design, b.design]).toEqual(["plain", "latin-hypercube"]);
  });
});
