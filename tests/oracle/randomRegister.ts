import type {
  AssumptionDocument,
  ImpactDocument,
  PlanDocument,
  ResponseDocument,
  RiskDocument,
  TaskDocument,
} from "./document.ts";
import type { Dice } from "./randomValues.ts";

/** Risks and assumptions for these tasks; tasks and entries may come to hang on a response by `onlyIf`. */
export function randomRegister(dice: Dice, tasks: TaskDocument[], document: PlanDocument, onlyIf: boolean) {
  const entries = dice.times(0, 4, (k) => randomEntry(dice, `e-${k}`, tasks, document)).filter((e) => !!e);
  group(dice, entries);
  const responses = entries.flatMap((entry) => entry.responses).map((r) => r.id);
  if (responses.length > 0) {
    for (const entry of entries) {
      const others = responses.filter((id) => !entry.responses.some((r) => r.id === id));
      if (others.length > 0 && dice.chance(0.2)) entry.onlyIf = dice.pick(others);
    }
    if (onlyIf) for (const task of tasks) if (dice.chance(0.1)) task.onlyIf = dice.pick(responses);
  }
  const risks: RiskDocument[] = [];
  const assumptions: AssumptionDocument[] = [];
  for (const { probability, ...entry } of entries) {
    const { impacts, responses: own, ...rest } = entry;
    const common = {
      ...rest,
      impacts: dice.shorten(impacts),
      ...(own.length > 0 ? { responses: dice.shorten(own) } : {}),
    };
    if (dice.chance(0.65)) risks.push({ ...common, name: `Risk ${entry.id}`, probability });
    else assumptions.push({ ...common, statement: `Assumption ${entry.id}`, chanceWrong: probability });
  }
  return {
    ...(risks.length > 0 ? { risks: dice.shorten(dice.shuffle(risks)) } : {}),
    ...(assumptions.length > 0 ? { assumptions: dice.shorten(dice.shuffle(assumptions)) } : {}),
  };
}

interface Entry {
  id: string;
  probability: number;
  impacts: ImpactDocument[];
  responses: ResponseDocument[];
  group?: string;
  status?: "open" | "occurred" | "closed";
  expires?: string;
  onlyIf?: string;
}

function randomEntry(
  dice: Dice,
  id: string,
  tasks: TaskDocument[],
  document: PlanDocument,
): Entry | undefined {
  if (!dice.spend()) return undefined;
  const entry: Entry = {
    id,
    probability: dice.pick([0.1, 0.25, 0.4]),
    impacts: dice.times(1, 3, () => randomImpact(dice, tasks)),
    responses: dice.times(0, 2, (k): ResponseDocument => {
      const response: ResponseDocument = { id: `${id}-r-${k}`, action: "Act" };
      if (dice.chance(0.6)) response.adopted = dice.chance(0.7);
      if (dice.chance(0.5)) response.probability = dice.pick([0, 0.05, 0.1]);
      if (dice.chance(0.5)) response.scale = dice.pick([0, 0.4, 0.5, 1.2]);
      if (dice.chance(0.5)) response.cost = dice.estimate(0, 100);
      return response;
    }),
  };
  if (dice.chance(0.3)) entry.status = dice.pick(["open", "occurred", "closed"]);
  if (document.statusDate && dice.chance(0.2)) entry.expires = dice.date(document.start, 0, 20);
  return entry;
}

/** One impact on tasks or a phase; milestones can only be made to wait, unbroken tasks stay short. */
function randomImpact(dice: Dice, tasks: TaskDocument[]): ImpactDocument {
  const impact: ImpactDocument = {};
  const [first, ...others] = dice.shuffle(tasks).slice(0, dice.int(1, 3));
  const named = first === undefined ? [] : [first, ...others];
  const phase = first?.milestone ? undefined : first?.phase;
  const reached = phase === undefined ? named : tasks.filter((t) => t.phase === phase && !t.milestone);
  if (phase !== undefined && dice.chance(0.5)) impact.phase = phase;
  else impact.tasks = dice.shorten(named.map((t) => t.id));
  const hit = impact.phase === undefined ? named : reached;
  const lengthens = hit.every((t) => !t.milestone && t.unbroken === undefined);
  if (lengthens && dice.chance(0.5)) impact.delay = dice.estimate(-2, 5, true);
  if (lengthens && dice.chance(0.3)) impact.factor = dice.pick([0, 0.5, 1.5, 2, dice.whole(1, 2)]);
  if (dice.chance(0.3)) impact.wait = dice.estimate(0, 4, true);
  const parts = Object.keys(impact).length - 1;
  // A milestone may have no part but `wait`.
  const milestones = hit.some((t) => t.milestone);
  if (parts === 0 && milestones) impact.wait = dice.whole(0, 3);
  else if (!milestones && (parts === 0 || dice.chance(0.3))) impact.cost = dice.estimate(-100, 300);
  return impact;
}

/** Puts two or three entries into one group: probabilities stay small, responses only lower them, one occurs. */
function group(dice: Dice, entries: Entry[]): void {
  if (entries.length < 2 || !dice.chance(0.5)) return;
  let occurred = false;
  for (const entry of entries.slice(0, 3)) {
    entry.group = "either or";
    entry.probability = dice.pick([0.1, 0.2, 0.3]);
    if (entry.status === "occurred" && occurred) entry.status = "open";
    occurred ||= entry.status === "occurred";
  }
}
