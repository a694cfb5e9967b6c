import type { HistoryEntry } from "./types.ts";

type Rule = (value: unknown) => boolean;

const text: Rule = (value) => typeof value === "string";
const number: Rule = (value) => typeof value === "number" && Number.isFinite(value);
const date: Rule = (value) => typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value);
const maybe =
  (rule: Rule): Rule =>
  (value) =>
    value === undefined || rule(value);
const list =
  (rule: Rule): Rule =>
  (value) =>
    Array.isArray(value) && value.every(rule);

function object(keys: Record<string, Rule>): Rule {
  return (value) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
    const found = new Map(Object.entries(value));
    return Object.entries(keys).every(([key, rule]) => rule(found.get(key)));
  };
}

const finish = { date, workingDays: number };
const part = maybe(object({ left: number, exposure: number }));

const line = object({
  history: (value) => value === 1,
  date,
  statusDate: maybe(date),
  start: date,
  sha256: text,
  approvalSha256: text,
  seed: text,
  iterations: number,
  design: (value) => value === "latin-hypercube" || value === "plain",
  version: text,
  confidence: number,
  currency: text,
  asWritten: object({ ...finish, cost: number }),
  finish: object({
    p10: object(finish),
    p50: object(finish),
    p80: object(finish),
    p90: object(finish),
    committed: object({ ...finish, lowDate: date, highDate: date }),
  }),
  cost: object({
    p10: number,
    p50: number,
    p80: number,
    p90: number,
    committed: number,
    low: number,
    high: number,
  }),
  asked: object({ finishBy: maybe(date), budget: maybe(number) }),
  chance: object({ finishBy: maybe(number), budget: maybe(number), both: maybe(number) }),
  left: maybe(object({ money: part, days: part })),
  approvals: list(object({ who: text, decision: text, date: maybe(date) })),
  change: object({ what: text, who: maybe(text), why: maybe(text) }),
  previous: (value) => value === null || typeof value === "string",
  hash: text,
});

/** Whether a JSON value is a line of a history; keys it does not know are let pass, and count in the hash. */
export function isEntry(value: unknown): value is HistoryEntry {
  return line(value);
}
