import { SHAPES, shapeRules } from "../shapes.ts";
import type { Place } from "../source/place.ts";
import type { Bounds, Shape, TimeUnit } from "../types.ts";
import { listOf } from "./list.ts";
import { object } from "./object.ts";
import type { Reading } from "./reading.ts";
import { choice, number } from "./scalars.ts";
import { type Definitions, type JsonSchema, optional, required, type Type } from "./type.ts";

export const BOUNDS = ["extremes", "p10-p90", "p5-p95"] as const satisfies readonly Bounds[];
export const UNITS = ["days", "weeks"] as const satisfies readonly TimeUnit[];
const without = SHAPES.filter((shape) => !shapeRules[shape].takesLikely);
/** What is said of the key `likely`. */
export const LIKELY = `The most likely value; none for ${without.slice(0, -1).join(", ")} and ${without.at(-1)}.`;
/** What an estimate counts: only time has a unit. */
export type Measure = "time" | "money" | "plain";

/** An estimate as written, in whichever form. */
export interface EstimateDraft {
  value?: number | undefined;
  low?: number | undefined;
  likely?: number | undefined;
  high?: number | undefined;
  shape?: Shape | undefined;
  bounds?: Bounds | undefined;
  unit?: TimeUnit | undefined;
  outcomes?: { value?: number | undefined; chance?: number | undefined }[] | undefined;
}

function define(measure: Measure) {
  const value = number(measure === "money" ? "money as a plain number" : "a number", {
    money: measure === "money",
  });
  const shape = optional(choice(...SHAPES), "Shape of the distribution; `pert` unless said.", {
    fallback: "pert",
  });
  const bounds = optional(choice(...BOUNDS), "What low and high are: the extremes, or percentiles.", {
    fallback: "extremes",
  });
  const range = {
    low: required(value, "the low value.", ["min", "minimum", "optimistic", "best"]),
    likely: optional(value, LIKELY, {
      mistakenFor: ["mode", "most-likely", "mostLikely", "expected"],
    }),
    high: required(value, "the high value.", ["max", "maximum", "pessimistic", "worst"]),
    shape,
    bounds,
  };
  const outcome = object(`outcome${measure === "money" ? "-money" : ""}`, "an outcome", {
    value: required(value, "the value."),
    chance: required(number("a chance above 0", { min: 0, max: 1 }), "its chance.", ["probability", "p"]),
  });
  const outcomes = { outcomes: required(listOf(outcome, 1), "distinct values with chances that sum to 1.") };
  const unit = {
    unit: optional(choice(...UNITS), "`weeks` are of the calendar the time is counted on.", {
      fallback: "days",
    }),
  };
  const timed = measure === "time";
  const name = measure === "plain" ? "estimate" : `${measure}-estimate`;
  const rangeType: Type<EstimateDraft> = object(
    `${name}-range`,
    "an estimate",
    timed ? { ...range, ...unit } : range,
  );
  const outcomesType: Type<EstimateDraft> = object(
    `${name}-outcomes`,
    "an estimate by outcomes",
    timed ? { ...outcomes, ...unit } : outcomes,
  );
  return { value, name, rangeType, outcomesType };
}

const PARTS = { time: define("time"), money: define("money"), plain: define("plain") };

/** `7`, `[5, 7, 14]`, `{ low, likely, high, ... }` or `{ outcomes: [...] }`. */
export function estimate(measure: Measure): Type<EstimateDraft> {
  const { value, name, rangeType, outcomesType } = PARTS[measure];
  return {
    what: "an estimate: one number, or [low, likely, high]",
    read(place, reading) {
      const draft = read(place, reading);
      if (draft !== undefined) reading.estimates.push({ draft, measure, place });
      return draft;
    },
    schema(definitions: Definitions): JsonSchema {
      if (!definitions.has(name)) {
        const three = { type: "array", items: value.schema(definitions), minItems: 3, maxItems: 3 };
        definitions.set(name, {
          description:
            "A number (certain), [low, likely, high], an object of those, or outcomes with chances.",
          anyOf: [
            value.schema(definitions),
            three,
            rangeType.schema(definitions),
            outcomesType.schema(definitions),
          ],
        });
      }
      return { $ref: `#/$defs/${name}` };
    },
  };

  function read(place: Place, reading: Reading): EstimateDraft | undefined {
    const { node } = place;
    if (node.kind === "map") {
      const draft = (node.entries.has("outcomes") ? outcomesType : rangeType).read(place, reading);
      return draft;
    }
    if (node.kind === "list") return three(place, reading);
    const single = value.read(place, reading);
    return single === undefined ? undefined : reading.settle({ value: single }, place);
  }

  function three(place: Place, reading: Reading): EstimateDraft | undefined {
    const { node } = place;
    if (node.kind !== "list") return undefined;
    const [low, likely, high] = node.items.map((item, index) =>
      value.read({ parent: place, key: index, keyAt: item.at, node: item }, reading),
    );
    if (node.items.length === 3) return reading.settle({ low, likely, high }, place);
    const code = node.items.length < 3 ? "too-few" : "too-many";
    const pair =
      node.items.length === 2
        ? "Write three numbers, or { low: ..., high: ..., shape: uniform }."
        : "Write [low, likely, high], or one number where it is certain.";
    reading.report(place, code, "An estimate in brackets is three numbers: low, likely, high.", pair);
    return undefined;
  }
}
