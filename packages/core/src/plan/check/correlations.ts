import type { PlanDraft, TaskDraft } from "../definition/draft.ts";
import { COST_PREFIX } from "../definition/names.ts";
import type { Reading } from "../definition/reading.ts";
import type { Place } from "../source/place.ts";

/** Most pairs all sets may name together: one matrix has to hold them. */
const MOST_PAIRS = 5_000_000;

/** Each name has a draw behind it, stands once in its set, and no pair is named in two sets. */
export function checkCorrelations(plan: PlanDraft, reading: Reading): void {
  const correlations = plan.correlations ?? [];
  const tasks = new Map<string, TaskDraft>();
  for (const task of plan.tasks ?? []) if (task.id !== undefined) tasks.set(task.id, task);

  const sets = correlations.map(({ between }) => new Set(between ?? []));
  let pairs = 0;
  for (const { size } of sets) pairs += (size * (size - 1)) / 2;
  if (pairs > MOST_PAIRS) {
    const rule = `The sets name ${pairs} pairs; at most ${MOST_PAIRS} can be worked with.`;
    reading.report(
      reading.placeOf(plan, "correlations"),
      "too-many-pairs",
      rule,
      "Name fewer tasks in a set.",
    );
    return;
  }

  const uses = new Map<string, number>();
  for (const set of sets) for (const name of set) uses.set(name, (uses.get(name) ?? 0) + 1);
  /** Numbers of the names in more than one set: only their pairs can repeat. */
  const numbers = new Map<string, number>();
  for (const [name, count] of uses) if (count > 1) numbers.set(name, numbers.size);
  const names = [...numbers.keys()];
  /** Pair to the set that named it. */
  const named = new Map<number, number>();

  for (const [index, correlation] of correlations.entries()) {
    const seen = new Set<string>();
    const common: number[] = [];
    let pairReported = false;
    let cursor = 0;
    for (const name of correlation.between ?? []) {
      const list = reading.placeOf(correlation, "between");
      cursor = find(list, cursor, name);
      const place = itemPlace(list, cursor++);
      if (seen.has(name)) {
        reading.report(place, "repeated-member", `${name} stands twice in this set.`, "Name it once.");
        continue;
      }
      seen.add(name);
      checkDraw(name, tasks, place, reading);
      const number = numbers.get(name);
      if (number === undefined) continue;
      for (const other of common) {
        const pair = Math.min(number, other) * numbers.size + Math.max(number, other);
        const earlier = named.get(pair);
        if (earlier === undefined) named.set(pair, index);
        else if (!pairReported) {
          pairReported = true;
          const partner = names[other] ?? "?";
          const rule = `The pair ${partner} and ${name} is in correlations[${earlier}] already.`;
          reading.report(place, "repeated-pair", rule, "Name each pair once.");
        }
      }
      common.push(number);
    }
  }
}

function checkDraw(
  name: string,
  tasks: ReadonlyMap<string, TaskDraft>,
  place: Place,
  reading: Reading,
): void {
  const ofCost = name.startsWith(COST_PREFIX);
  const id = ofCost ? name.slice(COST_PREFIX.length) : name;
  const task = tasks.get(id);
  if (task === undefined) return; // already reported as unknown
  if (ofCost) {
    if (task.cost !== undefined) return;
    reading.report(
      place,
      "no-draw",
      `\`${id}\` has no \`cost\`.`,
      "Give it one, or leave it out of the set.",
    );
  } else if (task.milestone === true || task.milestone === "start") {
    reading.report(
      place,
      "no-draw",
      `\`${id}\` is a milestone and has no duration.`,
      "Leave it out of the set.",
    );
  }
}

/** Index of the next item with this name; faulty items are not in the draft, so the two may differ. */
function find(list: Place, from: number, name: string): number {
  if (list.node.kind !== "list") return 0;
  const { items } = list.node;
  for (let index = from; index < items.length; index++) {
    const item = items[index];
    if (item?.kind === "scalar" && item.value === name) return index;
  }
  return from;
}

function itemPlace(list: Place, index: number): Place {
  const item = list.node.kind === "list" ? list.node.items[index] : undefined;
  return item === undefined ? list : { parent: list, key: index, keyAt: item.at, node: item };
}
