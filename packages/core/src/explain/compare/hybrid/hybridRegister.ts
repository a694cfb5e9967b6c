import { present } from "../../../plan/build/must.ts";
import type { Assumption, Impact, RegisterEntry, Response, Risk, Task } from "../../../plan/types.ts";
import { idsOf, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import type { Choice } from "./hybridPlan.ts";

/**
 * Risks and assumptions of a hybrid, in id order.
 *
 * @param tasks  The hybrid's: what an impact on a phase touches is read off them.
 */
export function hybridRegister(pair: Pair, isNew: Choice, tasks: readonly Task[]): (Risk | Assumption)[] {
  const { older, newer } = pair;
  const resolve = (impacts: readonly Impact[]) => impacts.map((impact) => ofPhase(impact, tasks));
  const entries = idsOf(older.entries, newer.entries).flatMap((id): (Risk | Assumption)[] => {
    const was = older.entries.get(id);
    const is = newer.entries.get(id);
    if (was === undefined || is === undefined) {
      const only = isNew(places.entry(id)) ? is : was;
      return only === undefined ? [] : [typed({ ...only, impacts: resolve(only.impacts) })];
    }
    const { probability, status, group, expires, onlyIf } = isNew(places.odds(id)) ? is : was;
    const { group: _, expires: __, onlyIf: ___, ...rest } = is;
    return [
      typed({
        ...rest,
        ...present({ probability, status, group, expires, onlyIf }),
        impacts: resolve((isNew(places.impacts(id)) ? is : was).impacts),
        responses: responses(isNew, was, is),
      }),
    ];
  });
  // What was on offer only before stays where something hangs on it.
  const wanted = new Set([...tasks, ...entries].map(({ onlyIf }) => onlyIf));
  return entries.map((entry) => {
    const offered = newer.entries.get(entry.id)?.responses ?? entry.responses;
    const isOffered = (id: string) => offered.some((response) => response.id === id);
    const kept = entry.responses.filter(({ id, adopted }) => adopted || isOffered(id) || wanted.has(id));
    return { ...entry, responses: kept };
  });
}

/** Every entry of a plan is a risk or an assumption; the register's own type leaves that open. */
function typed(entry: RegisterEntry): Risk | Assumption {
  return entry.kind === "risk" ? { ...entry, kind: "risk" } : { ...entry, kind: "assumption" };
}

function ofPhase(impact: Impact, tasks: readonly Task[]): Impact {
  const { phase } = impact;
  if (phase === undefined) return impact;
  const touched = tasks.filter((task) => task.phase === phase && task.milestone === false);
  return { ...impact, tasks: touched.map(({ id }) => id) };
}

/** Adopted as the choice says; what neither plan adopts is the new plan's. */
function responses(isNew: Choice, was: RegisterEntry, is: RegisterEntry): Response[] {
  const ids = [...new Set([...was.responses, ...is.responses].map(({ id }) => id))].sort();
  return ids.flatMap((id): Response[] => {
    const before = was.responses.find((response) => response.id === id);
    const after = is.responses.find((response) => response.id === id);
    if (before?.adopted !== true && after?.adopted !== true) {
      return [after ?? before].filter((response) => response !== undefined);
    }
    const [taken, other] = isNew(places.response(is.id, id)) ? [after, before] : [before, after];
    if (taken !== undefined) return [taken];
    // On offer, so that whatever hangs on it still names something.
    return other === undefined ? [] : [{ ...other, adopted: false }];
  });
}
