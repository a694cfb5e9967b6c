/**
 * Finish percentiles, chances and criticality of four published networks under uncertainty, beta-PERT and
 * triangular.
 *
 * Data: the sources named in the models. Expected values: an independent program (another language, another
 * generator), 6,000,000 iterations. Tolerances: four standard errors at 10,000 plain iterations; criticality
 * 0.02.
 */
import { describe, expect, it } from "vitest";
import {
  constructionFourteen,
  productSix,
  type ThreePointDurations,
  threePathsNine,
  vacuumTen,
} from "../../../packages/core/src/models/index.ts";
import { dateAfter, finishAt, forecastOf } from "../integrated/runPlan.ts";
import { expectMean, expectSd, expectShare, expectWithin } from "../integrated/tolerances.ts";

const builders = [
  ["construction", constructionFourteen],
  ["vacuum cleaner", vacuumTen],
  ["product", productSix],
  ["three paths", threePathsNine],
] as const;
const cases = builders.flatMap(([name, build]) =>
  (["pert", "triangular"] as const).map((shape) => [`${name}, ${shape}`, build, shape] as const),
);

describe.each(cases)("forecast(%s), 10,000 iterations", (_, build, shape) => {
  const model = build(shape satisfies ThreePointDurations);
  const known = model.known[shape];
  const result = forecastOf(model.document, { confidence: 0.7 });

  it("agrees in mean and standard deviation", () => {
    expectMean(result.finish.mean, known.mean, known.sd);
    expectSd(result.finish.sd, known.sd);
  });

  it.each(known.percentiles)("agrees at P%s", (p, value, within) => {
    expectWithin(finishAt(result, p), value, within);
  });

  it.each(known.chanceBy)("agrees in the chance of %s days", (days, chance) => {
    const asked = { ...model.document, commitment: { finishBy: dateAfter(days) } };
    expectShare(forecastOf(asked).chance.finishBy ?? Number.NaN, chance);
  });

  it("agrees in criticality", () => {
    expect(result.tasks.map((task) => task.id).sort()).toEqual(Object.keys(known.critical).sort());
    for (const { id, critical } of result.tasks)
      expectWithin(critical, known.critical[id] ?? Number.NaN, 0.02);
  });
});

// Stevenson's chains share no task, so the chance of a date is the product of the three chains' own chances.
describe("forecast(three paths)", () => {
  it("keeps day 21 as often as the three chains on their own would together", () => {
    const { document } = threePathsNine("pert");
    const tasks = document.tasks as { id: string }[];
    const alone = (ids: string[]) =>
      forecastOf({
        ...document,
        tasks: tasks.filter((task) => ids.includes(task.id)),
        commitment: { finishBy: dateAfter(21) },
      }).chance.finishBy ?? Number.NaN;
    const product = alone(["a", "c", "e"]) * alone(["d", "f", "g"]) * alone(["b", "h", "i"]);
    const together = forecastOf({ ...document, commitment: { finishBy: dateAfter(21) } }).chance.finishBy;
    // Three estimated chances and one: twice the limit of one.
    expectWithin(together ?? Number.NaN, product, 2 * 4 * Math.sqrt(0.245 * 0.755) * 0.01);
  });
});
