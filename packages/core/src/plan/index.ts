export {
  addToPlan,
  type EditPath,
  type PlanEdit,
  removeFromPlan,
  setInPlan,
} from "./edit/edit-plan.ts";
export { writeEstimate } from "./edit/write-estimate.ts";
export { approvalHash, planHash, planHashes } from "./hash.ts";
export { describeProblem, type Problem } from "./problem.ts";
export { type PlanReading, planFromData, readPlan } from "./read-plan.ts";
export { planJsonSchema } from "./schema.ts";
export type { Json } from "./source/to-json.ts";
export { type StarterOptions, starterPlan } from "./starter-plan.ts";
export type * from "./types.ts";
