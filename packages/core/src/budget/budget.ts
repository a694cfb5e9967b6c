import { someoneOf } from "../brief/someone.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { stampOf } from "../explain/confidence/stampOf.ts";
import { explaining, type Subject } from "../explain/subject.ts";
import { meanAndSd } from "../forecast/moments.ts";
import { rankSelector } from "../forecast/rankSelector.ts";
import { limitRanks, rankOf } from "../forecast/ranks.ts";
import { summariseWorth } from "../forecast/worth.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";
import type { Model } from "../simulate/model.ts";
import { addMoney, fillAmount, newMoneySums } from "../simulate/money.ts";
import { simulate } from "../simulate/simulate.ts";
import { delayCost } from "./appraise/delayCost.ts";
import { worthOf } from "./appraise/worthOf.ts";
import { asOf } from "./asOf.ts";
import { type ComponentRows, componentRows } from "./components/componentRows.ts";
import { modelOfKind } from "./components/kinds.ts";
import { monthMoney, spreadOf } from "./components/monthMoney.ts";
import { splitAt } from "./components/splitAt.ts";
import { fundsCure } from "./fundsCure.ts";
import { type ContingencyLeftOptions, contingencyLeft } from "./left/contingencyLeft.ts";
import type { Budget, Component, MonthMoney, PhaseMoney } from "./types.ts";

/** Which run the money is read from, and of which day. */
export type BudgetOptions = ContingencyLeftOptions;
/** The plan's money, or the problems for which it cannot be told. */
export interface BudgetResult {
  budget?: Budget;
  problems: Problem[];
}

/**
 * The money of a plan in one answer: what it is for, by phase and by month, against what is released; contingency and
 * reserve apart, and what is left of the one; benefit against cost; what delay costs. See `Budget`.
 *
 * Every figure is of the forecast's own draws. Problems are values. Cost: about five runs of the model.
 */
export function budget(given: Plan, options: BudgetOptions = {}): BudgetResult {
  const { plan, problems: unfit } = asOf(given, options.today);
  const answer = (subject: Subject): BudgetResult => {
    const { model, asWritten, draw } = subject;
    const { onProgress } = options;
    const confidence = options.confidence ?? model.confidence;
    const run = simulate(model, {
      ...draw,
      months: true,
      ...(onProgress === undefined ? {} : { onProgress }),
    });
    if (run.trials === undefined) return { problems: run.problems };
    const { trials } = run;
    const summary = summariseWorth(model, trials, confidence);
    let perDay = 0;
    const rows = componentRows(model, asWritten, draw, (block) => {
      for (const overhead of model.overheads) {
        if (overhead.to >= 0 && overhead.to !== model.finishOf) continue;
        fillAmount(overhead.perDay, block, block.scratch);
        for (let k = 0; k < block.n; k++) perDay += (block.scratch[k] as number) / draw.iterations;
      }
    });
    const total = totalOf(rows.total, confidence);
    const components = componentsOf(subject, rows, confidence);
    const months = monthsOf(subject, confidence, summary.months ?? [], trials.months, [...rows.kinds.keys()]);
    const worth =
      summary.appraisal === undefined ? undefined : worthOf(model, asWritten, draw, summary.appraisal);
    const lateness = delayCost(model, trials, draw);
    const { commitment, statusDate } = plan;
    const holder = someoneOf(plan)(commitment.holder);
    const { onProgress: _, today: _t, ...asked } = options;
    const { left, problems } = contingencyLeft(plan, asked);
    if (problems.length > 0) return { problems };
    const workdays = plan.calendars.get(plan.calendar)?.workdays.length ?? 5;
    return {
      budget: {
        stamp: stampOf(model, draw),
        plan: { title: plan.title, currency: plan.currency, start: plan.start },
        confidence,
        ...(statusDate === undefined ? {} : { statusDate }),
        total: { ...total, asWritten: asWritten.cost },
        components,
        addedUp: {
          p50: components.reduce((sum, { p50 }) => sum + p50, 0),
          p80: components.reduce((sum, { p80 }) => sum + p80, 0),
        },
        phases: phasesOf(rows, confidence),
        months,
        ...(commitment.funds.length > 0 ? { funds: fundsCure(plan, months, total.committed) } : {}),
        contingency: {
          money: total.committed - asWritten.cost,
          ...(holder === undefined ? {} : { holder }),
          ...(commitment.releaseRule === undefined ? {} : { releaseRule: commitment.releaseRule }),
        },
        ...(commitment.reserve === undefined ? {} : { reserve: commitment.reserve }),
        ...(left?.money?.agreedFrom === "plan"
          ? { asked: { budget: left.money.agreed, chance: left.money.chance } }
          : {}),
        ...(worth === undefined ? {} : { worth: worth.worth }),
        delay: {
          ...(lateness === undefined ? {} : { lateness }),
          overheadsPerWeek: perDay * workdays,
          ...(worth === undefined ? {} : { benefitsPerWeek: worth.benefitsPerWeek }),
        },
        ...(left?.money === undefined && left?.days === undefined ? {} : { left }),
      },
      problems: [],
    };
  };
  return explaining(plan, options, answer, { unfit });
}

