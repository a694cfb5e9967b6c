import { workAt } from "../calendar/workCalendar.ts";
import { type ExplainingOptions, explaining, type Subject } from "../explain/subject.ts";
import { sortedBars, type TornadoEnd, tornadoItems } from "../explain/tornado.ts";
import { runVariants } from "../explain/variants.ts";
import { rankSelector } from "../forecast/rankSelector.ts";
import { rankOf } from "../forecast/ranks.ts";
import type { TornadoBar } from "../forecast/types.ts";
import type { Problem } from "../plan/problem.ts";
import type { Plan } from "../plan/types.ts";

/** Which run the assumptions are tried on. */
export interface AssumptionBarsOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
}
/** What the commitment loses if an assumption fails, or why that cannot be told. */
export interface AssumptionBarsResult {
  bars?: TornadoBar[];
  problems: Problem[];
}

/**
 * What each open assumption alone does to the committed date and sum: holding, and wrong. These are the bars of the
 * forecast's tornado, of assumptions only; those that move nothing are left out.
 *
 * Problems are values. Cost: two re-runs for each assumption, each only of what it reaches.
 */
export function assumptionBars(plan: Plan, options: AssumptionBarsOptions = {}): AssumptionBarsResult {
  const ids = new Set(plan.assumptions.map(({ id }) => id));
  const find = ({ model, draw }: Subject): AssumptionBarsResult => {
    const { bars, ends } = tornadoItems(model, ids);
    if (bars.length === 0) return { bars, problems: [] };
    const select = rankSelector(draw.iterations);
    const rank = rankOf(options.confidence ?? model.confidence, draw.iterations);
    const settings = [{}, ...ends.map((end) => end.settings)];
    const levels = runVariants(
      draw,
      settings.map((own) => ({ model, settings: own })),
      ({ finish, cost }) => {
        const [day = 0] = select(finish, [rank]);
        const [money = 0] = select(cost, [rank]);
        return { workingDays: workAt(model.planCalendar, day), money };
      },
      options.onProgress,
    );
    const committed = levels[0] ?? { workingDays: 0, money: 0 };
    ends.forEach(({ bar, side }: TornadoEnd, i) => {
      const at = levels[i + 1] ?? committed;
      const effect = {
        workingDays: at.workingDays - committed.workingDays,
        money: at.money - committed.money,
      };
      if (bars[bar] !== undefined) bars[bar][side] = effect;
    });
    return { bars: sortedBars(bars.map((bar, at) => ({ at, bar }))), problems: [] };
  };
  return explaining(plan, options, find);
}
