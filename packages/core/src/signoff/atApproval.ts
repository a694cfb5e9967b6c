import type { EditPath, PlanEdit } from "../plan/edit/editPlan.ts";
import type { Plan } from "../plan/types.ts";

/** An edit of one approval of a plan's text; a single entry need not be a list. */
export function atApproval(
  text: string,
  plan: Plan,
  at: number,
  edit: (path: EditPath) => PlanEdit,
): PlanEdit {
  const paths = plan.approvals.length === 1 ? [["approvals", 0], ["approvals"]] : [["approvals", at]];
  let last: PlanEdit = { text, problems: [] };
  for (const path of paths) {
    last = edit(path);
    if (last.problems.length === 0) break;
  }
  return last;
}
