export { checkPlan } from "./checkPlan.ts";
export { checkRules, type FindingCode, findingFamilies } from "./checkRules.ts";
export { measureRules } from "./measures/measureRules.ts";
export { planMeasures } from "./measures/planMeasures.ts";
export { planFindings } from "./planFindings.ts";
export type * from "./types.ts";
