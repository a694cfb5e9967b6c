import { workAt } from "../calendar/workCalendar.ts";
import { rankOf } from "../forecast/ranks.ts";
import type { TornadoBar } from "../forecast/types.ts";
import { estimateQuantile } from "../sampling/index.ts";
import type { AsWritten } from "../simulate/asWritten.ts";
import { blockSize, newBlock } from "../simulate/block.ts";
import { markFinish } from "../simulate/critical.ts";
import { draws } from "../simulate/draws.ts";
import type { Model, Slot } from "../simulate/model.ts";
import { addMoney, newMoneySums } from "../simulate/money.ts";
import { newCapacity } from "../simulate/people.ts";
import { place } from "../simulate/place.ts";
import { realise } from "../simulate/realise.ts";
import type { Trials } from "../simulate/trials.ts";

interface Variant {
  bar: number;
  side: "low" | "high";
  slot?: number;
  entry?: number;
  value: number;
  finish: Float64Array;
  cost: Float64Array;
}

/**
 * By how many working days and how much money the committed value moves when one estimate alone is held at its
 * P10 and P90, or one register entry alone is absent and occurs; everything else on the same draws. Sorted by
 * reach in days, then in money. Items that move nothing are left out.
 *
 * Cost: two re-runs per item; draws are made once per block and shared by all of them.
 */
export function tornado(
  model: Model,
  trials: Trials,
  asWritten: AsWritten,
  committed: { confidence: number; workingDays: number; cost: number },
  onProgress?: (done: number, total: number) => void,
): TornadoBar[] {
  const n = trials.iterations;
  const { bars, variants } = items(model, n);
  const block = newBlock(model, Math.min(n, blockSize));
  const source = draws(model, trials.seed, trials.design);
  for (let first = 0, b = 0; first < n; first += blockSize, b++) {
    block.n = Math.min(blockSize, n - first);
    source.fill(b, block);
    for (const variant of variants) {
      const rows = variant.slot === undefined ? block.occurs : block.draws;
      const at = variant.slot ?? variant.entry ?? 0;
      const kept = rows[at] as Float64Array | Uint8Array;
      rows[at] = (kept as Float64Array).slice().fill(variant.value) as Float64Array & Uint8Array;
      realise(model, block);
      place(model, block, asWritten.starts, model.limitedPeople ? newCapacity(model) : undefined);
      markFinish(model, block);
      addMoney(model, block, newMoneySums(model));
      rows[at] = kept as Float64Array & Uint8Array;
      variant.finish.set(block.planFinish.subarray(0, block.n), first);
      variant.cost.set(block.cost.subarray(0, block.n), first);
    }
    onProgress?.(Math.min(n, first + blockSize), n);
  }
  const rank = rankOf(committed.confidence, n);
  for (const variant of variants) {
    const bar = bars[variant.bar] as TornadoBar;
    const day = variant.finish.sort()[rank - 1] as number;
    const money = variant.cost.sort()[rank - 1] as number;
    bar[variant.side] = {
      workingDays: workAt(model.planCalendar, day) - committed.workingDays,
      money: money - committed.cost,
    };
  }
  const reach = (bar: TornadoBar, of: "workingDays" | "money") => Math.abs(bar.high[of] - bar.low[of]);
  return bars
    .filter((bar) => reach(bar, "workingDays") > 1e-9 || reach(bar, "money") > 1e-6)
    .sort(
      (a, b) =>
        reach(b, "workingDays") - reach(a, "workingDays") ||
        reach(b, "money") - reach(a, "money") ||
        (a.id < b.id ? -1 : 1),
    );
}

function items(model: Model, n: number): { bars: TornadoBar[]; variants: Variant[] } {
  const bars: TornadoBar[] = [];
  const variants: Variant[] = [];
  const none = () => ({ workingDays: 0, money: 0 });
  const run = (bar: number, side: "low" | "high", value: number, at: { slot?: number; entry?: number }) =>
    variants.push({ bar, side, value, ...at, finish: new Float64Array(n), cost: new Float64Array(n) });
  const names = new Map(model.tasks.map((task) => [task.id, task.name]));
  for (const overhead of model.overheads) names.set(overhead.id, overhead.name);
  model.slots.forEach((slot, s) => {
    const kind = kindOf(slot);
    if (kind === undefined) return;
    const cut = (value: number) => (slot.cut && value < 0 ? 0 : value);
    const low = cut(estimateQuantile(slot.estimate, 0.1));
    const high = cut(estimateQuantile(slot.estimate, 0.9));
    const id = slot.key.slice(0, slot.key.indexOf(":"));
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
    run(bars.length - 1, "low", low, { slot: s });
    run(bars.length - 1, "high", high, { slot: s });
  });
  model.register.forEach((entry, e) => {
    if (entry.fact !== undefined) return;
    bars.push({
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      sides: "absent-occurs",
      low: none(),
      high: none(),
      lowText: "absent",
      highText: "occurs",
    });
    run(bars.length - 1, "low", 0, { entry: e });
    run(bars.length - 1, "high", 1, { entry: e });
  });
  return { bars, variants };
}

/** Register parts are moved with their entry; benefits and lateness are not part of date or cost. */
function kindOf(slot: Slot): TornadoBar["kind"] | undefined {
  switch (slot.purpose) {
    case "duration":
    case "effort":
    case "remaining":
      return "task";
    case "cost":
      return slot.key.endsWith(":cost") && slot.cut ? "task-cost" : undefined;
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
