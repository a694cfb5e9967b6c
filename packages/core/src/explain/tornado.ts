import { workAt } from "../calendar/workCalendar.ts";
import { rankSelector } from "../forecast/rankSelector.ts";
import { rankOf } from "../forecast/ranks.ts";
import type { TornadoBar } from "../forecast/types.ts";
import { estimateQuantile } from "../sampling/index.ts";
import type { AsWritten } from "../simulate/asWritten.ts";
import type { Model, Slot } from "../simulate/model.ts";
import { drain } from "./drain.ts";
import { type Draw, type Settings, variantSteps } from "./variants.ts";

/** One end of a bar. */
export interface TornadoEnd {
  bar: number;
  side: "low" | "high";
  settings: Settings;
}

/** The committed value that bars are measured from. */
export interface Committed {
  confidence: number;
  workingDays: number;
  cost: number;
}

/** Bars of the tornado with their place in the list of items; every `of`-th from `part` on. */
export interface TornadoPart {
  part: number;
  of: number;
}

/**
 * By how many working days and how much money the committed value moves when one estimate alone is held at its
 * P10 and P90, or one register entry alone is absent and occurs; everything else on the same draws. Sorted by
 * reach in days, then in money. Items that move nothing are left out.
 *
 * Cost: two re-runs per item on shared draws (see variants.ts).
 */
export function tornado(
  model: Model,
  draw: Draw,
  _asWritten: AsWritten,
  committed: Committed,
  onProgress?: (done: number, total: number) => void,
): TornadoBar[] {
  return drain(tornadoSteps(model, draw, _asWritten, committed, onProgress));
}

/**
 * The same in steps of a few milliseconds or less, so that whoever goes through them can leave in between: a thread
 * that has to listen while it works.
 */
export function* tornadoSteps(
  model: Model,
  draw: Draw,
  _asWritten: AsWritten,
  committed: Committed,
  onProgress?: (done: number, total: number) => void,
): Generator<void, TornadoBar[]> {
  return sortedBars(yield* barSteps(model, draw, committed, { part: 0, of: 1 }, onProgress));
}

/** Puts bars, whoever computed them, into the tornado's order and leaves out those that move nothing. */
export function sortedBars(bars: readonly { at: number; bar: TornadoBar }[]): TornadoBar[] {
  const reach = (bar: TornadoBar, of: "workingDays" | "money") => Math.abs(bar.high[of] - bar.low[of]);
  return [...bars]
    .sort((a, b) => a.at - b.at)
    .map(({ bar }) => bar)
    .filter((bar) => reach(bar, "workingDays") > 1e-9 || reach(bar, "money") > 1e-6)
    .sort(
      (a, b) =>
        reach(b, "workingDays") - reach(a, "workingDays") ||
        reach(b, "money") - reach(a, "money") ||
        (a.id < b.id ? -1 : 1),
    );
}

/**
 * One part of the tornado's bars, unsorted. A bar does not depend on the others, so parts may be computed apart.
 */
export function tornadoBars(
  model: Model,
  draw: Draw,
  _asWritten: AsWritten,
  committed: Committed,
  part: TornadoPart,
  onProgress?: (done: number, total: number) => void,
): { at: number; bar: TornadoBar }[] {
  return drain(barSteps(model, draw, committed, part, onProgress));
}

function* barSteps(
  model: Model,
  draw: Draw,
  committed: Committed,
  { part, of }: TornadoPart,
  onProgress?: (done: number, total: number) => void,
): Generator<void, { at: number; bar: TornadoBar }[]> {
  const n = draw.iterations;
  const { bars, ends: all } = tornadoItems(model);
  const ends = all.filter(({ bar }) => bar % of === part);
  const select = rankSelector(n);
  const rank = rankOf(committed.confidence, n);
  const progress = onProgress && ((done: number) => onProgress(Math.floor(done / ends.length), n));
  yield* variantSteps(
    draw,
    ends.map(({ settings }) => ({ model, settings })),
    ({ finish, cost }, at) => {
      const { bar, side } = ends[at] as TornadoEnd;
      const [day = 0] = select(finish, [rank]);
      const [money = 0] = select(cost, [rank]);
      (bars[bar] as TornadoBar)[side] = {
        workingDays: workAt(model.planCalendar, day) - committed.workingDays,
        money: money - committed.cost,
      };
    },
    progress,
  );
  return bars.flatMap((bar, at) => (at % of === part ? [{ at, bar }] : []));
}

