import type { Id, Plan, RegisterEntry } from "../../../plan/types.ts";
import { matchIds } from "./matchIds.ts";

export interface Aligned {
  /** The old plan in the new plan's names. */
  plan: Plan;
  /** Items whose id is another, as `[old, new]`. */
  renamed: [Id, Id][];
  /** Whether anything that draws are addressed by is named differently: ids, `was`, groups. */
  differs: boolean;
}

interface Item {
  id: Id;
  was?: Id;
}

/**
 * Puts an old plan into the names of a new one: matched items get the new plan's ids and draw addresses, groups
 * that hold the same entries its label. What is then different between the two is the plan, not its names.
 */
export function alignPlan(older: Plan, newer: Plan): Aligned {
  const responses = (plan: Plan) => entriesOf(plan).flatMap((entry) => entry.responses);
  const pairs: [readonly Item[], readonly Item[]][] = [
    [older.tasks, newer.tasks],
    [older.people, newer.people],
    [entriesOf(older), entriesOf(newer)],
    [responses(older), responses(newer)],
    [older.overheads, newer.overheads],
    [older.benefits, newer.benefits],
    [older.purpose.goals, newer.purpose.goals],
    [older.purpose.scopeIn, newer.purpose.scopeIn],
    [older.stakeholders, newer.stakeholders],
    [older.intervals, newer.intervals],
  ];
  const names = new Map<Id, Item>();
  for (const [was, is] of pairs) for (const [id, item] of matchIds(was, is)) names.set(id, item);
  const renamed = [...names].flatMap(([id, item]): [Id, Id][] => (id === item.id ? [] : [[id, item.id]]));
  makeRoom(pairs, names);

  const items = new Set<object>(pairs.flatMap(([was]) => was));
  const plan = inNewNames(older, names, items);
  const grouped = renameGroups(plan, newer);
  return { plan: grouped.plan, renamed, differs: grouped.renamed || addressed(pairs, names) };
}

/** Keys whose texts are ids. Dates under `from` and `to` are no ids, so they stay. */
const references = new Set(
  (
    "id task tasks onlyIf from to finishOf holder owner responsible accountable consulted informed estimatedBy " +
    "scope goal starts who between"
  ).split(" "),
);

function inNewNames(older: Plan, names: ReadonlyMap<Id, Item>, items: ReadonlySet<object>): Plan {
  if ([...names].every(([id, item]) => item.id === id) && !differentDraws(items, names)) return older;
  const text = (value: string) =>
    value.startsWith("cost:")
      ? `cost:${names.get(value.slice(5))?.id ?? value.slice(5)}`
      : (names.get(value)?.id ?? value);
  const change = (value: unknown, key: string): unknown => {
    if (typeof value === "string") return references.has(key) ? text(value) : value;
    if (Array.isArray(value)) return value.map((one) => change(one, key));
    if (typeof value !== "object" || value === null || value instanceof Map) return value;
    const entries = Object.entries(value).map(([name, one]) => [name, change(one, name)] as const);
    const known = items.has(value) && "id" in value ? names.get(String(value.id)) : undefined;
    if (known === undefined) return Object.fromEntries(entries);
    const rest = entries.filter(([name]) => name !== "was");
    return Object.fromEntries(known.was === undefined ? rest : [...rest, ["was", known.was]]);
  };
  // Only texts under reference keys were replaced, each by a text, and `was` set: the shape is that of a plan.
  return change(older, "") as Plan;
}

function differentDraws(items: ReadonlySet<object>, names: ReadonlyMap<Id, Item>): boolean {
  return [...items].some((item) => {
    const { id, was } = item as Item; // the set holds the items of the old plan
    return names.has(id) && names.get(id)?.was !== was;
  });
}

/** Whether any id or `was` that numbers may hang on differs: draws, order of ties, order of sums. */
function addressed(
  pairs: readonly [readonly Item[], readonly Item[]][],
  names: ReadonlyMap<Id, Item>,
): boolean {
  return pairs.some(([was]) =>
    was.some((item) => {
      const now = names.get(item.id);
      return now !== undefined && (now.id !== item.id || now.was !== item.was);
    }),
  );
}

function entriesOf(plan: Plan): RegisterEntry[] {
  return [...plan.risks, ...plan.assumptions];
}

/** An old item that is gone may stand in the way of a new id: it gets a free one and keeps its draws. */
function makeRoom(pairs: readonly [readonly Item[], readonly Item[]][], names: Map<Id, Item>): void {
  const taken = new Set([...names.values()].map((item) => item.id));
  const all = pairs.flatMap(([was]) => was);
  const known = new Set([
    ...taken,
    ...all.map((item) => item.id),
    ...pairs.flatMap(([, is]) => is.map((i) => i.id)),
  ]);
  for (const item of all) {
    if (names.has(item.id) || !taken.has(item.id)) continue;
    let id = `${item.id}-before`;
    while (known.has(id)) id = `${id}-before`;
    known.add(id);
    names.set(item.id, { id, was: item.was ?? item.id });
  }
}

/** A group draws by its label; one that holds the same entries under another label is the same group. */
function renameGroups(plan: Plan, newer: Plan): { plan: Plan; renamed: boolean } {
  const members = (of: Plan) => {
    const groups = new Map<string, string[]>();
    for (const { id, group } of entriesOf(of)) {
      if (group !== undefined) groups.set(group, [...(groups.get(group) ?? []), id]);
    }
    return new Map([...groups].map(([label, ids]) => [label, ids.sort().join()]));
  };
  const was = members(plan);
  const is = members(newer);
  const labels = new Map<string, string>();
  for (const [label, ids] of was) {
    if (is.has(label)) continue;
    for (const [other, theirs] of is) if (theirs === ids && !was.has(other)) labels.set(label, other);
  }
  if (labels.size === 0) return { plan, renamed: false };
  const entry = <T extends RegisterEntry>(one: T): T =>
    one.group === undefined ? one : { ...one, group: labels.get(one.group) ?? one.group };
  return {
    plan: { ...plan, risks: plan.risks.map(entry), assumptions: plan.assumptions.map(entry) },
    renamed: true,
  };
}
