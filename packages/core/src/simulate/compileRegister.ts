import type { Estimate, Impact, Plan, RegisterEntry, Response } from "../plan/types.ts";
import type { Calendars } from "./compileCalendars.ts";
import type { ModelEntry, ModelImpact, TaskImpact } from "./model.ts";
import type { SlotList } from "./slots.ts";

/** The register by index: entries in id order, impacts on each task, responses paid for. */
export interface CompiledRegister {
  entries: ModelEntry[];
  groups: { name: string }[];
  /** By task index. */
  impactsOn: TaskImpact[][];
}

/**
 * Status precedence (plan format, "The register"): occurred and closed are facts; then `expires` before the
 * status date; then `onlyIf` of a response not adopted; then another of the group that has occurred; then the
 * probability after the adopted responses.
 */
export function compileRegister(
  plan: Plan,
  taskIndex: ReadonlyMap<string, number>,
  drawIds: ReadonlyMap<string, string>,
  calendars: Calendars,
  list: SlotList,
): CompiledRegister {
  const all: RegisterEntry[] = [...plan.risks, ...plan.assumptions].sort((a, b) => (a.id < b.id ? -1 : 1));
  const adopted = new Set(all.flatMap((entry) => entry.responses.filter((r) => r.adopted).map((r) => r.id)));
  const groupNames = [
    ...new Set(all.map((entry) => entry.group).filter((name) => name !== undefined)),
  ].sort();
  const occurredIn = new Map<string, string>();
  for (const entry of all) {
    if (entry.group !== undefined && entry.status === "occurred") occurredIn.set(entry.group, entry.id);
  }
  const slotStart = slotStarts(all);
  const impactsOn: TaskImpact[][] = plan.tasks.map(() => []);
  const entries = all.map((entry, e): ModelEntry => {
    const from = slotStart.get(entry) ?? 0;
    const responses = entry.responses
      .filter((response) => response.adopted)
      .sort((a, b) => compare(a.id, b.id));
    const scale = responses.reduce((product, response) => product * response.scale, 1);
    const width = probabilityAfter(entry.probability, responses);
    const fact = factOf(entry, plan.statusDate, adopted, occurredIn);
    const impacts = compileImpacts(entry, taskIndex, drawIds, list);
    impacts.forEach((impact, i) => {
      for (const task of impact.compiled.tasks) {
        const week = calendars.weekLength((plan.tasks[task] as Plan["tasks"][number]).calendar);
        (impactsOn[task] as TaskImpact[]).push({
          entry: e,
          impact: i,
          delayScale: scale * unitScale(impact.source.delay, week),
          waitScale: scale * unitScale(impact.source.wait, week),
        });
      }
    });
    return {
      id: entry.id,
      name: entry.name,
      kind: entry.kind,
      item: entry.was ?? entry.id,
      group: entry.group === undefined ? -1 : groupNames.indexOf(entry.group),
      lo: from,
      hi: from + width,
      fact,
      scale,
      impacts: impacts.map((impact) => impact.compiled),
    };
  });
  return { entries, groups: groupNames.map((name) => ({ name })), impactsOn };
}

/**
 * Where each entry's slot begins in its group's draw: after the own probabilities ahead of it, in the order of the
 * ids the draws are addressed by, so that renaming (`was`) disturbs none.
 */
function slotStarts(entries: readonly RegisterEntry[]): Map<RegisterEntry, number> {
  const starts = new Map<RegisterEntry, number>();
  const ahead = new Map<string, number>();
  for (const entry of [...entries].sort((a, b) => compare(a.was ?? a.id, b.was ?? b.id))) {
    if (entry.group === undefined) continue;
    const from = ahead.get(entry.group) ?? 0;
    starts.set(entry, from);
    ahead.set(entry.group, from + entry.probability);
  }
  return starts;
}

/** The entry's own times each response's (probability / the entry's own), at most 1; 0 stays 0. */
export function probabilityAfter(own: number, responses: readonly Response[]): number {
  if (own === 0) return 0;
  let product = own;
  for (const response of responses) {
    if (response.probability === undefined) continue;
    product *= response.probability / own;
  }
  return Math.min(1, product);
}

function factOf(
  entry: RegisterEntry,
  statusDate: string | undefined,
  adopted: ReadonlySet<string>,
  occurredIn: ReadonlyMap<string, string>,
): 0 | 1 | undefined {
  if (entry.status === "occurred") return 1;
  if (entry.status === "closed") return 0;
  if (entry.expires !== undefined && statusDate !== undefined && entry.expires < statusDate) return 0;
  if (entry.onlyIf !== undefined && !adopted.has(entry.onlyIf)) return 0;
  if (entry.group !== undefined && occurredIn.has(entry.group)) return 0;
  return undefined;
}

interface SourcedImpact {
  source: Impact;
  compiled: ModelImpact;
}

/**
 * Impacts are addressed by what they touch, not by their place in the list, so that reordering or adding one
 * disturbs no other draw. Two impacts on the very same tasks are told apart by their content.
 */
function compileImpacts(
  entry: RegisterEntry,
  taskIndex: ReadonlyMap<string, number>,
  drawIds: ReadonlyMap<string, string>,
  list: SlotList,
): SourcedImpact[] {
  const item = entry.was ?? entry.id;
  const keyed = entry.impacts.map((source, index) => ({
    source,
    index,
    target:
      source.phase !== undefined
        ? `phase=${source.phase}`
        : source.tasks
            .map((id) => drawIds.get(id) ?? id)
            .sort()
            .join(","),
    content: JSON.stringify([source.delay, source.factor, source.wait, source.cost]),
  }));
  keyed.sort((a, b) => compare(a.target, b.target) || compare(a.content, b.content));
  return keyed.map(({ source, index, target }, k) => {
    const twin = keyed.slice(0, k).filter((other) => other.target === target).length;
    const part = (estimate: Estimate | undefined, name: "delay" | "factor" | "wait" | "cost") =>
      estimate === undefined
        ? undefined
        : list.amount(estimate, {
            key: `${entry.id}:${index}:${name}`,
            item,
            purpose: `${name}@${target}${twin === 0 ? "" : `#${twin}`}`,
            cut: name === "wait" || name === "factor",
          });
    const tasks = source.tasks
      .map((id) => taskIndex.get(id))
      .filter((index) => index !== undefined)
      .sort((a, b) => a - b);
    return {
      source,
      compiled: {
        delay: part(source.delay, "delay"),
        factor: part(source.factor, "factor"),
        wait: part(source.wait, "wait"),
        cost: part(source.cost, "cost"),
        tasks: [...new Set(tasks)],
      },
    };
  });
}

/** Working days per written unit, on a calendar with `week` working days. */
export function unitScale(estimate: Estimate | undefined, week: number): number {
  return estimate !== undefined && estimate.unit === "weeks" ? week : 1;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