/**
 * The bars of a model, still without figures, and the re-runs that give them; `only` the items with these ids.
 */
export function tornadoItems(
  model: Model,
  only?: ReadonlySet<string>,
): { bars: TornadoBar[]; ends: TornadoEnd[] } {
  const bars: TornadoBar[] = [];
  const ends: TornadoEnd[] = [];
  const none = () => ({ workingDays: 0, money: 0 });
  const run = (side: "low" | "high", settings: Settings) =>
    ends.push({ bar: bars.length - 1, side, settings });
  const taskIds = new Set(model.tasks.map((task) => task.chanceAddress));
  const names = new Map(model.tasks.map((task) => [task.id, task.name]));
  for (const overhead of model.overheads) names.set(overhead.id, overhead.name);
  for (const response of model.responses) names.set(response.id, response.name);
  model.slots.forEach((slot, s) => {
    const kind = kindOf(slot, taskIds);
    const id = slot.key.slice(0, slot.key.indexOf(":"));
    if (kind === undefined || only?.has(id) === false) return;
    const cut = (value: number) => (slot.cut && value < 0 ? 0 : value);
    const low = cut(estimateQuantile(slot.estimate, 0.1));
    const high = cut(estimateQuantile(slot.estimate, 0.9));
    bars.push({
      id,
      name: names.get(id) ?? id,
      kind,
      sides: "p10-p90",
      low: none(),
      high: none(),
      lowText: valueText(slot, low, model),
      highText: valueText(slot, high, model),
    });
    run("low", { slots: new Map([[s, low]]) });
    run("high", { slots: new Map([[s, high]]) });
  });
  model.register.forEach((entry, e) => {
    if (entry.fact !== undefined || only?.has(entry.id) === false) return;
    bars.push({
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      sides: "absent-occurs",
      low: none(),
      high: none(),
      lowText: entry.kind === "assumption" ? "holds" : "absent",
      highText: entry.kind === "assumption" ? "is wrong" : "occurs",
    });
    run("low", { entries: new Map([[e, 0]]) });
    run("high", { entries: new Map([[e, 1]]) });
  });
  return { bars, ends };
}

/** Register parts are moved with their entry; benefits and lateness are not part of date or cost. */
function kindOf(slot: Slot, taskIds: ReadonlySet<string>): TornadoBar["kind"] | undefined {
  switch (slot.purpose) {
    case "duration":
    case "effort":
    case "remaining":
      return "task";
    case "cost":
      return taskIds.has(slot.item) ? "task-cost" : "response";
    case "costPerDay":
      return "task-cost";
    case "perDay":
      return "overhead";
    default:
      return slot.purpose.startsWith("lag:") ? "lag" : undefined;
  }
}

/** "20 days", "6 person-days", "185 000 EUR": the held value as a reader would say it. */
function valueText(slot: Slot, value: number, model: Model): string {
  const rounded = Math.abs(value) >= 1000 ? Math.round(value) : Number(value.toPrecision(3));
  const unit =
    slot.purpose === "duration" || slot.purpose === "remaining" || slot.purpose.startsWith("lag:")
      ? slot.estimate.unit
      : slot.purpose === "effort"
        ? slot.estimate.unit === "weeks"
          ? "person-weeks"
          : "person-days"
        : slot.purpose === "cost"
          ? model.plan.currency
          : `${model.plan.currency} a day`;
  return `${rounded} ${unit}`;
}
