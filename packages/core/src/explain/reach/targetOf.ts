import { dayNumber, isoDate } from "../../calendar/dates.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";

/** What is to be reached, or what is wrong with how it was asked. */
export interface Target {
  finishBy?: string;
  sum?: number;
  problems: Problem[];
}

/** The date and the sum asked for; when neither is, those of the plan's commitment. */
export function targetOf(plan: Plan, { finishBy, sum }: { finishBy?: string; sum?: number }): Target {
  const problems: Problem[] = [];
  const report = (path: string, received: unknown, rule: string, remedy: string) =>
    problems.push({
      code: "option-value",
      severity: "error",
      path,
      received: String(received),
      rule,
      remedy,
    });
  if (finishBy !== undefined && !isDate(finishBy)) {
    report("--by", finishBy, "It must be a date of the years 1900 to 2999.", "Write e.g. 2027-10-01.");
  }
  if (sum !== undefined && !Number.isFinite(sum)) {
    report("--sum", sum, "It must be money.", "Write a plain number, e.g. 640000.");
  }
  if (finishBy !== undefined || sum !== undefined) {
    return {
      ...(finishBy === undefined ? {} : { finishBy }),
      ...(sum === undefined ? {} : { sum }),
      problems,
    };
  }
  const { commitment } = plan;
  if (commitment.finishBy === undefined && commitment.budget === undefined) {
    problems.push({
      code: "nothing-asked",
      severity: "error",
      path: "commitment",
      received: "",
      rule: "The plan asks for no date and no sum, so there is nothing to reach.",
      remedy: "Add `finishBy` or `budget` to its `commitment`, or ask with --by DATE or --sum MONEY.",
    });
  }
  return {
    ...(commitment.finishBy === undefined ? {} : { finishBy: commitment.finishBy }),
    ...(commitment.budget === undefined ? {} : { sum: commitment.budget }),
    problems,
  };
}

/** An ISO calendar date that exists: written back from its number it is the same. */
function isDate(text: string): boolean {
  return /^(19|2\d)\d{2}-\d{2}-\d{2}$/.test(text) && isoDate(dayNumber(text)) === text;
}
