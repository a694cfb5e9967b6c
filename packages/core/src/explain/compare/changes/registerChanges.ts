import type { Impact, RegisterEntry } from "../../../plan/types.ts";
import { estimateChange, estimateWords, moneyUnit, timesUnit, timeUnit } from "../words/estimateWords.ts";
import { dateWords, listWords, percentWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { idsOf, impactKeys, impactTarget, type Pair } from "./pair.ts";
import { places } from "./places.ts";
import { responseChanges } from "./responseChanges.ts";

/** Every change of risks, assumptions and their adopted responses that can move a number. */
export function registerChanges(pair: Pair): Change[] {
  const { older, newer } = pair;
  return idsOf(older.entries, newer.entries).flatMap((id) => {
    const before = older.entries.get(id);
    const after = newer.entries.get(id);
    if (before !== undefined && after !== undefined) return changesOf(pair, before, after);
    const entry = after ?? before;
    return entry === undefined ? [] : [presence(pair, entry, after !== undefined)];
  });
}

function presence(pair: Pair, entry: RegisterEntry, added: boolean): Change {
  const noun = entry.kind === "risk" ? "risk" : "assumption";
  const chance = `${percentWords(entry.probability)}${entry.kind === "risk" ? "" : " to be wrong"}`;
  const impacts = entry.impacts.flatMap((impact) => impactWords(pair, impact));
  const does = impacts.length === 0 || impacts.length > 3 ? "" : `: ${impacts.join("; ")}`;
  return {
    places: [places.entry(entry.id)],
    kind: "risks",
    ids: [entry.id],
    subject: entry.name,
    text: added ? `new ${noun}, ${chance}${does}` : `${noun} taken out of the register (it was ${chance})`,
  };
}

function changesOf(pair: Pair, before: RegisterEntry, after: RegisterEntry): Change[] {
  const change = (place: string, text: string): Change => ({
    places: [place],
    kind: "risks",
    ids: [after.id],
    subject: after.name,
    text,
  });
  return [
    ...oddsWords(pair, before, after).map((text) => change(places.odds(after.id), text)),
    ...impactChanges(pair, before, after).map((text) => change(places.impacts(after.id), text)),
    ...responseChanges(pair, before, after),
  ];
}

function oddsWords(pair: Pair, before: RegisterEntry, after: RegisterEntry): string[] {
  const parts: string[] = [];
  if (before.status !== after.status) parts.push(statusWords(after));
  if (before.probability !== after.probability) {
    const what = after.kind === "risk" ? "chance" : "chance of being wrong";
    parts.push(`${what} from ${percentWords(before.probability)} to ${percentWords(after.probability)}`);
  }
  if (before.group !== after.group) {
    parts.push(
      after.group === undefined
        ? `no longer excludes the others of ${before.group}`
        : `now excludes the others of ${after.group}`,
    );
  }
  if (before.expires !== after.expires) {
    parts.push(after.expires === undefined ? "no longer expires" : `expires ${dateWords(after.expires)}`);
  }
  if (before.onlyIf !== after.onlyIf) {
    parts.push(
      after.onlyIf === undefined
        ? `no longer hangs on “${pair.nameOf(before.onlyIf ?? "")}”`
        : `now counts only if “${pair.nameOf(after.onlyIf)}” is adopted`,
    );
  }
  return parts;
}

function statusWords({ kind, status }: RegisterEntry): string {
  if (status === "open") return "open again";
  if (status === "closed") return "closed: it can no longer happen";
  return kind === "risk" ? "has happened" : "has proved wrong";
}

const parts = [
  { key: "delay", of: "delay of", unit: () => timeUnit() },
  { key: "factor", of: "duration of", unit: () => timesUnit },
  { key: "wait", of: "wait before", unit: () => timeUnit() },
  { key: "cost", of: "cost", unit: (currency: string) => moneyUnit(currency) },
] as const;

function touched(pair: Pair, { phase, tasks }: Impact): string {
  if (phase !== undefined) return `all of ${phase}`;
  return tasks.length > 3 ? `${tasks.length} tasks` : listWords(tasks.map(pair.nameOf));
}

/** "delay of Strip-out P10 8, likely 12, P90 25 working days", one for each part. */
function impactWords(pair: Pair, impact: Impact): string[] {
  return parts.flatMap(({ key, of, unit }) => {
    const estimate = impact[key];
    if (estimate === undefined) return [];
    const at = key === "cost" ? "" : ` ${touched(pair, impact)}`;
    return [`${of}${at} ${estimateWords(estimate, unit(pair.newer.plan.currency))}`];
  });
}

/** Impacts on the same tasks are compared part by part; others come and go. */
function impactChanges(pair: Pair, before: RegisterEntry, after: RegisterEntry): string[] {
  if (impactKeys(before.impacts).join() === impactKeys(after.impacts).join()) return [];
  const rest = [...before.impacts];
  const texts: string[] = [];
  const added: Impact[] = [];
  for (const impact of after.impacts) {
    const same = rest.findIndex((old) => impactKeys([old])[0] === impactKeys([impact])[0]);
    const at = same >= 0 ? same : rest.findIndex((old) => impactTarget(old) === impactTarget(impact));
    const [old] = at < 0 ? [] : rest.splice(at, 1);
    if (old === undefined) added.push(impact);
    else if (same < 0) texts.push(...partChanges(pair, old, impact));
  }
  // One impact on other tasks than before is one that moved, not one that went and one that came.
  for (const impact of added) {
    const parts = JSON.stringify([impact.delay, impact.factor, impact.wait, impact.cost]);
    const at = rest.findIndex((old) => JSON.stringify([old.delay, old.factor, old.wait, old.cost]) === parts);
    const [old] = at < 0 ? [] : rest.splice(at, 1);
    if (old === undefined) texts.push(...impactWords(pair, impact).map((text) => `now also ${text}`));
    else texts.push(`touches ${touched(pair, impact)}, no longer ${touched(pair, old)}`);
  }
  texts.push(...rest.flatMap((old) => impactWords(pair, old)).map((text) => `no longer ${text}`));
  return texts.length > 0 ? texts : ["impacts written in another way"];
}

function partChanges(pair: Pair, before: Impact, after: Impact): string[] {
  return parts.flatMap(({ key, of, unit }) => {
    const change = estimateChange(before[key], after[key], unit(pair.newer.plan.currency));
    if (change === "") return [];
    return [key === "cost" ? `cost ${change}` : `${of} ${touched(pair, after)} ${change}`];
  });
}
