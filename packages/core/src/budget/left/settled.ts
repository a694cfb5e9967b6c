import type { Effect } from "../../explain/types.ts";
import type { Draw } from "../../explain/variants.ts";
import { applyScenario } from "../../plan/applyScenario.ts";
import type { ScenarioChoice } from "../../plan/scenarioProblems.ts";
import type { Plan, RegisterEntry } from "../../plan/types.ts";
import { planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import { type Held, heldFor } from "./heldFor.ts";
import { settledEntries } from "./settledEntries.ts";
import type { ContingencyLeft, SettledEntry } from "./types.ts";
import { withoutProgress } from "./withoutProgress.ts";

type SettledPart = Pick<ContingencyLeft, "settled" | "held" | "heldIn" | "release">;
const nothing: Effect = { workingDays: 0, money: 0 };

/**
 * What was held for the entries that are settled by now, and what of it may be released: see `ContingencyLeft`.
 *
 * What was held is measured before anything happened, where it could still do all its harm: in the signed version if
 * there is one, else in this plan without its progress. An entry unknown there, or settled there already, held nothing.
 */
export function settled(
  plan: Plan,
  options: ScenarioChoice & { signed?: Plan },
  draw: Draw,
  confidence: number,
  { money, days }: Pick<ContingencyLeft, "money" | "days">,
): SettledPart {
  const entries = settledEntries(plan);
  // What was signed was signed: no scenario changes it.
  const model = compile(options.signed ?? applyScenario(withoutProgress(plan), options).plan);
  const placeOf = ({ id, was }: RegisterEntry) =>
    model.register.findIndex((one) => one.fact === undefined && (one.id === id || one.id === was));
  const places = new Map(entries.map((one) => [placeOf(one.entry), one]));
  places.delete(-1);
  const parts = heldFor(model, draw, confidence, [...places.keys()]);
  const told = parts.map(({ entries: at, held, error }: Held): SettledEntry => {
    const [first, ...others] = at.flatMap((place) => places.get(place) ?? []);
    if (first === undefined || others.length > 0) {
      return {
        id: "other-settled",
        name: `${at.length} more`,
        kind: "risk",
        how: "several",
        gathers: at.flatMap((place) => places.get(place)?.entry.id ?? []),
        held,
        error,
        mayRelease: nothing,
      };
    }
    const { entry, how } = first;
    return {
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      how,
      ...(entry.expires === undefined ? {} : { expires: entry.expires }),
      held,
      error,
      ...(how === "occurred" ? { took: tookOf(plan, entry, options) } : {}),
      mayRelease: nothing,
    };
  });
  // What several hold together stays out: some of them may have occurred.
  const gone = told.filter(({ how }) => how === "expired" || how === "closed");
  const release = {
    workingDays: released(gone, days?.spare, ({ workingDays }) => workingDays),
    money: released(gone, money?.spare, (effect) => effect.money),
  };
  return {
    settled: told.map((one) =>
      gone.includes(one) ? { ...one, mayRelease: partOf(one, gone, release) } : one,
    ),
    held: told.reduce((sum, one) => plus(sum, one.held), nothing),
    heldIn: options.signed === undefined ? "without-progress" : "signed",
    release,
  };
}

/** No more than was held for what can no longer happen, and no more than is left beyond the exposure. */
function released(
  gone: readonly SettledEntry[],
  spare: number | undefined,
  of: (effect: Effect) => number,
): number {
  const held = gone.reduce((sum, one) => sum + Math.max(0, of(one.held)), 0);
  return Math.max(0, Math.min(held, spare ?? 0));
}

/** In proportion to what each held. */
function partOf({ held }: SettledEntry, gone: readonly SettledEntry[], release: Effect): Effect {
  const part = (of: (effect: Effect) => number) => {
    const all = gone.reduce((sum, one) => sum + Math.max(0, of(one.held)), 0);
    return all > 0 ? (of(release) * Math.max(0, of(held))) / all : 0;
  };
  return { workingDays: part(({ workingDays }) => workingDays), money: part(({ money }) => money) };
}

/** What the plan as written would be less by, had the entry not occurred. */
function tookOf(plan: Plan, { id }: RegisterEntry, options: ScenarioChoice): Effect {
  const spared = <E extends RegisterEntry>(entry: E): E =>
    entry.id === id ? { ...entry, status: "closed" } : entry;
  const written = (one: Plan) => planAsWritten(compile(applyScenario(one, options).plan));
  const now = written(plan);
  const otherwise = written({
    ...plan,
    risks: plan.risks.map(spared),
    assumptions: plan.assumptions.map(spared),
  });
  return { workingDays: now.workingDays - otherwise.workingDays, money: now.cost - otherwise.cost };
}

function plus(a: Effect, b: Effect): Effect {
  return { workingDays: a.workingDays + b.workingDays, money: a.money + b.money };
}
