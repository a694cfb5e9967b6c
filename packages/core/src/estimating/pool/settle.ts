import { type PlanEdit, setInPlan } from "../../plan/edit/editPlan.ts";
import { writeEstimate } from "../../plan/edit/writeEstimate.ts";
import type { Estimate, Id, Task } from "../../plan/types.ts";
import { estimateDefaults } from "../opinionEdit.ts";
import type { Pooling } from "./types.ts";

/** Significant digits that are written of an average; nobody means more. */
const DIGITS = 4;

/**
 * The text of a plan with a pooled estimate settled: the task's estimate, whom it is from, and a basis that names them
 * and says how it was made. Averages are rounded to four significant digits. The opinions stay where they are.
 *
 * @param nameOf  The name of a person by id.
 */
export function settlePooling(
  text: string,
  task: Task,
  pooling: Pooling,
  nameOf: (id: Id) => string,
): PlanEdit & { estimate: Estimate; basis: string } {
  const estimate = rounded(pooling.estimate);
  const by = pooling.voices.map((voice) => voice.by);
  const basis = basisOf(pooling, nameOf);
  const written = writeEstimate(estimate, estimateDefaults(text));
  const edits: [string, unknown][] = [[pooling.of, written]];
  if (pooling.of !== "cost" || task.duration === undefined) edits.push(["estimatedBy", by]);
  edits.push([
    "basis",
    pooling.of === "cost" && task.basis !== undefined ? `${task.basis} Cost: ${basis}` : basis,
  ]);
  let edit: PlanEdit = { text, problems: [] };
  for (const [key, value] of edits) {
    edit = setInPlan(edit.text, ["tasks", task.id, key], value);
    if (edit.problems.length > 0) return { text, problems: edit.problems, estimate, basis };
  }
  return { ...edit, estimate, basis };
}

function basisOf({ voices }: Pooling, nameOf: (id: Id) => string): string {
  const said = voices.map(({ by, date, basis }) => {
    const on = date === undefined ? "" : `, ${date}`;
    return `${nameOf(by)}${on}${basis === undefined ? "" : `: ${basis.replace(/[.\s]+$/, "")}`}`;
  });
  const [only] = said;
  if (said.length === 1 && only !== undefined) return `As said by ${only}.`;
  return `Average of ${said.length} opinions (quantiles, equal weights). ${said.join("; ")}.`;
}

function rounded(estimate: Estimate): Estimate {
  const round = (value: number) => Number(value.toPrecision(DIGITS));
  if (estimate.kind === "fixed") return { ...estimate, value: round(estimate.value) };
  if (estimate.kind === "outcomes") return estimate;
  const { low, likely, high } = estimate;
  return {
    ...estimate,
    low: round(low),
    high: round(high),
    ...(likely !== undefined && { likely: round(likely) }),
  };
}
