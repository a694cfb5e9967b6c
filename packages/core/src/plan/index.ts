export { approvalHash, planHash } from "./hash.ts";
export { describeProblem, type Problem } from "./problem.ts";
export { type PlanReading, planFromData, readPlan } from "./read-plan.ts";
export { planJsonSchema } from "./schema.ts";
export type * from "./types.ts";
