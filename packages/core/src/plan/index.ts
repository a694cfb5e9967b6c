export { nearest } from "./definition/nearest.ts";
export { PAGE_SECTIONS } from "./definition/pageText.ts";
export { STRUCTURAL_CODES } from "./definition/reading.ts";
export {
  addToPlan,
  type EditPath,
  type PlanEdit,
  removeFromPlan,
  setInPlan,
} from "./edit/editPlan.ts";
export { type PlanChange, setManyInPlan } from "./edit/setManyInPlan.ts";
export { swapInPlan } from "./edit/swapInPlan.ts";
export { writeEstimate } from "./edit/writeEstimate.ts";
export { approvalHash, planHash, planHashes } from "./hash.ts";
export { describeProblem, type Problem } from "./problem.ts";
export { type PlanReading, planFromData, readPlan } from "./readPlan.ts";
export { planJsonSchema } from "./schema.ts";
export { SHAPES, type ShapeRule, shapeRules } from "./shapes.ts";
export type { Json } from "./source/toJson.ts";
export { type StarterOptions, starterPlan } from "./starterPlan.ts";
export type * from "./types.ts";
