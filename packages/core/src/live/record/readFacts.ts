import { nearest } from "../../plan/definition/nearest.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Json } from "../../plan/source/toJson.ts";
import type { Plan, Task } from "../../plan/types.ts";
import type { FactKind, ProgressFact } from "./types.ts";
import { readDay, readDays, readRemaining, readSum } from "./values.ts";

/** A fact that was understood: where it belongs in the plan, and its value as the plan writes it. */
export interface Told {
  what: FactKind;
  id: string;
  list: "tasks" | "risks" | "assumptions";
  value: Json;
  said: string;
}

const OF_TASKS: readonly FactKind[] = ["started", "finished", "remaining", "spent"];

/** Understands facts: each finds what it is about, has a value that can be, and does not contradict another. */
export function readFacts(
  plan: Plan,
  facts: readonly ProgressFact[],
  statusDate: string | undefined,
): { told: Told[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const told: Told[] = [];
  const seen = new Map<string, ProgressFact>();
  for (const fact of facts) {
    const report = (code: string, rule: string, remedy: string, severity: Problem["severity"] = "error") =>
      problems.push({ code, severity, path: fact.said, received: "", rule, remedy });
    const list = listOf(plan, fact);
    if (list === undefined) {
      const { code, rule, remedy } = unknown(plan, fact);
      report(code, rule, remedy);
      continue;
    }
    const key = fact.what === "occurred" || fact.what === "closed" ? "status" : fact.what;
    const other = seen.get(`${fact.id} ${key}`);
    seen.set(`${fact.id} ${key}`, fact);
    if (other !== undefined) {
      const rule = other.what === fact.what ? "It is said twice." : `It is said to be ${other.what} as well.`;
      report("said-twice", rule, "Keep one of them.");
      continue;
    }
    const recorded = recordedDay(plan, fact);
    if (recorded !== undefined && (fact.value ?? "").trim() === "") {
      // Said again without a day: the day that is known stays.
      const remedy = `Write ${fact.id}=DATE to correct it.`;
      report("already-recorded", `Recorded already, on ${recorded}; that day stays.`, remedy, "warning");
      continue;
    }
    const value = factValue(fact, statusDate);
    if (value === undefined) continue; // its day is the status date, which has a problem of its own
    if ("rule" in value) {
      report("bad-value", value.rule, value.remedy);
      continue;
    }
    told.push({ what: fact.what, id: fact.id, list, value: value.value, said: fact.said });
  }
  return { told, problems: [...problems, ...contradictions(plan, told, statusDate)] };
}

function recordedDay(plan: Plan, { what, id }: ProgressFact): string | undefined {
  const find = <T extends { id: string }>(list: readonly T[]) => list.find((each) => each.id === id);
  if (what === "started" || what === "finished") return find(plan.tasks)?.[what];
  return what === "tripped" ? find(plan.assumptions)?.tripped : undefined;
}

function listOf(plan: Plan, { what, id }: ProgressFact): Told["list"] | undefined {
  const has = (list: readonly { id: string }[]) => list.some((each) => each.id === id);
  if (OF_TASKS.includes(what)) return has(plan.tasks) ? "tasks" : undefined;
  if (has(plan.assumptions)) return "assumptions";
  return what !== "tripped" && has(plan.risks) ? "risks" : undefined;
}

function unknown(plan: Plan, { what, id }: ProgressFact): { code: string; rule: string; remedy: string } {
  const kinds = [
    { kind: "a task", list: plan.tasks, fits: OF_TASKS.includes(what) },
    { kind: "a risk", list: plan.risks, fits: !OF_TASKS.includes(what) && what !== "tripped" },
    { kind: "an assumption", list: plan.assumptions, fits: !OF_TASKS.includes(what) },
  ];
  const fitting = kinds.filter(({ fits }) => fits);
  const wanted = fitting.map(({ kind }) => kind).join(" or ");
  const is = kinds.find(({ list }) => list.some((each) => each.id === id));
  const known = fitting.flatMap(({ list }) => list.map((each) => each.id)).sort();
  const near = nearest(id, known);
  const remedy =
    near !== undefined
      ? `Did you mean ${near}?`
      : known.length === 0
        ? "The plan has none."
        : `Known: ${known.slice(0, 6).join(", ")}${known.length > 6 ? ", ..." : ""}.`;
  if (is !== undefined)
    return { code: "wrong-kind", rule: `${id} is ${is.kind}; ${wanted} belongs here.`, remedy };
  return { code: "unknown-id", rule: `The plan has no ${wanted.replace(/\ban? /g, "")} ${id}.`, remedy };
}

function factValue(
  { what, value = "" }: ProgressFact,
  statusDate: string | undefined,
): { value: Json } | { rule: string; remedy: string } | undefined {
  if (what === "remaining") return readRemaining(value);
  if (what === "spent" || what === "cost") return readSum(value);
  if (what === "days") return readDays(value);
  if (what === "occurred" || what === "closed") {
    if (value.trim() === "") return { value: what };
    return { rule: "Nothing stands behind the id.", remedy: "Leave the value out." };
  }
  if (value.trim() !== "") return readDay(value);
  return statusDate === undefined ? undefined : { value: statusDate };
}

/** What cannot have happened: days in the wrong order, a milestone that takes time, remains of what is finished. */
function contradictions(plan: Plan, told: readonly Told[], statusDate: string | undefined): Problem[] {
  const problems: Problem[] = [];
  const report = (fact: Told, code: string, rule: string, remedy: string) =>
    problems.push({ code, severity: "error", path: fact.said, received: "", rule, remedy });
  const byTask = new Map<string, Map<FactKind, Told>>();
  for (const fact of told) {
    if (fact.what === "started" || fact.what === "finished" || fact.what === "tripped") {
      const day = String(fact.value);
      if (statusDate !== undefined && day > statusDate) {
        const rule = `It lies after the status date, ${statusDate}.`;
        report(fact, "progress-date", rule, "Correct the day, or give a later --status.");
      } else if (fact.what !== "tripped" && day < plan.start) {
        report(fact, "progress-date", `It lies before the plan's start, ${plan.start}.`, "Correct the day.");
      }
    }
    if (fact.list === "tasks") byTask.set(fact.id, (byTask.get(fact.id) ?? new Map()).set(fact.what, fact));
  }
  for (const fact of told) {
    if (fact.what !== "cost" && fact.what !== "days") continue;
    const said = told.find(({ id, what }) => id === fact.id && (what === "occurred" || what === "closed"));
    const entry = [...plan.risks, ...plan.assumptions].find(({ id }) => id === fact.id);
    if ((said?.what ?? entry?.status) === "occurred") continue;
    const rule = "It has not occurred, so it has cost and taken nothing.";
    report(fact, "progress-order", rule, `Add --occurred ${fact.id}.`);
  }
  for (const task of plan.tasks) {
    const facts = byTask.get(task.id);
    if (facts !== undefined) checkTask(task, facts, report);
  }
  return problems;
}

function checkTask(
  task: Task,
  facts: ReadonlyMap<FactKind, Told>,
  report: (fact: Told, code: string, rule: string, remedy: string) => void,
): void {
  const point = task.milestone !== false;
  const day = (key: "started" | "finished") => {
    const fact = facts.get(key);
    return fact === undefined ? task[key] : String(fact.value);
  };
  const started = day("started");
  const finished = day("finished");
  const start = facts.get("started");
  const finish = facts.get("finished");
  const remaining = facts.get("remaining");
  const spent = facts.get("spent");
  if (point) {
    const rule = "A milestone is a point in time: it is finished or not.";
    for (const fact of [start, remaining]) {
      if (fact !== undefined) report(fact, "progress-order", rule, `Write --finished ${task.id}.`);
    }
  } else {
    if (finish !== undefined && started === undefined) {
      const remedy = `Add --started ${task.id}=DATE.`;
      report(finish, "progress-order", "What is finished has started, and nobody said when.", remedy);
    }
    if (started !== undefined && finished !== undefined && finished < started) {
      const at = finish ?? start;
      const rule = `It would finish on ${finished}, before it starts on ${started}.`;
      if (at !== undefined) report(at, "progress-order", rule, "Correct one of the two days.");
    }
    if (remaining !== undefined && finished !== undefined) {
      report(remaining, "progress-order", "Nothing remains of a finished task.", "Leave it out.");
    } else if (remaining !== undefined && started === undefined) {
      report(remaining, "progress-order", "It has not started.", `Add --started ${task.id}=DATE.`);
    }
  }
  if (spent !== undefined && started === undefined && finished === undefined) {
    const remedy = point ? `Add --finished ${task.id}=DATE.` : `Add --started ${task.id}=DATE.`;
    report(spent, "progress-order", "It has not started, so nothing is spent on it yet.", remedy);
  }
}
