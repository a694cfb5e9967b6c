export { confidenceSteps } from "./confidenceSteps.ts";
export { leftFinding } from "./contingencyLeft/leftFinding.ts";
export { type LeftMeasure, leftDays, leftMoney } from "./contingencyLeft/leftMeasure.ts";
export { contingencyLeftDays } from "./contingencyLeftDays.ts";
export { contingencyLeftMoney } from "./contingencyLeftMoney.ts";
export { costCurve } from "./costCurve.ts";
export { type CurvePlace, curvePlace } from "./curves/curvePlace.ts";
export {
  type EstimateAbout,
  type EstimateReading,
  estimateReading,
  oneInTenSentence,
} from "./curves/estimateReading.ts";
export { dayToIso, finishDate, isoToMs, startDate } from "./dates/dayToIso.ts";
export { daysWords, driftSentence, keptSum, largestSentence, termsWords } from "./drift/driftSentences.ts";
export { driftDates } from "./driftDates.ts";
export { driftSums } from "./driftSums.ts";
export { driversBars } from "./driversBars.ts";
export { estimateCurve } from "./estimateCurve.ts";
export { fiftyFutures } from "./fiftyFutures.ts";
export { figureSvg } from "./figure/figureSvg.ts";
export { renderFigure } from "./figure/renderFigure.ts";
export type { Chart, ChartOptions, Figure, FigureTable, Theme } from "./figure/types.ts";
export { finishCurve } from "./finishCurve.ts";
export { fundsCureWords, fundsFinding } from "./fundsMonths/fundsFinding.ts";
export { monthName } from "./fundsMonths/monthName.ts";
export { monthsToShow } from "./fundsMonths/monthsToShow.ts";
export { fundsMonths } from "./fundsMonths.ts";
export { futureBars } from "./futureBars.ts";
export { jointDensity } from "./jointDensity.ts";
export { worthRounding } from "./measure/worthRounding.ts";
export { movesDays } from "./movesDays.ts";
export { movesMoney } from "./movesMoney.ts";
export { type OpinionsAbout, opinionsBars } from "./opinionsBars.ts";
export { type Palette, palette } from "./palette.ts";
export { pathBars } from "./pathBars.ts";
export { peopleWeeks } from "./peopleWeeks.ts";
export { planBars } from "./planBars.ts";
export { responseWorth } from "./responseWorth.ts";
export { scorecardBars } from "./scorecardBars.ts";
export { enumerated } from "./sentences/enumerated.ts";
export { partSum, spends, supportedSum } from "./sentences/explainMoney.ts";
export { errorSentence, gapSentence, meaningSentence, reasonSentence } from "./sentences/explainSentences.ts";
export { holdsWords } from "./sentences/holdsWords.ts";
export {
  hasSums,
  meaningOfMoves,
  movedSentence,
  standsSentences,
} from "./sentences/movedSentences.ts";
export { nothingMoves } from "./sentences/nothingMoves.ts";
export { otherSentences, reachSentence, samplingSentence } from "./sentences/reachSentences.ts";
export { approverStands, signOffSentence } from "./sentences/signOffSentence.ts";
export { forecastSpends, levelsSpend, reachSpends, responsesSpend } from "./sentences/speaksOfMoney.ts";
export { statedSum } from "./sentences/statedSum.ts";
export {
  countSentences,
  isEven,
  rankedResponses,
  roughSum,
  worthSentence,
} from "./sentences/worthSentences.ts";
export { sharesDays } from "./sharesDays.ts";
export { sharesMoney } from "./sharesMoney.ts";
export { spending } from "./spending.ts";
export { tasksAtStake } from "./tasksAtStake.ts";
export { heldText } from "./tornado/heldText.ts";
export { tornadoDays } from "./tornadoDays.ts";
export { tornadoMoney } from "./tornadoMoney.ts";
export {
  triggerAsks,
  triggerCondition,
  triggerMeasure,
  triggerStands,
  triggersSentence,
} from "./triggers/triggerSentences.ts";
export { walkDays } from "./walkDays.ts";
export { walkMoney } from "./walkMoney.ts";
export { columnDays } from "./words/columnDays.ts";
export { designWords } from "./words/designWords.ts";
export { formatChance } from "./words/formatChance.ts";
export { type DateStyle, formatDate } from "./words/formatDate.ts";
export { formatDays } from "./words/formatDays.ts";
export { formatMoney } from "./words/formatMoney.ts";
export { formatPercent } from "./words/formatPercent.ts";
export { groupDigits } from "./words/groupDigits.ts";
export { plainName, quoteName } from "./words/plainName.ts";
export { roundMove } from "./words/roundMove.ts";
export { roundSignificant } from "./words/roundSignificant.ts";
export { roundTogether } from "./words/roundTogether.ts";
export { limitStep, roundToLimits, roundToStep } from "./words/roundToLimits.ts";
export { shapeWords } from "./words/shapeWords.ts";
