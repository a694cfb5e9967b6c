export { type AnswerUnit, type Askable, askableOf, type OpinionOf } from "./askable.ts";
export { enteredIn } from "./enteredIn.ts";
export { impliedBy } from "./interview/implied.ts";
export { answerInterview, beginInterview } from "./interview/interview.ts";
export { type AnswerFault, opinionFrom, type WrittenAnswers } from "./interview/opinionFrom.ts";
export { INTERVIEW_ORDER, interviewQuestion } from "./interview/questions.ts";
export type * from "./interview/types.ts";
export { latestOpinions } from "./latestOpinions.ts";
export { addOpinion, estimateDefaults, writeOpinion } from "./opinionEdit.ts";
export { mixtureQuantile } from "./pool/mixtureQuantile.ts";
export { type PoolOptions, poolOpinions } from "./pool/poolOpinions.ts";
export { settlePooling } from "./pool/settle.ts";
export type * from "./pool/types.ts";
export { applyAdjustment } from "./score/applyAdjustment.ts";
export { scorecard } from "./score/scorecard.ts";
export type * from "./score/types.ts";
export { wilson } from "./score/wilson.ts";
export { SHEET_COLUMNS, type SheetKey } from "./sheet/columns.ts";
export { readSheet, type SheetReading } from "./sheet/readSheet.ts";
export { type SheetOptions, type SheetRow, sheetCells, sheetOf } from "./sheet/sheetOf.ts";
export {
  STAGE_UPLIFTS,
  type StageKind,
  UPLIFT_BOUNDS,
  type UpliftBounds,
  type UpliftKind,
} from "./uplift/bounds.ts";
export { type UpliftedPlan, upliftedPlan } from "./uplift/upliftedPlan.ts";
export { stageUplift, type Uplift, type UpliftMix, type UpliftSide, upliftFor } from "./uplift/upliftFor.ts";
export type * from "./wave/types.ts";
export { togetherCoefficient, waveCompare } from "./wave/waveCompare.ts";
