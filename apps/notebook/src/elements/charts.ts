// What draws, apart from the rest: it is large, and the answer comes before the pictures of it.
import {
  type Chart,
  costCurve,
  driversBars,
  fiftyFutures,
  figureSvg,
  finishCurve,
  renderFigure,
  tornadoDays,
  tornadoMoney,
} from "@leeway/charts";

export const charts = {
  costCurve,
  driversBars,
  fiftyFutures,
  finishCurve,
  tornadoDays,
  tornadoMoney,
} satisfies Record<string, Chart>;

export { figureSvg, renderFigure };
