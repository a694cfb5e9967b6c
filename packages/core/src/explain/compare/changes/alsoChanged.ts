import type { DecisionAsked, Plan, RegisterEntry, Response } from "../../../plan/types.ts";
import { countWords, dateWords, listWords, moneyWords, percentWords } from "../words/numbers.ts";
import type { Pair } from "./pair.ts";

/**
 * What changed between two plans and moves neither date nor sum: names, notes, owners, what is asked for, what is
 * on offer but not adopted. Each in a sentence; the order of lists is no change.
 *
 * @param renamed  Ids of the old plan that are others in the new one, as `[old, new]`.
 */
export function alsoChanged(pair: Pair, renamed: readonly (readonly [string, string])[]): string[] {
  const older = pair.older.plan;
  const newer = pair.newer.plan;
  return [
    ...renamed.map(([was, is]) => `${pair.nameOf(is)}: has the id ${is} now, before ${was}`),
    ...askedChanges(older, newer),
    ...textsOf("The plan", older, newer, { title: "title", currency: "currency", note: "note" }),
    ...items("", older.tasks, newer.tasks, taskTexts, true),
    ...items("", older.people, newer.people, personTexts, false),
    ...items("", entriesOf(older), entriesOf(newer), entryTexts, true),
    ...offers(pair),
    ...items("", older.overheads, newer.overheads, { name: "name", note: "note" }, true),
    ...items("Benefit ", older.benefits, newer.benefits, benefitTexts, false),
    ...textsOf("The plan", older, newer, {
      lateness: "what lateness costs",
      appraisal: "terms of the appraisal",
    }),
    ...textsOf("What is to be decided", decisionOf(older), decisionOf(newer), decisionTexts),
    ...textsOf("The plan's purpose", older.purpose, newer.purpose, {
      problem: "problem",
      scopeOut: "what is left out",
      constraints: "constraints",
      quality: "quality bars",
    }),
    ...items("Goal ", named(older.purpose.goals), named(newer.purpose.goals), goalTexts, false),
    ...items("Scope ", older.purpose.scopeIn, newer.purpose.scopeIn, scopeTexts, false),
    ...items("Span ", older.intervals, newer.intervals, intervalTexts, false),
    ...items("", older.stakeholders, newer.stakeholders, stakeholderTexts, false),
    ...items("Phase ", phasesOf(older), phasesOf(newer), phaseTexts, false),
    ...lists(older, newer),
  ];
}

function askedChanges(older: Plan, newer: Plan): string[] {
  const texts: string[] = [];
  const was = older.commitment;
  const is = newer.commitment;
  const say = <T>(what: string, a: T | undefined, b: T | undefined, words: (value: T) => string) => {
    if (a === b) return;
    if (b === undefined)
      texts.push(`${what}: no longer stated${a === undefined ? "" : ` (it was ${words(a)})`}`);
    else
      texts.push(a === undefined ? `${what}: now ${words(b)}` : `${what}: from ${words(a)} to ${words(b)}`);
  };
  const money = (value: number) => moneyWords(value, newer.currency);
  say("Date asked for", was.finishBy, is.finishBy, dateWords);
  say("Sum asked for", was.budget, is.budget, money);
  say("Reserve", was.reserve, is.reserve, money);
  say("Level committed to", was.confidence, is.confidence, percentWords);
  if (was.holder !== is.holder) texts.push("Holder of the contingency: another than before");
  if (!same(was.funds, is.funds)) texts.push("Money released: other dates or sums");
  return texts;
}

type Words = Record<string, string>;
const taskTexts: Words = {
  name: "name",
  note: "note",
  basis: "basis",
  scope: "scope",
  target: "target date",
  due: "when its cost falls due",
  detail: "detail",
  phase: "phase",
  responsible: "who is responsible",
  accountable: "who is accountable",
  consulted: "who is consulted",
  informed: "who is informed",
  estimatedBy: "who estimated it",
  enteredBy: "who entered it",
  opinions: "what people said of it",
};
const decisionTexts: Words = {
  ask: "what is asked",
  by: "date of the decision",
  recommend: "what is recommended",
  doNothing: "what becomes of it if nothing is done",
  alternatives: "alternatives",
  note: "note",
};
const personTexts: Words = {
  name: "name",
  role: "role",
  note: "note",
  couldAdd: "capacity that could be added",
};
const entryTexts: Words = {
  name: "name",
  note: "note",
  cause: "cause",
  owner: "owner",
  reviewBy: "date of review",
  signpost: "signpost",
  tripped: "day its signpost was seen",
  kind: "risk or assumption",
};
const benefitTexts: Words = {
  name: "name",
  note: "note",
  kind: "kind",
  goal: "goal",
  owner: "owner",
  amount: "amount",
  quantity: "quantity",
  unit: "unit",
  worth: "worth",
  per: "period",
  starts: "when it starts",
  lag: "lag after that",
  ramp: "ramp",
  lasts: "how long it lasts",
  until: "end",
};
const goalTexts: Words = {
  statement: "statement",
  measure: "measure",
  target: "target",
  by: "date",
  owner: "owner",
  note: "note",
};
const scopeTexts: Words = {
  name: "name",
  optional: "whether it is optional",
  lost: "what is lost",
  note: "note",
};
const intervalTexts: Words = { name: "name", from: "beginning", to: "end", atMost: "limit", note: "note" };
const stakeholderTexts: Words = {
  name: "name",
  role: "role",
  interest: "interest",
  stance: "stance",
  inform: "how to inform",
  approvesUpTo: "signing limit",
  note: "note",
};
const phaseTexts: Words = {
  responsible: "who is responsible",
  accountable: "who is accountable",
  consulted: "who is consulted",
  informed: "who is informed",
  note: "note",
};

