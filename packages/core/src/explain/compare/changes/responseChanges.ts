import type { RegisterEntry, Response } from "../../../plan/types.ts";
import { probabilityAfter } from "../../../simulate/compileRegister.ts";
import { estimateChange, estimateWords, moneyUnit, sameEstimate } from "../words/estimateWords.ts";
import { listWords, percentWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import type { Pair } from "./pair.ts";
import { places } from "./places.ts";

/** Responses adopted, dropped, or changed while adopted. One that is not adopted moves nothing. */
export function responseChanges(pair: Pair, before: RegisterEntry, after: RegisterEntry): Change[] {
  const ids = [...new Set([...before.responses, ...after.responses].map(({ id }) => id))].sort();
  return ids.flatMap((id): Change[] => {
    const was = before.responses.find((response) => response.id === id && response.adopted);
    const is = after.responses.find((response) => response.id === id && response.adopted);
    const text = words(pair, { was, is, before, after });
    if (text === "") return [];
    const ids = [id, after.id];
    return [{ places: [places.response(after.id, id)], kind: "risks", ids, subject: after.name, text }];
  });
}

interface Both {
  was: Response | undefined;
  is: Response | undefined;
  before: RegisterEntry;
  after: RegisterEntry;
}

/** Entries that count from now on because a response is adopted. */
function hanging(pair: Pair, response: Response, own: RegisterEntry): string {
  const names = [...pair.newer.entries.values()]
    .filter(({ id, onlyIf }) => onlyIf === response.id && id !== own.id)
    .map(({ name }) => `“${name}”`)
    .sort();
  if (names.length === 0) return "";
  return `; from now on ${listWords(names)} ${names.length === 1 ? "counts" : "count"} too`;
}

function words(pair: Pair, { was, is, before, after }: Both): string {
  const { currency } = pair.newer.plan;
  const unit = moneyUnit(currency);
  // What one response does is told on top of those adopted in both plans.
  const inBoth = (response: Response, other: RegisterEntry) =>
    response.adopted && other.responses.some(({ id, adopted }) => adopted && id === response.id);
  const does = (entry: RegisterEntry, response: Response): string => {
    const without = entry.responses.filter((one) => inBoth(one, entry === after ? before : after));
    const own = entry.probability;
    const parts: string[] = [];
    if (response.probability !== undefined && response.probability !== own && entry.status === "open") {
      const from = percentWords(probabilityAfter(own, without));
      parts.push(`chance from ${from} to ${percentWords(probabilityAfter(own, [...without, response]))}`);
    }
    if (response.scale !== 1) parts.push(`${percentWords(response.scale)} of the impact remains`);
    return parts.length === 0 ? "" : `, ${parts.join(", ")}`;
  };
  if (is !== undefined && was === undefined) {
    const cost = is.cost === undefined ? "" : `, for ${estimateWords(is.cost, unit)}`;
    return `response “${is.action}” adopted${does(after, is)}${cost}${hanging(pair, is, after)}`;
  }
  if (was !== undefined && is === undefined) {
    const cost = was.cost === undefined ? "" : `, saving ${estimateWords(was.cost, unit)}`;
    const left = does(before, was) === "" ? "" : `; with it ${does(before, was).slice(2)}`;
    return `response “${was.action}” no longer adopted${cost}${left}`;
  }
  if (was === undefined || is === undefined) return "";
  const parts: string[] = [];
  if (!sameEstimate(was.cost, is.cost)) parts.push(`cost ${estimateChange(was.cost, is.cost, unit)}`);
  if (was.probability !== is.probability) {
    const chance = (response: Response) =>
      response.probability === undefined ? "the risk's own" : percentWords(response.probability);
    parts.push(`chance with it from ${chance(was)} to ${chance(is)}`);
  }
  if (was.scale !== is.scale) {
    parts.push(`impact that remains from ${percentWords(was.scale)} to ${percentWords(is.scale)}`);
  }
  return parts.length === 0 ? "" : `response “${is.action}”: ${parts.join(", ")}`;
}
