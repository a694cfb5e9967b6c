export * from "./brief/index.ts";
export * from "./budget/index.ts";
export * from "./communicate/index.ts";
export * from "./estimating/index.ts";
export * from "./exchange/index.ts";
export {
  type TestAssumptionsOptions,
  type TestAssumptionsResult,
  testAssumptions,
} from "./explain/assumptions/testAssumptions.ts";
export type * from "./explain/assumptions/types.ts";
export {
  type Compared,
  type ComparedProblem,
  type CompareOptions,
  type CompareResult,
  compare,
  compared,
  compareSteps,
} from "./explain/compare/compare.ts";
export type { PlansAsked, ValuesOfPlans } from "./explain/compare/movesBetween.ts";
export { valuesOfPlans } from "./explain/compare/run/valuesOfPlans.ts";
export {
  type WhyConfidenceOptions,
  type WhyConfidenceResult,
  whyConfidence,
} from "./explain/confidence/whyConfidence.ts";
export {
  type ExplainOptions,
  type ExplainResult,
  explain,
  explained,
  progressWithin,
} from "./explain/contingency/explain.ts";
export { type Ask, type Explained, explainSteps } from "./explain/contingency/explainSteps.ts";
export {
  averageOverOrders,
  type OrderAverage,
  type OrderOptions,
  orderAverage,
} from "./explain/contingency/orderAverage.ts";
export {
  type FutureOptions,
  type FutureResult,
  future,
  type WhichFuture,
} from "./explain/future/future.ts";
export { jointConfidence } from "./explain/joint/jointConfidence.ts";
export { type Measure, measureVariants } from "./explain/measureVariants.ts";
export {
  type DrivingPathsOptions,
  type DrivingPathsResult,
  drivingPaths,
} from "./explain/paths/drivingPaths.ts";
export type { Absent, TimeAway } from "./explain/people/losePerson.ts";
export { type PeopleLoadOptions, type PeopleLoadResult, peopleLoad } from "./explain/people/peopleLoad.ts";
export { type ReachOptions, type ReachResult, reach, reachDecision } from "./explain/reach/reach.ts";
export type { Gauge, Targets } from "./explain/responses/gauge.ts";
export { type Gauger, gauger } from "./explain/responses/gauger.ts";
export { type Ask as GaugeAsk, type Asking, gaugeSets, progressOfAsks } from "./explain/responses/gauges.ts";
export { inNearOrder } from "./explain/responses/nearOrder.ts";
export {
  type Decision,
  type ResponsesOptions,
  type ResponsesResult,
  responses,
  responsesDecision,
} from "./explain/responses/responses.ts";
export { switchNames } from "./explain/responses/scenarios.ts";
export { sortedBars, type TornadoPart, tornado, tornadoBars, tornadoSteps } from "./explain/tornado.ts";
export type * from "./explain/types.ts";
export {
  BeyondCalendarError,
  type Draw,
  type Outcome,
  runVariants,
  type Settings,
  type Variant,
} from "./explain/variants.ts";
export { type WhyOptions, type WhyResult, why } from "./explain/why/why.ts";
export * from "./findings/index.ts";
export { type ForecastOptions, type ForecastResult, forecast, tooWide } from "./forecast/forecast.ts";
export { limitRanks, rankOf } from "./forecast/ranks.ts";
export { type LevelReading, readLevel } from "./forecast/readLevel.ts";
export { sharedRanks, shareForecast } from "./forecast/sharedForecast.ts";
export { beginSummary, summarise } from "./forecast/summarise.ts";
export { taskRanks } from "./forecast/taskRanks.ts";
export type * from "./forecast/types.ts";
export {
  type FigureDiffers,
  type SavedForecast,
  savedForecast,
  type Verified,
  verifyForecast,
} from "./forecast/verify.ts";
export {
  bytesOfSharedPieces,
  dropSpare,
  makePieces,
  sharePieces,
  spareMemory,
  touchMemory,
  warmUp,
} from "./kernel/index.ts";
export * from "./live/index.ts";
export * from "./models/index.ts";
export { applyScenario } from "./plan/applyScenario.ts";
export * from "./plan/index.ts";
export { type ScenarioChoice, scenarioNotes } from "./plan/scenarioProblems.ts";
export * from "./problems/index.ts";
export * from "./quality/index.ts";
export * from "./sampling/index.ts";
export * from "./signoff/index.ts";
export { type AsWritten, planAsWritten } from "./simulate/asWritten.ts";
export { beyondCalendar } from "./simulate/beyondCalendar.ts";
export { blockSize } from "./simulate/block.ts";
export { type BlockRunner, blockRunner } from "./simulate/blockRunner.ts";
export { compile } from "./simulate/compile.ts";
export type { Model } from "./simulate/model.ts";
export { type SettledMoments, settledMoments } from "./simulate/momentKeeper.ts";
export { practise } from "./simulate/program/practise.ts";
export { canBeShared, joinRun, type RunEntry, type SharedRun } from "./simulate/program/sharedRun.ts";
export { type OnBlock, runBlocks } from "./simulate/runBlocks.ts";
export { type Kept, type SimulateOptions, type Simulation, simulate } from "./simulate/simulate.ts";
export {
  addSums,
  bytesOfTrials,
  leaveTrials,
  type MomentRanks,
  type Moments,
  newTrials,
  type TrialSums,
  type Trials,
} from "./simulate/trials.ts";
export type * from "./units.ts";
export { version } from "./version.ts";
