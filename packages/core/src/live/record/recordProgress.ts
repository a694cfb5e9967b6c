import { type PlanEdit, setInPlan } from "../../plan/edit/editPlan.ts";
import { type PlanChange, setManyInPlan } from "../../plan/edit/setManyInPlan.ts";
import { planHash } from "../../plan/hash.ts";
import type { Problem } from "../../plan/problem.ts";
import { readPlan } from "../../plan/readPlan.ts";
import { readSource } from "../../plan/source/readSource.ts";
import { toJson } from "../../plan/source/toJson.ts";
import type { Plan } from "../../plan/types.ts";
import { countedTwice } from "./countedTwice.ts";
import { missingAfter, nothingMissing } from "./missing.ts";
import { outOfSequence } from "./outOfSequence.ts";
import { readFacts, type Told } from "./readFacts.ts";
import type { ProgressReport, Recorded } from "./types.ts";
import { readDay } from "./values.ts";

/**
 * Writes a report of progress into the text of a plan; comments and order stay. Every problem of the report is listed
 * at once, and with one that is an error the text stays as it came.
 *
 * Progress goes forward: a status date before the plan's own is refused. What is finished has nothing `remaining`.
 * A predecessor that is not finished is a warning: it happened all the same.
 */
export function recordProgress(text: string, report: ProgressReport): Recorded {
  const { plan, problems: faults } = readPlan(text);
  const nothing = { text, changed: [], finished: [], missing: nothingMissing };
  if (plan === undefined) return { ...nothing, problems: faults };
  const day = readDay(report.statusDate);
  const problems: Problem[] = [];
  if (!("value" in day)) {
    problems.push(problem("option-value", `--status ${report.statusDate}`, day.rule, day.remedy));
  } else if (plan.statusDate !== undefined && day.value < plan.statusDate) {
    const rule = `The plan has progress up to ${plan.statusDate} already, and progress goes forward.`;
    const remedy = "Give a later day; what was recorded wrongly is corrected in the plan.";
    problems.push(problem("status-before", `--status ${report.statusDate}`, rule, remedy));
  }
  const statusDate = "value" in day ? day.value : undefined;
  const told = readFacts(plan, report.facts, statusDate);
  problems.push(...told.problems);
  if (statusDate === undefined || problems.some(({ severity }) => severity === "error"))
    return { ...nothing, before: plan, problems };

  const written = write(text, plan, statusDate, told.told);
  const after = written.problems.length > 0 ? undefined : readPlan(written.text);
  const found = [...written.problems, ...(after?.problems ?? [])];
  if (after?.plan === undefined) return { ...nothing, before: plan, problems: found };
  // What was amiss with the plan before is not the report's business.
  const known = new Set(faults.map(({ code, path }) => `${code} ${path}`));
  return {
    text: written.text,
    before: plan,
    after: after.plan,
    changed: [...new Set(told.told.map(({ id }) => id))],
    finished: told.told.filter(({ what }) => what === "finished").map(({ id }) => id),
    missing: missingAfter(plan, after.plan),
    problems: [
      ...problems,
      ...outOfSequence(after.plan, told.told),
      ...countedTwice(after.plan, told.told),
      ...found.filter(({ code, path }) => !known.has(`${code} ${path}`)),
    ],
  };
}

function write(text: string, plan: Plan, statusDate: string, told: readonly Told[]): PlanEdit {
  const changes: PlanChange[] = [];
  // A start before its finish: so that the keys are written in the order in which things happen.
  const inOrder = [...told].sort((a, b) => ORDER.indexOf(a.what) - ORDER.indexOf(b.what));
  for (const { what, id, list, value } of inOrder) {
    if (what === "cost" || what === "days") continue;
    const task = list === "tasks" ? plan.tasks.find((each) => each.id === id) : undefined;
    if (what === "finished" && task?.remaining !== undefined)
      changes.push({ path: ["tasks", id, "remaining"], value: undefined });
    const key = what === "occurred" || what === "closed" ? "status" : what;
    changes.push({ path: [list, id, key], value });
  }
  changes.push(...actualChanges(plan, told));
  const made = setManyInPlan(text, changes);
  return plan.statusDate === statusDate || made.problems.length > 0 ? made : statusIn(made.text, statusDate);
}

/** What an entry did in fact is one object: what is told now, and what was told before. */
function actualChanges(plan: Plan, told: readonly Told[]): PlanChange[] {
  const facts = told.filter(({ what }) => what === "cost" || what === "days");
  return [...new Set(facts.map(({ id }) => id))].flatMap((id): PlanChange[] => {
    const own = facts.filter((fact) => fact.id === id);
    const [first] = own;
    const before = [...plan.risks, ...plan.assumptions].find((entry) => entry.id === id)?.actual;
    const now = Object.fromEntries(own.map(({ what, value }) => [what, value]));
    return first === undefined ? [] : [{ path: [first.list, id, "actual"], value: { ...before, ...now } }];
  });
}

/** The status date where it stands; a first one under the plan's start, where a reader looks for it. */
function statusIn(text: string, statusDate: string): PlanEdit {
  const plain = setInPlan(text, ["statusDate"], statusDate);
  const under = text.replace(
    /^start: *\d[^\n]*(\r?\n)/m,
    (line, end) => `${line}statusDate: ${statusDate}${end}`,
  );
  if (under === text || /^statusDate:/m.test(text)) return plain;
  // Written by hand, so it counts only where it says exactly what was meant.
  return contentOf(under) === contentOf(plain.text) ? { text: under, problems: [] } : plain;
}

/** What a document says, whatever the order of its keys. */
function contentOf(text: string): string | undefined {
  const { root, faults } = readSource(text);
  return root === undefined || faults.length > 0 ? undefined : planHash(toJson(root));
}

const ORDER = ["started", "finished", "remaining", "spent", "occurred", "closed", "tripped"];

function problem(code: string, path: string, rule: string, remedy: string): Problem {
  return { code, severity: "error", path, received: "", rule, remedy };
}
