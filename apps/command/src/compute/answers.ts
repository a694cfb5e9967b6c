import {
  type AssumptionBarsOptions,
  type AssumptionBarsResult,
  assumptionBars,
  type BudgetOptions,
  type BudgetResult,
  budget,
  type DrivingPathsOptions,
  type DrivingPathsResult,
  drivingPaths,
  type FutureOptions,
  type FutureResult,
  future,
  type PeopleLoadOptions,
  type PeopleLoadResult,
  type Plan,
  peopleLoad,
  type TestAssumptionsOptions,
  type TestAssumptionsResult,
  testAssumptions,
  type WhichFuture,
  type WhyConfidenceOptions,
  type WhyConfidenceResult,
  type WhyOptions,
  type WhyResult,
  why,
  whyConfidence,
} from "@leeway/core";

/** Questions answered by one call of the library, what they are asked with and what comes back. */
export interface Questions {
  confidence: { options: Omit<WhyConfidenceOptions, "onProgress">; answer: WhyConfidenceResult };
  assumptions: { options: Omit<AssumptionBarsOptions, "onProgress">; answer: AssumptionBarsResult };
  tested: { options: Omit<TestAssumptionsOptions, "onProgress">; answer: TestAssumptionsResult };
  money: { options: Omit<BudgetOptions, "onProgress">; answer: BudgetResult };
  people: { options: Omit<PeopleLoadOptions, "onProgress">; answer: PeopleLoadResult };
  paths: { options: Omit<DrivingPathsOptions, "onProgress">; answer: DrivingPathsResult };
  future: { options: Omit<FutureOptions, "onProgress"> & { which: WhichFuture }; answer: FutureResult };
  why: { options: Omit<WhyOptions, "onProgress"> & { task: string }; answer: WhyResult };
}
export type Kind = keyof Questions;

/** A question about a plan: plain data, so that it can be sent to a thread. */
export interface Question<K extends Kind = Kind> {
  kind: K;
  plan: Plan;
  options: Questions[K]["options"];
}
export type OnProgress = (done: number, total: number) => void;

const ways: {
  [K in Kind]: (
    plan: Plan,
    options: Questions[K]["options"] & { onProgress: OnProgress },
  ) => Questions[K]["answer"];
} = {
  confidence: whyConfidence,
  assumptions: assumptionBars,
  tested: testAssumptions,
  money: budget,
  people: peopleLoad,
  paths: drivingPaths,
  future: (plan, { which, ...options }) => future(plan, which, options),
  why: (plan, { task, ...options }) => why(plan, task, options),
};

/** Answers a question here and now. */
export function answer<K extends Kind>(
  question: Question<K>,
  onProgress: OnProgress,
): Questions[K]["answer"] {
  return ways[question.kind](question.plan, { ...question.options, onProgress });
}
