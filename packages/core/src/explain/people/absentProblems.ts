import { dayNumber } from "../../calendar/dates.ts";
import { isCalendarDate } from "../../plan/definition/dates.ts";
import { nearest } from "../../plan/definition/nearest.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Absent, TimeAway } from "./losePerson.ts";

/** What is wrong with a wanted absence, all of it; places are named as options of the command. */
export function absentProblems(plan: Plan, absent: Absent | TimeAway | undefined): Problem[] {
  if (absent === undefined) return [];
  const problems: Problem[] = [];
  const say = (path: string, received: string, rule: string, remedy: string) =>
    problems.push({ code: "absence", severity: "error", path, received, rule, remedy });
  const ids = plan.people.map(({ id }) => id).sort();
  if ("person" in absent && !ids.includes(absent.person)) {
    const near = nearest(absent.person, ids);
    const remedy =
      ids.length === 0
        ? "This plan names no people."
        : near === undefined
          ? `Name one of: ${ids.join(", ")}.`
          : `Did you mean ${near}?`;
    say("--lose", `\`${absent.person}\``, "There is nobody of that id in the plan.", remedy);
  }
  if (!(absent.days >= 1 && absent.days <= 366 && Number.isInteger(absent.days))) {
    say(
      "--days",
      String(absent.days),
      "It must be a whole number of working days from 1 to 366.",
      "Write e.g. 10.",
    );
  }
  const part = absent.part ?? 1;
  if (!(part > 0 && part <= 1)) {
    say("--part", String(part), "It must be above 0 and at most 1.", "Write 1 for all of the capacity.");
  }
  if (absent.from !== undefined && !isCalendarDate(absent.from)) {
    say("--from", absent.from, "That is not a date.", "Write it as 2027-03-01.");
  } else if (absent.from !== undefined) {
    const start = dayNumber(plan.start);
    const first = plan.statusDate === undefined ? start : Math.max(start, dayNumber(plan.statusDate) + 1);
    const reason =
      plan.statusDate === undefined ? `the plan starts on ${plan.start}` : `${plan.statusDate} is past`;
    if (dayNumber(absent.from) < first) {
      say("--from", absent.from, `It must not lie before the plan: ${reason}.`, "Give a later date.");
    }
    if (dayNumber(absent.from) > start + 36_000) {
      say("--from", absent.from, "No plan reaches that far.", "Give an earlier date.");
    }
  }
  return problems;
}
