import { workAt } from "../../calendar/workCalendar.ts";
import { newBlock, undrawnKernel } from "../../simulate/block.ts";
import { markFinish } from "../../simulate/critical.ts";
import { fillAsWritten } from "../../simulate/draws.ts";
import { newCapacity } from "../../simulate/people.ts";
import { place } from "../../simulate/place.ts";
import { realise } from "../../simulate/realise.ts";
import type { Written } from "./written.ts";

/**
 * Working days of the plan's calendar by which the finish as written moves when one task takes `days` working days more
 * (or less: it never takes less than none). Undefined where the plan would then run past what calendars cover.
 */
export function shockedBy({ model, asWritten }: Written): (at: number, days: number) => number | undefined {
  const block = newBlock(model, 1, undrawnKernel(model, 1));
  return (at, days) => {
    fillAsWritten(model, block);
    realise(model, block);
    const row = block.duration[at] as Float64Array;
    row[0] = Math.max(0, (row[0] as number) + days);
    const capacity = model.limitedPeople ? newCapacity(model) : undefined;
    if (place(model, block, asWritten.starts, capacity) >= 0) return undefined;
    markFinish(model, block);
    return workAt(model.planCalendar, block.planFinish[0] as number) - asWritten.workingDays;
  };
}
