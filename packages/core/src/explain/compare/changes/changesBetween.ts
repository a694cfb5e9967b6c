import { calendarChanges } from "./calendarChanges.ts";
import type { Change } from "./change.ts";
import type { Pair } from "./pair.ts";
import { peopleChanges } from "./peopleChanges.ts";
import { planChanges } from "./planChanges.ts";
import { registerChanges } from "./registerChanges.ts";
import { taskChanges } from "./taskChanges.ts";

/** Every change between two plans that can move a finish or a cost, in an order that does not depend on the files'. */
export function changesBetween(pair: Pair): Change[] {
  return [
    ...planChanges(pair),
    ...calendarChanges(pair),
    ...peopleChanges(pair),
    ...taskChanges(pair),
    ...registerChanges(pair),
  ];
}
