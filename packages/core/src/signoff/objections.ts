import { addToPlan, setInPlan } from "../plan/edit/editPlan.ts";
import type { Problem } from "../plan/problem.ts";
import type { Id, IsoDate, Plan } from "../plan/types.ts";
import { personOf } from "./approvalsState.ts";
import type { Refusal } from "./types.ts";

/** A plan's text with an entry in it, or why it was refused. */
export interface Logged {
  text?: string;
  /** Of the objection written. */
  id?: Id;
  refusals: Refusal[];
  problems: Problem[];
}

/** Logs what somebody holds against the plan: open until it is answered, or accepted by name. */
export function logObjection(
  text: string,
  plan: Plan,
  said: { who: Id; text: string; date: IsoDate },
): Logged {
  const refusals = [...unknown(plan, said.who), ...empty(said.text, "What is objected must be said.")];
  if (refusals.length > 0) return { refusals, problems: [] };
  const id = idFor(plan, said.text);
  const entry = { id, who: said.who, date: said.date, text: said.text.trim(), state: "open" };
  return done(addToPlan(text, ["objections"], entry), id);
}

/**
 * Answers an objection; an answer may be bettered by another. One that somebody accepted stands by their name, so it has
 * to be opened again first.
 */
export function answerObjection(
  text: string,
  plan: Plan,
  said: { id: Id; answer: string; evidence?: string; changedPlan: boolean },
): Logged {
  const refusals = [...noSuch(plan, said.id), ...empty(said.answer, "The answer must be said.")];
  const one = plan.objections.find(({ id }) => id === said.id);
  if (one?.state === "accepted") {
    const name = one.acceptedBy === undefined ? "" : ` by ${personOf(plan, one.acceptedBy).name}`;
    const rule = `It was accepted as it stands${name}, so there is nothing to answer.`;
    const remedy = "Open it again first: those who raised, accepted or decide may.";
    refusals.push({ code: "objection-state", received: said.id, rule, remedy });
  }
  if (refusals.length > 0) return { refusals, problems: [] };
  return edited(text, plan, said.id, {
    answer: said.answer.trim(),
    ...(said.evidence === undefined ? {} : { evidence: said.evidence.trim() }),
    state: "answered",
    ...(said.changedPlan ? { changedPlan: true } : {}),
  });
}

/** Somebody accepts by name that an objection stands. */
export function acceptObjection(text: string, plan: Plan, said: { id: Id; who: Id }): Logged {
  const refusals = [...noSuch(plan, said.id), ...unknown(plan, said.who)];
  const one = plan.objections.find(({ id }) => id === said.id);
  if (one?.state === "accepted") {
    const name = one.acceptedBy === undefined ? "" : ` by ${personOf(plan, one.acceptedBy).name}`;
    const rule = `It was accepted already${name}.`;
    refusals.push({ code: "objection-state", received: said.id, rule, remedy: "There is nothing to do." });
  }
  if (refusals.length > 0) return { refusals, problems: [] };
  return edited(text, plan, said.id, { state: "accepted", acceptedBy: said.who });
}

/**
 * It is open again, as after an answer that was withdrawn. Who raised it, who accepted it, or one who approves the plan
 * may do that; of an objection that names nobody, anybody in the plan.
 */
export function reopenObjection(text: string, plan: Plan, said: { id: Id; who: Id }): Logged {
  const refusals = [...noSuch(plan, said.id), ...unknown(plan, said.who)];
  const one = plan.objections.find(({ id }) => id === said.id);
  if (one?.state === "open") {
    const rule = "It is open.";
    refusals.push({ code: "objection-state", received: said.id, rule, remedy: "There is nothing to do." });
  }
  if (one !== undefined && refusals.length === 0) refusals.push(...noParty(plan, one, said.who));
  if (refusals.length > 0) return { refusals, problems: [] };
  return edited(text, plan, said.id, { state: "open", reopenedBy: said.who });
}

function noParty(plan: Plan, { who, acceptedBy }: Plan["objections"][number], by: Id): Refusal[] {
  if (who === undefined && acceptedBy === undefined) return [];
  const parties = [who, acceptedBy].filter((id) => id !== undefined);
  const deciders = plan.approvals.map((approval) => approval.who);
  const may = [...new Set([...parties, ...deciders])];
  if (may.includes(by)) return [];
  const rule = `${personOf(plan, by).name} neither raised nor accepted it, and does not decide on this plan.`;
  return [{ code: "not-a-party", received: by, rule, remedy: `Name one of: ${may.sort().join(", ")}.` }];
}

function edited(text: string, plan: Plan, id: Id, values: Record<string, string | boolean>): Logged {
  const bases = plan.objections.length === 1 ? [["objections", id], ["objections"]] : [["objections", id]];
  let last: { text: string; problems: Problem[] } = { text, problems: [] };
  for (const base of bases) {
    last = { text, problems: [] };
    for (const [key, value] of Object.entries(values)) {
      last = setInPlan(last.text, [...base, key], value);
      if (last.problems.length > 0) break;
    }
    if (last.problems.length === 0) break;
  }
  return done(last, id);
}

function done(result: { text: string; problems: Problem[] }, id: Id): Logged {
  return result.problems.length > 0
    ? { refusals: [], problems: result.problems }
    : { text: result.text, id, refusals: [], problems: [] };
}

/** Its first words, made an id nobody has: "looks-like-padding". */
function idFor(plan: Plan, text: string): Id {
  const words = (text.toLowerCase().match(/[a-z0-9]+/g) ?? []).filter((word) => /^[a-z]/.test(word));
  const stem = words.slice(0, 3).join("-") || "objection";
  const taken = new Set<string>();
  const lists = [plan.objections, plan.tasks, plan.people, plan.stakeholders, plan.risks, plan.assumptions];
  for (const list of [
    ...lists,
    plan.benefits,
    plan.overheads,
    plan.intervals,
    plan.purpose.goals,
    plan.purpose.scopeIn,
  ])
    for (const { id } of list) taken.add(id);
  for (const { responses } of [...plan.risks, ...plan.assumptions])
    for (const { id } of responses) taken.add(id);
  for (const trigger of plan.returnTriggers ?? []) taken.add(trigger.id);
  if (!taken.has(stem)) return stem;
  for (let n = 2; ; n++) if (!taken.has(`${stem}-${n}`)) return `${stem}-${n}`;
}

function unknown(plan: Plan, who: Id): Refusal[] {
  const known = [...plan.stakeholders, ...plan.people].map(({ id }) => id);
  if (known.includes(who)) return [];
  const remedy =
    known.length === 0 ? "Add them to `stakeholders`." : `Name one of: ${[...known].sort().join(", ")}.`;
  return [{ code: "unknown-person", received: who, rule: "There is nobody of that id in the plan.", remedy }];
}

function noSuch(plan: Plan, id: Id): Refusal[] {
  if (plan.objections.some((one) => one.id === id)) return [];
  const ids = plan.objections.map((one) => one.id).join(", ");
  const remedy = ids === "" ? "The plan has none." : `Name one of: ${ids}.`;
  return [{ code: "unknown-objection", received: id, rule: "There is no objection of that id.", remedy }];
}

function empty(text: string, rule: string): Refusal[] {
  if (text.trim() !== "") return [];
  return [{ code: "empty-text", received: "", rule, remedy: "Say it in a sentence." }];
}
