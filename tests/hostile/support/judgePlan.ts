import {
  forecast,
  type Plan,
  type PlanReading,
  planFromData,
  readPlan,
  removeFromPlan,
  setInPlan,
} from "@leeway/core";
import { evaluateAsWritten } from "../../oracle/evaluate.ts";
import { planOf } from "../../oracle/planOf.ts";
import { faultsOf } from "./judgeProblems.ts";
import { otherReading } from "./otherReader.ts";

const bare = ({ sha256: _, approvalSha256: __, note: ___, ...plan }: Plan) => plan;
const same = (a: unknown, b: unknown) => canonical(a) === canonical(b);
const canonical = (value: unknown) =>
  JSON.stringify(value, (_key, each: unknown) =>
    each instanceof Map ? [...each] : typeof each === "number" ? `#${Object.is(each, -0) ? 0 : each}` : each,
  );

/** What is wrong with a reading as such: a plan and errors at once, neither of them, or problems without words. */
export function faultsOfReading({ plan, problems }: PlanReading, read = ""): string[] {
  const refused = problems.some(({ severity }) => severity === "error");
  return [
    ...faultsOf(problems, read),
    ...(refused === (plan === undefined) ? [] : [`a plan ${refused ? "beside" : "without"} errors`]),
  ];
}

/**
 * Whether a plan says what `data`, its text in the words of another reader, says: the same plan read from it, and every
 * number where somebody else's reading of the format (the oracle's) has it.
 */
export function faultsOfPlan(plan: Plan, data: unknown): string[] {
  const again = planFromData(data);
  if (again.plan === undefined) return [`refused as data: ${JSON.stringify(again.problems[0])}`];
  if (!same(again.plan, plan)) return ["another plan read as data"];
  if (plan.purpose.problem !== undefined) return []; // has keys of the format that the oracle does not read
  // A plan that was accepted is a document of the form the oracle reads.
  const theirs = planOf(data as Parameters<typeof planOf>[0]);
  return (["tasks", "people", "risks", "assumptions", "overheads", "calendars"] as const).flatMap((key) =>
    numbersThatDiffer(theirs[key], plan[key], key),
  );
}

function numbersThatDiffer(theirs: unknown, ours: unknown, path: string): string[] {
  // A number where a text belongs is that text.
  if (typeof theirs === "number")
    return theirs === ours || (typeof ours === "string" && String(theirs) === ours)
      ? []
      : [`${path} is ${theirs}, not ${String(ours)}`];
  if (theirs instanceof Map && ours instanceof Map)
    return [...theirs].flatMap(([key, value]) =>
      numbersThatDiffer(value, ours.get(key), `${path}.${String(key)}`),
    );
  if (typeof theirs !== "object" || theirs === null) return [];
  return Object.entries(theirs).flatMap(([key, value]) =>
    numbersThatDiffer(
      value,
      typeof ours === "object" && ours !== null ? Reflect.get(ours, key) : undefined,
      `${path}.${key}`,
    ),
  );
}

/** Whether the forecast of a plan is one: finite figures in order, and as written what the oracle works out. */
export function faultsOfForecast(plan: Plan): string[] {
  const { forecast: found, problems } = forecast(plan, { iterations: 40 });
  const faults = faultsOf(problems);
  if (found === undefined) {
    return problems.some(({ severity }) => severity === "error")
      ? faults
      : [...faults, "neither forecast nor problem"];
  }
  const odd = JSON.stringify(found, (_key, each: unknown) =>
    typeof each === "number" && !Number.isFinite(each) ? "not finite!" : each,
  );
  if (odd.includes("not finite!"))
    faults.push(`a figure is not finite: ${/.{60}"not finite!"/.exec(odd)?.[0]}`);
  for (const [name, values] of [
    ["finish", found.finish.percentiles.map(({ day }) => day)],
    ["cost", found.cost.percentiles.map(({ value }) => value)],
  ] as const) {
    if (values.some((each, index) => each < (values[index - 1] ?? each)))
      faults.push(`${name} percentiles fall`);
  }
  const theirs = writtenBy(plan);
  if (theirs === undefined) return faults;
  const near = (ours: number, other: number) => Math.abs(ours - other) <= 1e-6 * Math.max(1, Math.abs(other));
  if (!near(found.asWritten.day, theirs.finish)) {
    faults.push(`finishes as written on day ${found.asWritten.day}, by the oracle on ${theirs.finish}`);
  }
  if (!near(found.asWritten.cost, theirs.cost)) {
    faults.push(`costs ${found.asWritten.cost} as written, by the oracle ${theirs.cost}`);
  }
  return faults;
}

/** The oracle looks at one day after the other; where that is past the calendar it says so by throwing. */
function writtenBy(plan: Plan): { finish: number; cost: number } | undefined {
  if (plan.purpose.problem !== undefined) return undefined;
  try {
    return evaluateAsWritten(plan);
  } catch {
    return undefined;
  }
}

/** Reading, writing and reading again: a note put in and taken out leaves the plan it was. */
export function faultsOfEditing(text: string, plan: Plan): string[] {
  const put = setInPlan(text, ["note"], "put in");
  // A text whose lines end in carriage returns alone is read, but changed by hand.
  if (/\r(?!\n)/.test(text) && put.problems[0]?.code === "cannot-edit") return [];
  if (put.problems.length > 0) return [`no note could be put in: ${JSON.stringify(put.problems[0])}`];
  const noted = readPlan(put.text).plan;
  if (noted?.note !== "put in" || !same(bare(noted), bare(plan)))
    return [`another plan with a note: ${put.text.slice(0, 200)}`];
  if (plan.note !== undefined) return [];
  const out = removeFromPlan(put.text, ["note"]);
  if (out.problems.length > 0) return [`the note could not be taken out: ${JSON.stringify(out.problems[0])}`];
  const after = readPlan(out.text).plan;
  return after !== undefined && same(after, plan)
    ? []
    : ["another plan after a note was put in and taken out"];
}

/** What was asked how often. */
export interface Counts {
  accepted: number;
  forecast: number;
  /** Accepted, and refused by the other reader. */
  alone: number;
}

/** All that is wrong with how a text was taken. The costly questions are put to some of the plans, picked by their text. */
export function faultsOfText(text: string, counts: Counts): string[] {
  const reading = readPlan(text);
  const faults = faultsOfReading(reading, text);
  const { plan } = reading;
  if (plan === undefined || faults.length > 0) return faults;
  counts.accepted++;
  const other = otherReading(text);
  if (other === undefined) counts.alone++;
  else faults.push(...faultsOfPlan(plan, other.data));
  const lot = text.length % 12;
  if (lot === 0) faults.push(...faultsOfEditing(text, plan));
  if (lot % 6 !== 1) return faults;
  counts.forecast++;
  return [...faults, ...faultsOfForecast(plan)];
}
