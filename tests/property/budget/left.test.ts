// Laws of contingency left on random plans from printed seeds; no false alarm.
import { describe, expect, it } from "vitest";
import { contingencyLeft } from "../../../packages/core/src/index.ts";
import { richDocument } from "../laws/richDocument.ts";
import { forecastOf, planOfDocument } from "../laws/runPlan.ts";

const run = { iterations: 200 };

describe("contingencyLeft(plan) on random plans", () => {
  it("is the forecast's own figures, parted; covers exactly when what was agreed holds; ends at nothing", () => {
    const wrong: string[] = [];
    let compared = 0;
    let settledSeen = 0;
    for (let seed = 1300; seed < 1318; seed++) {
      const document = richDocument(seed);
      const plan = planOfDocument(document);
      const { left, problems } = contingencyLeft(plan, run);
      if (left === undefined) {
        expect(problems.length).toBeGreaterThan(0);
        continue;
      }
      const { committed, asWritten, chance } = forecastOf(document, run);
      compared++;
      const { money, days, ahead, settled, held, release } = left;
      const say = (ok: boolean, what: string) => {
        if (!ok) wrong.push(`seed ${seed}: ${what}`);
      };
      const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));
      say(money?.committed === committed.cost && money.asWritten === asWritten.cost, "money of the forecast");
      say(
        days?.committed === committed.workingDays && days.committedDate === committed.date,
        "days of the forecast",
      );
      say(money?.chance === chance.budget && days?.chance === chance.finishBy, "chances of the forecast");
      if (money !== undefined) {
        say(money.spare < -1e-9 === money.chance < left.confidence - 1e-9, "covers when it holds");
        say(near(money.left - money.exposure, money.spare), "spare");
        say(ahead[0]?.exposure.money === money.exposure, "the way ahead starts today");
      }
      const last = ahead.at(-1)?.exposure;
      say(
        near(1 + (last?.money ?? 1), 1) && near(1 + (last?.workingDays ?? 1), 1),
        `ends at ${JSON.stringify(last)}`,
      );
      settledSeen += settled.length;
      for (const part of ["money", "workingDays"] as const) {
        say(
          near(
            settled.reduce((sum, one) => sum + one.held[part], 0),
            held[part],
          ),
          "parts add up",
        );
        say(
          near(
            settled.reduce((sum, one) => sum + one.mayRelease[part], 0),
            release[part],
          ),
          "release adds up",
        );
      }
      say(release.money <= Math.max(0, money?.spare ?? 0) + 1e-9, "releases only what is spare");
    }
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(12);
    expect(settledSeen).toBeGreaterThan(5);
  });
});
