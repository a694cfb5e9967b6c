import type { Overhead } from "../../../plan/types.ts";
import { estimateChange, estimateWords, moneyUnit } from "../words/estimateWords.ts";
import { countWords, dateWords, listWords, numberWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { idsOf, type Pair } from "./pair.ts";
import { pairsOf } from "./pairsOf.ts";
import { places } from "./places.ts";

/** Changes of the plan as a whole: status date, limited people, whose finish is promised, overheads, correlations. */
export function planChanges(pair: Pair): Change[] {
  const older = pair.older.plan;
  const newer = pair.newer.plan;
  const list: Change[] = [];
  if (older.statusDate !== newer.statusDate) {
    const text =
      newer.statusDate === undefined
        ? "no longer recorded"
        : `recorded up to ${dateWords(newer.statusDate)}${
            older.statusDate === undefined ? "" : `, before up to ${dateWords(older.statusDate)}`
          }`;
    list.push({
      places: [places.statusDate],
      kind: "actuals",
      ids: [],
      subject: "Progress",
      text,
      clause: true,
    });
  }
  if (older.respectCapacity !== newer.respectCapacity) {
    const text = newer.respectCapacity
      ? "now kept within their capacity"
      : "no longer kept within their capacity";
    list.push({
      places: [places.capacityRule],
      kind: "people",
      ids: [],
      subject: "People",
      text,
      clause: true,
    });
  }
  if (older.commitment.finishOf !== newer.commitment.finishOf) {
    const whose = (id: string | undefined) => (id === undefined ? "the whole plan" : pair.nameOf(id));
    const text = `of ${whose(newer.commitment.finishOf)}, no longer of ${whose(older.commitment.finishOf)}`;
    const ids = newer.commitment.finishOf === undefined ? [] : [newer.commitment.finishOf];
    list.push({ places: [places.finishOf], kind: "other", ids, subject: "The finish promised", text });
  }
  return [...list, ...overheadChanges(pair), ...correlationChanges(pair)];
}

function overheadChanges(pair: Pair): Change[] {
  const unit = moneyUnit(pair.newer.plan.currency, "a day");
  return idsOf(pair.older.overheads, pair.newer.overheads).flatMap((id): Change[] => {
    const before = pair.older.overheads.get(id);
    const after = pair.newer.overheads.get(id);
    const change = (place: string, { name }: Overhead, text: string): Change => ({
      places: [place],
      kind: "money",
      ids: [id],
      subject: name,
      text,
    });
    if (before === undefined || after === undefined) {
      const one = after ?? before;
      if (one === undefined) return [];
      const cost = estimateWords(one.perDay, unit);
      return [
        change(
          places.overhead(id),
          one,
          after === undefined ? `no longer charged (it was ${cost})` : `new, ${cost}`,
        ),
      ];
    }
    const parts: string[] = [];
    const money = estimateChange(before.perDay, after.perDay, unit);
    if (money !== "") parts.push(money);
    const end = (key: "from" | "to", what: string, otherwise: string) => {
      if (before[key] === after[key]) return;
      const name = after[key] === undefined ? otherwise : pair.nameOf(after[key]);
      parts.push(`now runs ${what} ${name}`);
    };
    end("from", "from the start of", "the plan");
    end("to", "to the finish of", "the plan");
    return parts.length === 0 ? [] : [change(places.overheadTerms(id), after, parts.join("; "))];
  });
}

function correlationChanges(pair: Pair): Change[] {
  const was = pairsOf(pair.older.plan);
  const is = pairsOf(pair.newer.plan);
  const common = (key: string) =>
    key.split(" ").every((name) => {
      const id = name.startsWith("cost:") ? name.slice(5) : name;
      return pair.older.tasks.has(id) && pair.newer.tasks.has(id);
    });
  const keys = [...new Set([...was.keys(), ...is.keys()])].filter(common).sort();
  const sets = new Map<string, Set<string>>();
  for (const key of keys) {
    if (was.get(key) === is.get(key)) continue;
    const change = `from ${numberWords(was.get(key) ?? 0)} to ${numberWords(is.get(key) ?? 0)}`;
    const members = sets.get(change) ?? new Set();
    sets.set(change, members);
    for (const name of key.split(" ")) members.add(name.startsWith("cost:") ? name.slice(5) : name);
  }
  return [...sets].map(([change, members]): Change => {
    const ids = [...members].sort();
    const among = ids.length > 4 ? countWords(ids.length, "task") : listWords(ids.map(pair.nameOf));
    return {
      places: [places.correlations],
      kind: "estimates",
      ids,
      subject: "What moves together",
      text: `correlation of ${among} ${change}`,
    };
  });
}