function totalOf(row: Float64Array, confidence: number): Omit<Budget["total"], "asWritten"> {
  const n = row.length;
  const select = rankSelector(n);
  const limits = limitRanks(confidence, n);
  const [committed, low, high] = select(row, [rankOf(confidence, n), limits.low, limits.high]) as [
    number,
    number,
    number,
  ];
  return { ...spreadOf(row, select), sd: meanAndSd(row).sd, committed, low, high };
}

function componentsOf({ model, asWritten }: Subject, rows: ComponentRows, confidence: number): Component[] {
  const kinds = [...rows.kinds];
  const { parts, errors } = splitAt(
    rows.total,
    kinds.map(([, row]) => row),
    confidence,
  );
  const select = rankSelector(rows.total.length);
  return kinds.map(
    ([kind, row], i): Component => ({
      kind,
      ...spreadOf(row, select),
      asWritten: costAsWritten(modelOfKind(model, kind), asWritten),
      split: parts[i] as number,
      error: errors[i] as number,
    }),
  );
}

function costAsWritten(model: Model, { block }: Subject["asWritten"]): number {
  const own = { ...block, cost: block.cost.slice() };
  addMoney(model, own, newMoneySums(model));
  return own.cost[0] as number;
}

function phasesOf({ total, phases, means }: ComponentRows, confidence: number): PhaseMoney[] {
  const list = [...phases];
  const { parts, errors } = splitAt(
    total,
    list.map(([, row]) => row),
    confidence,
  );
  const select = rankSelector(total.length);
  return list.map(
    ([phase, row], i): PhaseMoney => ({
      ...(phase === "" ? {} : { phase }),
      ...spreadOf(row, select),
      split: parts[i] as number,
      error: errors[i] as number,
      components: [...(means.get(phase) ?? [])].flatMap(([kind, mean]) =>
        mean === 0 ? [] : [{ kind, mean }],
      ),
    }),
  );
}

function monthsOf(
  { model, asWritten, draw }: Subject,
  confidence: number,
  released: NonNullable<ReturnType<typeof summariseWorth>["months"]>,
  phased: { months: Parameters<typeof monthMoney>[4]["months"] } | undefined,
  kinds: Parameters<typeof monthMoney>[4]["kinds"],
): MonthMoney[] {
  if (phased === undefined) return [];
  const shown = released.length;
  return monthMoney(model, asWritten, draw, confidence, { months: phased.months, shown, kinds }).map(
    (month, m) => {
      const funds = released[m];
      if (funds?.released === undefined || funds.chanceCovered === undefined) return month;
      const over = month.byEnd.committed - funds.released;
      const short = over > tolerance * Math.max(1, Math.abs(funds.released)) ? over : 0;
      return { ...month, released: funds.released, chanceCovered: funds.chanceCovered, short };
    },
  );
}
