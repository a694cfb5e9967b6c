import type { planDocument } from "./plan.ts";
import type { DraftOf } from "./type.ts";

/** The plan document as read, each key possibly missing. */
export type PlanDraft = DraftOf<typeof planDocument>;
type Item<T> = T extends (infer I)[] ? I : never;
export type TaskDraft = Item<NonNullable<PlanDraft["tasks"]>>;
export type LinkDraft = Item<NonNullable<TaskDraft["after"]>>;
export type PersonDraft = Item<NonNullable<PlanDraft["people"]>>;
export type RiskDraft = Item<NonNullable<PlanDraft["risks"]>>;
export type AssumptionDraft = Item<NonNullable<PlanDraft["assumptions"]>>;
export type ImpactDraft = Item<NonNullable<RiskDraft["impacts"]>>;
export type ResponseDraft = Item<NonNullable<RiskDraft["responses"]>>;
export type BenefitDraft = Item<NonNullable<PlanDraft["benefits"]>>;
export type CalendarsDraft = NonNullable<PlanDraft["calendars"]>;
export type CalendarDraft = CalendarsDraft extends Map<string, infer C> ? C : never;
