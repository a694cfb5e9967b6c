import type { AssumptionDraft, ImpactDraft, PlanDraft, RiskDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { TOLERANCE } from "./tolerance.ts";

interface Member {
  entry: RiskDraft | AssumptionDraft;
  own: number | undefined;
  ownKey: "probability" | "chanceWrong";
}

/** Impacts say what they touch and do; groups exclude each other. */
export function checkRegister(plan: PlanDraft, reading: Reading): void {
  const milestones = new Set<string>();
  /** Phases with something in them that can be delayed. */
  const phases = new Set<string>();
  for (const { id, milestone, phase } of plan.tasks ?? []) {
    if (milestone !== true && milestone !== "start") phases.add(phase ?? "");
    else if (id !== undefined) milestones.add(id);
  }
  const members: Member[] = [
    ...(plan.risks ?? []).map((entry): Member => ({ entry, own: entry.probability, ownKey: "probability" })),
    ...(plan.assumptions ?? []).map(
      (entry): Member => ({ entry, own: entry.chanceWrong, ownKey: "chanceWrong" }),
    ),
  ];
  const groups = new Map<string, Member[]>();
  for (const member of members) {
    for (const impact of member.entry.impacts ?? []) checkImpact(impact, milestones, phases, reading);
    const { group } = member.entry;
    if (group === undefined) continue;
    const list = groups.get(group);
    if (list === undefined) groups.set(group, [member]);
    else list.push(member);
  }
  for (const [name, list] of groups) checkGroup(name, list, reading);
}

const PARTS = ["delay", "factor", "wait", "cost"] as const;

function checkImpact(
  impact: ImpactDraft,
  milestones: ReadonlySet<string>,
  phases: ReadonlySet<string>,
  reading: Reading,
): void {
  const place = reading.placeOf(impact);
  const written = (key: string) => place.node.kind === "map" && place.node.entries.has(key);
  if (written("tasks") && written("phase")) {
    const rule = "An impact touches `tasks` or a `phase`, not both.";
    reading.report(
      reading.placeOf(impact, "phase"),
      "impact-target",
      rule,
      "Keep one, or write two impacts.",
    );
  }
  // Money alone needs no task: it is added once, wherever it falls due.
  if (!written("tasks") && !written("phase") && PARTS.some((part) => part !== "cost" && written(part))) {
    const rule = "A delay, factor or wait says what it touches.";
    reading.report(place, "impact-target", rule, "Add `tasks`, or `phase`.", { received: "" });
  }
  if (!PARTS.some(written)) {
    const remedy = "Add `delay`, `factor`, `wait` or `cost`.";
    reading.report(place, "impact-empty", "An impact says what it does.", remedy, { received: "" });
  }
  if (impact.phase !== undefined && !phases.has(impact.phase) && reading.labels.phase.has(impact.phase)) {
    const rule = "This phase has no tasks but milestones, so nothing would happen.";
    const at = reading.placeOf(impact, "phase");
    reading.report(at, "impact-nothing", rule, "Name the tasks it touches.", { severity: "warning" });
  }
  const named = new Set<string>();
  for (const task of impact.tasks ?? []) {
    if (named.has(task)) {
      const rule = `${task} is named twice in one impact.`;
      reading.report(reading.placeOf(impact, "tasks"), "repeated-task", rule, "Name it once.");
    }
    named.add(task);
    if (!milestones.has(task)) continue;
    for (const part of PARTS) {
      if (part === "wait" || impact[part] === undefined) continue;
      const rule = `\`${task}\` is a milestone, which can only \`wait\`.`;
      reading.report(
        reading.placeOf(impact, part),
        "impact-on-milestone",
        rule,
        "Write `wait`, or name a task.",
      );
    }
  }
}

function checkGroup(name: string, members: readonly Member[], reading: Reading): void {
  let sum = 0;
  for (const { own } of members) sum += own ?? 0;
  const last = members[members.length - 1];
  if (sum > 1 + TOLERANCE && last !== undefined) {
    const total = Number(sum.toPrecision(12));
    const rule = `The chances in group ${name} sum to ${total}; what excludes each other sums to at most 1.`;
    reading.report(
      reading.placeOf(last.entry, last.ownKey),
      "group-sum",
      rule,
      "Lower them, or take one out of the group.",
    );
  }
  let occurred: string | undefined;
  for (const { entry, own } of members) {
    if (entry.status === "occurred") {
      if (occurred !== undefined) {
        const rule = `\`${occurred}\` of group ${name} has occurred too; they exclude each other.`;
        const remedy = "Take one out of the group, or correct its status.";
        reading.report(reading.placeOf(entry, "status"), "group-occurred", rule, remedy);
      }
      occurred ??= entry.id ?? "?";
    }
    checkSlot(name, entry, own, reading);
  }
}

/** After its adopted responses an entry of a group may not be likelier than before. */
function checkSlot(name: string, entry: Member["entry"], own: number | undefined, reading: Reading): void {
  if (own === undefined || own === 0) return;
  let after = own;
  let raising: object | undefined;
  for (const response of entry.responses ?? []) {
    if (response.adopted !== true || response.probability === undefined) continue;
    after *= response.probability / own;
    if (response.probability > own) raising = response;
  }
  if (raising === undefined || after <= own + TOLERANCE) return;
  const rule = `In group ${name} an adopted response may not raise the chance; it would go from ${own} to ${Number(after.toPrecision(12))}.`;
  const remedy = `Write at most ${own}, or take it out of the group.`;
  reading.report(reading.placeOf(raising, "probability"), "group-raised", rule, remedy);
}
