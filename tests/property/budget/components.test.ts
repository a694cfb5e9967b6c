// Laws of the money on random plans from printed seeds; no false alarm.
import { describe, expect, it } from "vitest";
import { componentRows } from "../../../packages/core/src/budget/components/componentRows.ts";
import { budget, compile, planAsWritten } from "../../../packages/core/src/index.ts";
import { richDocument } from "../laws/richDocument.ts";
import { forecastOf, planOfDocument, runOf } from "../laws/runPlan.ts";

describe("components on random plans", () => {
  it("add up to the total of the simulation in every iteration, by kind and by phase", () => {
    const apart: string[] = [];
    const seen = new Set<string>();
    let compared = 0;
    for (let seed = 1400; seed < 1418; seed++) {
      const document = richDocument(seed);
      const run = runOf(document, { iterations: 200 });
      if (run === undefined) continue;
      compared++;
      const model = compile(planOfDocument(document));
      const { total, kinds, phases } = componentRows(model, planAsWritten(model), {
        seed: model.plan.seed,
        design: "latin-hypercube",
        iterations: 200,
      });
      for (const kind of kinds.keys()) seen.add(kind);
      run.trials.cost.forEach((cost, k) => {
        const byKind = [...kinds.values()].reduce((sum, row) => sum + (row[k] ?? Number.NaN), 0);
        const byPhase = [...phases.values()].reduce((sum, row) => sum + (row[k] ?? Number.NaN), 0);
        const limit = 1e-9 * Math.max(1, Math.abs(cost));
        if (total[k] !== cost) apart.push(`seed ${seed} #${k}: total ${total[k]}, simulated ${cost}`);
        if (!(Math.abs(byKind - cost) <= limit)) apart.push(`seed ${seed} #${k}: ${cost}, kinds ${byKind}`);
        if (!(Math.abs(byPhase - cost) <= limit))
          apart.push(`seed ${seed} #${k}: ${cost}, phases ${byPhase}`);
      });
    }
    expect(apart.slice(0, 6)).toEqual([]);
    expect(compared).toBeGreaterThan(12);
    expect([...seen].sort()).toEqual([
      "overheads",
      "people",
      "responses",
      "risks",
      "spent",
      "task-cost",
      "task-per-day",
    ]);
  });
});

describe("budget(plan) on random plans", () => {
  it("splits the committed sum of the forecast exactly, and agrees with its months", () => {
    const wrong: string[] = [];
    let compared = 0;
    let cured = 0;
    for (let seed = 1430; seed < 1440; seed++) {
      const rich = richDocument(seed);
      const funds = [
        { from: "2027-01-01", amount: 600 },
        { from: "2030-01-01", amount: 40000 },
      ];
      const document = { ...rich, commitment: { ...rich.commitment, funds } };
      const run = { iterations: 100, ahead: false };
      const { budget: found } = budget(planOfDocument(document), run);
      if (found === undefined) continue;
      compared++;
      const forecast = forecastOf(document, { iterations: 100 });
      const near = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));
      const say = (ok: boolean, what: string) => {
        if (!ok) wrong.push(`seed ${seed}: ${what}`);
      };
      const { total, components, phases, months } = found;
      const sum = <T>(list: readonly T[], of: (one: T) => number) =>
        list.reduce((all, one) => all + of(one), 0);
      say(total.committed === forecast.committed.cost && total.mean === forecast.cost.mean, "total");
      say(near(found.contingency.money, forecast.contingency.money), "contingency");
      say(
        near(
          sum(components, ({ split }) => split),
          total.committed,
        ),
        "split by kind",
      );
      say(
        near(
          sum(phases, ({ split }) => split),
          total.committed,
        ),
        "split by phase",
      );
      say(
        near(
          sum(months, ({ spent }) => spent.split),
          total.committed,
        ),
        "split by month",
      );
      say(
        near(
          sum(components, ({ mean }) => mean),
          total.mean,
        ),
        "means by kind",
      );
      say(
        near(
          sum(components, ({ asWritten }) => asWritten),
          total.asWritten,
        ),
        "as written by kind",
      );
      for (const { phase, mean, components: parts } of phases)
        say(
          near(
            sum(parts, (part) => part.mean),
            mean,
          ),
          `means of phase ${phase}`,
        );
      say(
        JSON.stringify(
          months.map(({ month, byEnd, chanceCovered }) => [month, byEnd.p50, byEnd.p80, chanceCovered]),
        ) ===
          JSON.stringify(
            forecast.months?.map((m) => [m.month, m.cumulative.p50, m.cumulative.p80, m.chanceCovered]),
          ),
        "months of the forecast",
      );
      for (const month of months)
        say(
          near(
            sum(month.components, ({ mean }) => mean),
            month.spent.mean,
          ),
          `means of ${month.month}`,
        );
      say(found.funds?.firstShort?.month === forecast.firstShortfall?.month, "first shortfall");
      const cure = found.funds;
      if (cure === undefined || cure.covered) continue;
      // Both cures, tried: every month is then covered at the level.
      const covered = (changed: object[]) =>
        forecastOf({ ...rich, commitment: { ...rich.commitment, funds: changed } }, { iterations: 100 })
          .firstShortfall === undefined;
      const more = { from: cure.more?.by ?? "", amount: (cure.more?.amount ?? 0) + 1e-6 };
      say(covered([...funds, more]), "more money cures it");
      const moved = funds.map(({ from, amount }) => ({
        from: cure.earlier.find((one) => one.from === from)?.neededBy ?? from,
        amount,
      }));
      say(covered(moved) === cure.lacking <= 0, "earlier money cures it where there is enough");
      cured++;
    }
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(5);
    expect(cured).toBeGreaterThan(2);
  });
});