/** "Permit decided: note and basis" where those keys differ. */
function textsOf(subject: string, before: object, after: object, words: Words): string[] {
  const a = new Map<string, unknown>(Object.entries(before));
  const b = new Map<string, unknown>(Object.entries(after));
  const changed = Object.keys(words).filter((key) => !same(a.get(key), b.get(key)));
  return changed.length === 0 ? [] : [`${subject}: ${listWords(changed.map((key) => words[key] ?? key))}`];
}

/** @param moves  Whether an item that comes or goes is told among the moves already. */
function items<T extends { id: string; name: string }>(
  noun: string,
  older: readonly T[],
  newer: readonly T[],
  words: Words,
  moves: boolean,
): string[] {
  const was = new Map(older.map((item) => [item.id, item]));
  const is = new Map(newer.map((item) => [item.id, item]));
  return [...new Set([...was.keys(), ...is.keys()])].sort().flatMap((id) => {
    const before = was.get(id);
    const after = is.get(id);
    if (before !== undefined && after !== undefined)
      return textsOf(`${noun}${after.name}`, before, after, words);
    if (moves) return [];
    return [after === undefined ? `${noun}${before?.name ?? id}: left out` : `${noun}${after.name}: new`];
  });
}

/** Responses that are adopted in neither plan, and the texts of those that are. */
function offers(pair: Pair): string[] {
  return [...pair.newer.entries.keys()].sort().flatMap((id) => {
    const before = pair.older.entries.get(id);
    const after = pair.newer.entries.get(id);
    if (before === undefined || after === undefined) return [];
    const ids = [...new Set([...before.responses, ...after.responses].map((response) => response.id))].sort();
    return ids.flatMap((one) => {
      const was = before.responses.find((response) => response.id === one);
      const is = after.responses.find((response) => response.id === one);
      return offer(after.name, was, is);
    });
  });
}

const offerTexts: Words = { action: "wording", owner: "owner", due: "date due", note: "note" };
const offerTerms: Words = { cost: "cost", probability: "chance with it", scale: "impact that remains" };

function offer(entry: string, was: Response | undefined, is: Response | undefined): string[] {
  const subject = `${entry}: response “${(is ?? was)?.action}”`;
  if (was === undefined || is === undefined) {
    if ((was ?? is)?.adopted === true) return [];
    return [`${subject} ${is === undefined ? "taken off the list" : "on offer, not adopted"}`];
  }
  const terms = was.adopted || is.adopted ? {} : offerTerms;
  return textsOf(subject, was, is, { ...offerTexts, ...terms });
}

function lists(older: Plan, newer: Plan): string[] {
  const texts: string[] = [];
  const say = (what: string, a: readonly unknown[], b: readonly unknown[]) => {
    if (same(a, b)) return;
    const more = b.length - a.length;
    texts.push(
      more > 0
        ? `${what}: ${countWords(more, "more entry").replace("entrys", "entries")}`
        : `${what}: changed`,
    );
  };
  say("Approvals", older.approvals, newer.approvals);
  say("Objections", older.objections, newer.objections);
  say("List of changes", older.changes, newer.changes);
  say("Texts between the sections", older.texts, newer.texts);
  say("Accepted findings", older.acceptedFindings, newer.acceptedFindings);
  say("Return triggers", older.returnTriggers, newer.returnTriggers);
  return texts;
}

function entriesOf(plan: Plan): RegisterEntry[] {
  return [...plan.risks, ...plan.assumptions];
}

/** What a plan that asks for no decision says of one. */
function decisionOf({ decision }: Plan): DecisionAsked {
  return decision ?? { alternatives: [] };
}

function named<T extends { id: string; statement: string }>(goals: readonly T[]): (T & { name: string })[] {
  return goals.map((goal) => ({ ...goal, name: goal.statement }));
}

function phasesOf(plan: Plan): (Plan["phases"][number] & { id: string })[] {
  return plan.phases.map((phase) => ({ ...phase, id: phase.name }));
}

/** Same content; lists whatever their order. */
function same(a: unknown, b: unknown): boolean {
  return canonical(a) === canonical(b);
}

function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).sort().join()}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "";
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  return `{${entries
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, item]) => `${key}:${canonical(item)}`)
    .join()}}`;
}
