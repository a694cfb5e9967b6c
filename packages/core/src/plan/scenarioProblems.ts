import { nearest } from "./definition/nearest.ts";
import type { Problem } from "./problem.ts";
import type { Plan, RegisterEntry } from "./types.ts";

/** What a scenario takes in and leaves out, by id. */
export interface ScenarioChoice {
  with?: readonly string[];
  without?: readonly string[];
}

type Option = "with" | "without";

const takesIn = "It takes in responses that are not adopted yet, and people who `couldAdd` capacity.";
const leavesOut = "It leaves out risks, assumptions, optional scope items and adopted responses.";

/**
 * What cannot be done of a scenario, all of it: ids that are not there or cannot be switched, each with what it is and
 * the nearest that can be, and ids that are both taken in and left out.
 */
export function scenarioProblems(plan: Plan, choice: ScenarioChoice): Problem[] {
  const taken = new Set(choice.with ?? []);
  const left = new Set(choice.without ?? []);
  const entries = entriesOf(plan);
  const responses = entries.flatMap((entry) => entry.responses.map((response) => response.id));
  const adding = plan.people.filter(({ couldAdd }) => couldAdd !== undefined).map(({ id }) => id);
  const optional = plan.purpose.scopeIn.filter((item) => item.optional).map(({ id }) => id);
  const takeable = [...responses, ...adding];
  const droppable = [...entries.map(({ id }) => id), ...responses, ...optional];
  return [
    ...[...taken]
      .filter((id) => !takeable.includes(id))
      .map((id) => unknown("with", id, takesIn, remedyFor(plan, "with", id, takeable))),
    ...[...left]
      .filter((id) => !droppable.includes(id))
      .map((id) => unknown("without", id, leavesOut, remedyFor(plan, "without", id, droppable))),
    ...[...taken]
      .filter((id) => left.has(id))
      .map((id) => ({
        ...unknown("with", id, "It is taken in and left out at once.", "Name it once."),
        code: "contradiction",
      })),
  ];
}

/**
 * What a scenario says that changes nothing, as warnings: what is adopted or closed already, what is not adopted, scope
 * that no task delivers or whose tasks have all begun.
 */
export function scenarioNotes(plan: Plan, choice: ScenarioChoice): Problem[] {
  const notes: Problem[] = [];
  const say = (option: Option, id: string, rule: string) =>
    notes.push({
      ...unknown(option, id, rule, "It changes nothing here."),
      code: "without-effect",
      severity: "warning",
    });
  const taken = new Set(choice.with ?? []);
  const left = new Set(choice.without ?? []);
  for (const entry of entriesOf(plan)) {
    if (left.has(entry.id) && entry.status === "closed") say("without", entry.id, "It is closed already.");
    for (const { id, adopted } of entry.responses) {
      if (taken.has(id) && adopted) say("with", id, "It is adopted already.");
      if (left.has(id) && !adopted) say("without", id, "It is not adopted.");
    }
  }
  for (const { id, optional } of plan.purpose.scopeIn) {
    if (!optional || !left.has(id)) continue;
    const tasks = plan.tasks.filter((task) => task.scope === id);
    if (tasks.length === 0) say("without", id, "No task delivers it (`scope`).");
    else if (tasks.every(({ started, finished }) => (started ?? finished) !== undefined)) {
      say("without", id, "All its tasks have begun, and work that has begun stays.");
    }
  }
  return notes;
}

function entriesOf(plan: Plan): RegisterEntry[] {
  return [...plan.risks, ...plan.assumptions];
}

/** What the id is instead, where it is anything; else the nearest of those that would do. */
function remedyFor(plan: Plan, option: Option, id: string, known: readonly string[]): string {
  const entry = entriesOf(plan).find((each) => each.id === id);
  if (option === "with" && entry !== undefined) {
    const responses = entry.responses.filter(({ adopted }) => !adopted).map((response) => response.id);
    const own =
      responses.length === 0 ? "It has no response to take in." : `Its responses: ${list(responses)}.`;
    return `That is ${entry.kind === "risk" ? "a risk" : "an assumption"}, which counts already. ${own}`;
  }
  const scope = plan.purpose.scopeIn.find((item) => item.id === id);
  if (scope !== undefined) {
    return option === "with"
      ? "That is a scope item, which is in the plan already."
      : "That scope item is not optional: say `optional: true`, and in `lost` what is lost without it.";
  }
  if (plan.people.some((person) => person.id === id)) {
    return option === "with"
      ? "That person has no `couldAdd`: say there what could be added."
      : "That is a person: see `people --lose`, which shows what an absence does.";
  }
  if (option === "without" && plan.tasks.some((task) => task.id === id)) {
    return "That is a task: name the optional scope item that it delivers (`scope`).";
  }
  if (known.length === 0) return "This plan has none.";
  const near = nearest(id, known);
  return near === undefined ? `Name one of: ${list(known)}.` : `Did you mean ${near}?`;
}

function list(ids: readonly string[]): string {
  return [...ids].sort().join(", ");
}

function unknown(option: Option, id: string, rule: string, remedy: string): Problem {
  return { code: "unknown-id", severity: "error", path: `--${option}`, received: `\`${id}\``, rule, remedy };
}
