import { readLevel } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { forecastOf, runOf } from "../laws/runPlan.ts";

/**
 * A level read off the curve is the percentile by its own definition: the smallest simulated value that at least
 * that share of the iterations does not exceed (plan format 1, "Answers"), counted here on the iterations
 * themselves. Random plans from printed seeds; exact.
 */
const seeds = Array.from({ length: 8 }, (_, k) => 4100 + k);
const iterations = 400;

function share(row: Float64Array, value: number): number {
  return row.filter((each) => each <= value).length / row.length;
}

describe("readLevel(forecast, p)", () => {
  it("is the percentile of the iterations on every whole per cent", () => {
    let checked = 0;
    for (const seed of seeds) {
      const document = randomPlanDocument(seededRng(seed), { progress: false });
      const run = runOf(document, { iterations });
      if (run === undefined) continue;
      const forecast = forecastOf(document, { iterations });
      for (const percent of [1, 7, 33, 50, 64, 79, 80, 95]) {
        const p = percent / 100;
        const reading = readLevel(forecast, p);
        for (const [row, value, low, high] of [
          [run.trials.cost, reading.cost, reading.costLow, reading.costHigh],
          [run.trials.finish, reading.day, reading.day, reading.day],
        ] as const) {
          expect(share(row, value), `seed ${seed} at ${percent} %`).toBeGreaterThanOrEqual(p - 1e-12);
          const below = row.filter((each) => each < value).length / row.length;
          expect(below, `seed ${seed} at ${percent} %`).toBeLessThan(p);
          expect(low).toBeLessThanOrEqual(value);
          expect(high).toBeGreaterThanOrEqual(value);
        }
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(30);
  });

  it("promises no more than the run at that level does: its limits hold those, its date lies within", () => {
    const other: string[] = [];
    let checked = 0;
    for (const seed of seeds) {
      const document = randomPlanDocument(seededRng(seed), { progress: false });
      if (runOf(document, { iterations }) === undefined) continue;
      const forecast = forecastOf(document, { iterations });
      for (const p of [0.3, 0.55, 0.65, 0.77, 0.85]) {
        const reading = readLevel(forecast, p);
        const { committed } = forecastOf(document, { iterations, confidence: p });
        checked++;
        if (reading.cost !== committed.cost || reading.day !== committed.day)
          other.push(`${seed} ${p}: value`);
        if (reading.costLow > committed.costLow || reading.costHigh < committed.costHigh)
          other.push(`${seed} ${p}: limits`);
        if (reading.date !== committed.date) other.push(`${seed} ${p}: ${reading.date} ${committed.date}`);
      }
    }
    expect(other).toEqual([]);
    expect(checked).toBeGreaterThan(20);
  });
});
