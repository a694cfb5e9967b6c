import type { Assumption, Estimate, Impact, Plan, RegisterEntry, Risk } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/index.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import { entriesOf, type PlacedEntry } from "../network/entries.ts";
import { sharedWords } from "../network/sharedWords.ts";
import { twiceCounted } from "../network/twiceCounted.ts";

/** Owners, dates, chances, effects, causes counted twice. */
export const checkRegister: Check = (context) => {
  const { plan } = context;
  if (plan.risks.length + plan.assumptions.length === 0) {
    const says = "The plan has no risks and no assumptions.";
    return [{ code: "register-empty", path: "", ids: [], says }];
  }
  return [
    ...entriesOf(plan).flatMap((each) => [
      ...entryFound(each),
      ...effectFound(context, each),
      ...dueFound(context, each),
    ]),
    ...twiceFound(plan),
    ...threatsFound(plan.risks),
    ...repairFound(context),
  ];
};

function twiceFound(plan: Plan): Found[] {
  const paths = new Map(entriesOf(plan).map(({ entry, path }) => [entry.id, path]));
  return twiceCounted(plan).map(({ entry, task, part, says }) => ({
    code: part === "remaining" ? "occurred-in-remaining" : "occurred-in-spent",
    path: paths.get(entry.id) ?? "",
    ids: [entry.id, task.id],
    says,
  }));
}

function entryFound({ entry, path }: PlacedEntry): Found[] {
  if (entry.status !== "open") return [];
  const at = { path, ids: [entry.id] };
  const chance = entry.probability;
  const certain = (chance === 0 || chance === 1) && entry.onlyIf === undefined && entry.note === undefined;
  return [
    ...(entry.owner === undefined
      ? [{ ...at, code: "entry-without-owner" as const, says: `Nobody owns "${entry.name}".` }]
      : []),
    ...(certain
      ? [
          {
            ...at,
            code: "certain-entry" as const,
            says: `"${entry.name}" is open with a chance of ${chance}.`,
          },
        ]
      : []),
  ];
}

function effectFound({ plan }: CheckContext, { entry, path }: PlacedEntry): Found[] {
  if (entry.status !== "open" || entry.probability === 0) return [];
  const at = { path, ids: [entry.id] };
  const open = new Map(plan.tasks.map((task) => [task.id, task.finished === undefined]));
  const touches = entry.impacts.some(
    (impact) => impact.cost !== undefined || impact.tasks.some((id) => open.get(id) === true),
  );
  if (!touches) {
    if (entry.note !== undefined) return [];
    const says =
      entry.impacts.length === 0
        ? `"${entry.name}" has no impact.`
        : `"${entry.name}" touches finished tasks only, or none.`;
    return [{ ...at, code: "impact-nowhere", says }];
  }
  const signpost = entry.kind === "assumption" && (entry as Assumption).signpost === undefined;
  const named = entry.impacts.flatMap((impact) => impact.tasks);
  const outlived =
    entry.expires === undefined && named.length > 0 && named.every((id) => open.get(id) === false);
  return [
    ...(outlived
      ? [
          {
            ...at,
            code: "entry-outlived" as const,
            says: `All that "${entry.name}" touches is finished, and it is still open with no day after which it cannot happen.`,
          },
        ]
      : []),
    ...(signpost
      ? [
          {
            ...at,
            code: "signpost-missing" as const,
            says: `Nothing would show in time that "${entry.name}" fails.`,
          },
        ]
      : []),
    ...causeTwice(plan, { entry, path }),
  ];
}

/** The cause of a correlation, or the name of a task, in the words of an event that hits the same task. */
function causeTwice(plan: Plan, { entry, path }: PlacedEntry): Found[] {
  const hit = new Set(entry.impacts.flatMap(({ tasks }) => tasks));
  const said = [entry.name, entry.cause ?? ""];
  const found: Found[] = [];
  for (const { between, cause } of plan.correlations) {
    const both = between.filter((name) => hit.has(name.replace(/^cost:/, "")));
    if (cause === undefined || both.length === 0 || !said.some((text) => sharedWords(text, cause))) continue;
    const says = `"${entry.name}" is an event, and "${cause}" is already in the ranges of what it hits.`;
    found.push({
      code: "cause-twice",
      path,
      ids: [entry.id, ...both.map((id) => id.replace(/^cost:/, ""))],
      says,
    });
  }
  for (const task of plan.tasks) {
    if (
      !hit.has(task.id) ||
      !said.some((text) => text !== "" && text.toLowerCase() === task.name.toLowerCase())
    )
      continue;
    const says = `"${entry.name}" is an event, and a task of the same name is planned for it.`;
    found.push({ code: "cause-twice", path, ids: [entry.id, task.id], says });
  }
  return found;
}

function dueFound({ now }: CheckContext, { entry, path }: PlacedEntry): Found[] {
  if (entry.status !== "open" || now === undefined) return [];
  const { reviewBy } = entry as Assumption; // risks have none
  return [
    ...(entry.expires !== undefined && entry.expires < now
      ? [
          {
            code: "entry-expired" as const,
            path: `${path}.expires`,
            ids: [entry.id],
            says: `"${entry.name}" could happen until ${entry.expires} and is still open.`,
          },
        ]
      : []),
    ...(reviewBy !== undefined && reviewBy < now
      ? [
          {
            code: "review-overdue" as const,
            path: `${path}.reviewBy`,
            ids: [entry.id],
            says: `"${entry.name}" was to be looked at by ${reviewBy}.`,
          },
        ]
      : []),
  ];
}

function threatsFound(risks: readonly Risk[]): Found[] {
  const open = risks.filter(({ status }) => status === "open");
  if (open.length < 5 || open.some(isOpportunity)) return [];
  return [
    { code: "only-threats", path: "risks", ids: [], says: `All ${open.length} open risks are threats.` },
  ];
}

/** Whether any part of it takes days or money away. */
export function isOpportunity({ impacts }: Pick<RegisterEntry, "impacts">): boolean {
  const below = (estimate: Estimate | undefined, limit: number) =>
    estimate !== undefined && asWrittenValue(estimate) < limit;
  return impacts.some(
    ({ delay, factor, cost }: Impact) => below(delay, 0) || below(factor, 1) || below(cost, 0),
  );
}

function repairFound({ written }: CheckContext): Found[] {
  return (written?.model.warnings ?? []).map((says) => ({
    code: "correlations-repaired" as const,
    path: "correlations",
    ids: [],
    says: says.replace(/ Lower the coefficients.*$/, ""),
  }));
}
