import { someoneOf } from "../../brief/someone.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { nearest } from "../../plan/definition/nearest.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Assumption, Id, Plan } from "../../plan/types.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { standingAt } from "../confidence/standings.ts";
import { jointChance } from "../joint/jointChance.ts";
import type { Settings } from "../settings.ts";
import { type ExplainingOptions, explaining, type Subject } from "../subject.ts";
import type { Effect, Standing } from "../types.ts";
import { type Outcome, runVariants } from "../variants.ts";
import type { AskedChance, AssumptionsTested, AssumptionTested } from "./types.ts";

/** Which assumptions are tried to be false, and at which level. */
export interface TestAssumptionsOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
  /** Only these; default: all that are not closed. */
  only?: readonly Id[];
}
/** What each assumption carries, or why that cannot be told. */
export interface TestAssumptionsResult {
  tested?: AssumptionsTested;
  problems: Problem[];
}

/**
 * Runs the plan with each assumption false, everything else as it is, on the draws of the plan as it stands: what moves,
 * in days and in money, and what becomes of the chances asked for. Where assumptions or risks exclude each other, the
 * others of its group do not occur.
 *
 * Problems are values. Cost: two re-runs for each assumption, each only of what it reaches.
 *
 * Source  Dewar et al., Assumption-Based Planning, RAND MR-114 (read in an abstract): assumptions are load-bearing by
 *         what their failure does to the plan.
 */
export function testAssumptions(plan: Plan, options: TestAssumptionsOptions = {}): TestAssumptionsResult {
  const asked = options.only;
  const wanted = plan.assumptions.filter(
    ({ id, status }) => status !== "closed" && (asked === undefined || asked.includes(id)),
  );
  const test = ({ model, draw }: Subject): TestAssumptionsResult => {
    const confidence = options.confidence ?? model.confidence;
    const at = new Map(model.register.map((entry, e) => [entry.id, { entry, e }]));
    const open = wanted.filter(({ id }) => at.get(id)?.entry.fact === undefined);
    const settings: Settings[] = [
      {},
      ...open.flatMap(({ id }) => {
        const e = at.get(id)?.e ?? -1;
        return [{ entries: new Map([[e, 0 as const]]) }, { entries: falseAlone(model, e) }];
      }),
    ];
    const read = (outcome: Outcome) => ({
      standing: standingAt(model, outcome, confidence),
      chance: chanceAsked(model, outcome),
    });
    const runs = runVariants(
      draw,
      settings.map((own) => ({ model, settings: own })),
      read,
      options.onProgress,
    );
    const [base] = runs;
    if (base === undefined) throw new Error("one variant, one outcome");
    const { finishBy, budget } = plan.commitment;
    const assumptions = wanted.map((one): AssumptionTested => {
      const k = open.indexOf(one);
      const [holds, fails] = k < 0 ? [] : [runs[1 + 2 * k], runs[2 + 2 * k]];
      return {
        ...said(plan, one),
        ...(holds === undefined || fails === undefined
          ? {}
          : {
              ifFalse: {
                standing: fails.standing,
                moved: between(base.standing, fails.standing),
                againstHolding: between(holds.standing, fails.standing),
                chance: fails.chance,
              },
            }),
      };
    });
    const { title, currency, start } = plan;
    const tested: AssumptionsTested = {
      plan: { title, currency, start },
      stamp: stampOf(model, draw),
      confidence,
      base: base.standing,
      asked: {
        ...(finishBy === undefined ? {} : { finishBy }),
        ...(budget === undefined ? {} : { budget }),
      },
      chance: base.chance,
      assumptions: assumptions.sort(
        (a, b) => reach(b) - reach(a) || money(b) - money(a) || (a.id < b.id ? -1 : 1),
      ),
    };
    return { tested, problems: [] };
  };
  return explaining(plan, options, test, { unfit: strangers(plan, asked) });
}

/** The entry occurs, and what shares its group does not. */
function falseAlone(model: Model, e: number): Map<number, 0 | 1> {
  const { group } = model.register[e] as Model["register"][number];
  const entries = new Map<number, 0 | 1>([[e, 1]]);
  if (group < 0) return entries;
  model.register.forEach((other, o) => {
    if (o !== e && other.group === group) entries.set(o, 0);
  });
  return entries;
}

function said(plan: Plan, one: Assumption): AssumptionTested {
  const { id, name, probability, signpost, reviewBy, tripped, status, impacts } = one;
  const owner = someoneOf(plan)(one.owner);
  return {
    id,
    statement: name,
    chanceWrong: probability,
    ...(owner === undefined ? {} : { owner }),
    ...(signpost === undefined ? {} : { signpost }),
    ...(reviewBy === undefined ? {} : { reviewBy }),
    ...(tripped === undefined ? {} : { tripped }),
    ...(impacts.length === 0 ? { noImpact: true as const } : {}),
    ...(status === "occurred" ? { occurred: true as const } : {}),
  };
}

function between(from: Standing, to: Standing): Effect {
  return { workingDays: to.workingDays - from.workingDays, money: to.cost - from.cost };
}

function chanceAsked({ finishByDay, budget }: Model, { finishDay, cost }: Outcome): AskedChance {
  const sum =
    budget === undefined ? Number.POSITIVE_INFINITY : budget + tolerance * Math.max(1, Math.abs(budget));
  const kept = jointChance(finishDay, cost, finishByDay ?? Number.POSITIVE_INFINITY, sum);
  return {
    ...(finishByDay === undefined ? {} : { finishBy: kept.finish }),
    ...(budget === undefined ? {} : { budget: kept.cost }),
    ...(finishByDay === undefined || budget === undefined ? {} : { both: kept.both }),
  };
}

function reach({ ifFalse }: AssumptionTested): number {
  return Math.abs(ifFalse?.moved.workingDays ?? 0);
}
function money({ ifFalse }: AssumptionTested): number {
  return Math.abs(ifFalse?.moved.money ?? 0);
}

/** Ids asked for that are no assumption that could still prove wrong. */
function strangers(plan: Plan, asked: readonly Id[] | undefined): Problem[] {
  const open = plan.assumptions.filter(({ status }) => status === "open").map(({ id }) => id);
  return (asked ?? [])
    .filter((id) => !open.includes(id))
    .map((id): Problem => {
      const known = plan.assumptions.find((one) => one.id === id);
      const risk = plan.risks.some((one) => one.id === id);
      const near = nearest(id, open);
      const rule =
        known !== undefined
          ? `It is ${known.status} already: there is nothing to suppose.`
          : risk
            ? "That is a risk; what it does alone is told by `forecast --tornado`."
            : "The plan has no assumption of that id.";
      const list =
        open.length === 0 ? "The plan has none that is open." : `Open are: ${open.sort().join(", ")}.`;
      return {
        ...{ code: "unknown-id", severity: "error", path: "--if-false", received: `\`${id}\``, rule },
        remedy: known === undefined && !risk && near !== undefined ? `Did you mean ${near}?` : list,
      };
    });
}
