import type { Bounds, Estimate, Plan } from "@leeway/core";

const words: Record<Bounds, string> = {
  extremes: "Low and high are the least and the most it can take.",
  "p10-p90": "Low (P10) is beaten one time in ten, high (P90) is exceeded one time in ten.",
  "p5-p95": "Low (P5) is beaten one time in twenty, high (P95) is exceeded one time in twenty.",
};

/** What low and high mean in this plan's tasks, in one sentence. */
export function boundsWords(plan: Plan): string {
  const estimates = plan.tasks.flatMap((task): Estimate[] => {
    const estimate = task.effort ?? task.duration;
    return estimate === undefined ? [] : [estimate];
  });
  const found = new Set(estimates.flatMap((one) => (one.kind === "range" ? [one.bounds] : [])));
  const [only] = found;
  if (only === undefined) return "";
  return found.size === 1 ? words[only] : "What low and high mean differs: the plan text says so for each.";
}
