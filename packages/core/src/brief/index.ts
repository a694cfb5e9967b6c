export { type AssumptionBarsOptions, type AssumptionBarsResult, assumptionBars } from "./assumptionBars.ts";
export { type BriefOptions, type BriefResult, brief } from "./brief.ts";
export { briefOf } from "./briefOf.ts";
export { briefParts } from "./briefParts.ts";
export { type InterestRule, interestRules } from "./interests.ts";
export { type PreBriefExtras, preBriefOf } from "./preBriefOf.ts";
export type * from "./types.ts";
