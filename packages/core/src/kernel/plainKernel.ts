import { standardTable } from "../sampling/table/standardTable.ts";
import { newArena } from "./arena.ts";
import { withoutTables } from "./calendarTables.ts";
import { absorb } from "./twins/absorb.ts";
import { addCost } from "./twins/addCost.ts";
import { addCostWhere } from "./twins/addCostWhere.ts";
import { addDaily } from "./twins/addDaily.ts";
import { addDailyCost } from "./twins/addDailyCost.ts";
import { addImpact } from "./twins/addImpact.ts";
import { addScaled } from "./twins/addScaled.ts";
import { addTaskCost } from "./twins/addTaskCost.ts";
import { anySet } from "./twins/anySet.ts";
import { appraise } from "./twins/appraise.ts";
import { bookByMonth } from "./twins/bookByMonth.ts";
import { drawer } from "./twins/drawer.ts";
import { drawLatin } from "./twins/drawLatin.ts";
import { fillLatin } from "./twins/fillLatin.ts";
import { fillPlain } from "./twins/fillPlain.ts";
import { freeFrom } from "./twins/freeFrom.ts";
import { largestOf } from "./twins/largestOf.ts";
import { lookUp } from "./twins/lookUp.ts";
import { lookUpOutcomes } from "./twins/lookUpOutcomes.ts";
import { markFinish } from "./twins/markFinish.ts";
import { markLink } from "./twins/markLink.ts";
import { markSharers } from "./twins/markSharers.ts";
import { markSimple } from "./twins/markSimple.ts";
import { multiplyImpact } from "./twins/multiplyImpact.ts";
import { occur } from "./twins/occur.ts";
import { raiseAfter } from "./twins/raiseAfter.ts";
import { raiseBy } from "./twins/raiseBy.ts";
import { raiseTo } from "./twins/raiseTo.ts";
import { scaleByWork } from "./twins/scaleByWork.ts";
import { scaleTo } from "./twins/scaleTo.ts";
import { seedTen } from "./twins/seedTen.ts";
import { selectRanks } from "./twins/selectRanks.ts";
import { settle } from "./twins/settle.ts";
import { settleAny } from "./twins/settleAny.ts";
import { spreadByMonth } from "./twins/spreadByMonth.ts";
import { sumMasked } from "./twins/sumMasked.ts";
import { sumProducts } from "./twins/sumProducts.ts";
import { toChances } from "./twins/toChances.ts";
import { toScores } from "./twins/toScores.ts";
import type { Kernel } from "./types.ts";

/** The kernel in TypeScript: works everywhere. Its arena holds `room` bytes (`bytesOfRows`). */
export function plainKernel(room: number): Kernel {
  const arena = newArena(new ArrayBuffer(room), 0, withoutTables);
  return {
    lane: "plain",
    arena,
    wasm: undefined,
    table: (shape, parameter) => arena.table(standardTable(shape, parameter)),
    seedTen,
    drawer,
    fillLatin,
    fillPlain,
    lookUp,
    lookUpOutcomes,
    drawLatin,
    occur,
    multiplyImpact,
    addImpact,
    raiseAfter,
    raiseTo,
    scaleTo,
    toScores,
    addScaled,
    toChances,
    settle,
    settleAny,
    raiseBy,
    largestOf,
    scaleByWork,
    freeFrom,
    markSharers,
    markFinish,
    markSimple,
    markLink,
    anySet,
    addCost,
    addCostWhere,
    addTaskCost,
    addDaily,
    addDailyCost,
    bookByMonth,
    spreadByMonth,
    appraise,
    sumMasked,
    sumProducts,
    absorb,
    selectRanks,
  };
}
