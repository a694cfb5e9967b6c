import type { Problem } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import type { OptionValues } from "../call/optionValues.ts";

/** A calendar date that exists, as `2027-02-01`; `otherwise` where it was not given. */
export function dateOption(
  values: OptionValues,
  name: string,
  otherwise: string,
): { value: string; problems: Problem[] } {
  const text = values.text(name);
  if (text === undefined || text === "") return { value: otherwise, problems: [] };
  const date = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  if (date !== undefined && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text)) {
    return { value: text, problems: [] };
  }
  const rule = "It must be a calendar date that exists, year-month-day.";
  return {
    value: otherwise,
    problems: [callProblem("option-value", `--${name} ${text}`, rule, `Write e.g. --${name} 2027-02-01.`)],
  };
}

/** Today as the calendar on the wall has it. */
export function todayOf(now: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${String(now.getFullYear()).padStart(4, "0")}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
