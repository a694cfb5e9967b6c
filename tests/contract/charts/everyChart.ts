import {
  type Chart,
  costCurve,
  driversBars,
  fiftyFutures,
  finishCurve,
  planBars,
  tornadoDays,
  tornadoMoney,
} from "@leeway/charts";

/** Every chart of the package, by name. */
export const everyChart: [string, Chart][] = [
  ["finishCurve", finishCurve],
  ["costCurve", costCurve],
  ["tornadoDays", tornadoDays],
  ["tornadoMoney", tornadoMoney],
  ["fiftyFutures", fiftyFutures],
  ["planBars", planBars],
  ["driversBars", driversBars],
];
