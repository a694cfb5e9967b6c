import { common, drawn } from "../commonOptions.ts";
import type { VerbRule } from "../verbRule.ts";

const beforehand = "What --with and --without name is settled beforehand and not weighed.";

/** What a forecast is asked, and what lies behind its answer. */
export const explaining = [
  {
    name: "forecast",
    summary: "finish and cost with their chances, and what drives them",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "tornado", help: "also what each uncertain item does alone, low and high" },
      {
        name: "within",
        value: "DAYS",
        help: "double the futures until the limits of the committed finish are at most so many working days apart",
      },
      common.confidence,
      ...drawn,
      common.workers,
      { name: "timing", help: "also one JSON line on standard error: seconds per step" },
      { name: "verify", value: "FILE", help: "run a saved forecast (its JSON) again, in place of a new one" },
    ],
    notes:
      "--verify takes seed, futures and scenario from FILE and holds every figure against it, to the last bit. It ends with " +
      "code 0 where all are the same, 1 where one is not (the first is named), 2 where FILE is of another plan or no forecast.",
  },
  {
    name: "explain",
    summary: "why this much contingency: what is held for each cause, and how it comes about",
    plans: 1,
    options: [common.json, common.charts, common.confidence, ...drawn, common.workers],
    notes:
      "Contingency is what the commitment holds above the plan as written. The shares of its causes add up to it; " +
      "what would change if a cause alone vanished is another question and stands beside them.",
  },
  {
    name: "confidence",
    summary: "why this level: what each step buys and costs; date and money together",
    plans: 1,
    options: [
      common.json,
      common.charts,
      {
        name: "joint",
        value: "P",
        help: "how sure to be of date and sum together, e.g. 0.7 (default: the level committed to)",
      },
      common.confidence,
      ...drawn,
    ],
    notes:
      "A step's cost is the extra money held for it and nothing else; lateness counts when the plan prices it.",
  },
  {
    name: "responses",
    summary: "what each response to a risk costs and buys; the best set for a sum",
    plans: 1,
    options: [
      common.json,
      common.charts,
      { name: "sum", value: "MONEY", help: "also which responses to adopt with this much money, e.g. 5000" },
      {
        name: "aim",
        value: "WHAT",
        help: "... for the earliest date, the best chance or most worth: date, chance, worth",
      },
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "Each response is run with and without, on the same draws: alone, and with the adopted ones as they are. " +
      "Net worth is the mean money it saves (risks, running costs, lateness where the plan prices it) less its cost. " +
      beforehand,
  },
  {
    name: "assumptions",
    summary: "what the plan counts on, and what moves were it false",
    plans: 1,
    options: [
      {
        name: "if-false",
        value: "IDS",
        help: "only these assumptions (default: all that are open)",
      },
      common.json,
      common.confidence,
      ...drawn,
    ],
    notes:
      "Each assumption is supposed false in turn, everything else as it is, on the draws of the plan as it stands. What " +
      "moves is said in days, in money and in the chances of what was asked for.",
  },
  {
    name: "reach",
    summary: "what it would take to make a date or a sum",
    plans: 1,
    options: [
      common.json,
      {
        name: "by",
        value: "DATE",
        help: "the date to make, e.g. 2027-10-01",
      },
      { name: "sum", value: "MONEY", help: "the sum to keep, e.g. 640000" },
      common.confidence,
      ...drawn,
      common.workers,
    ],
    notes:
      "Without --by and --sum it is about the date and the budget that the plan's commitment asks for. " +
      "It looks among responses not adopted yet, scope that is `optional` and capacity that people `couldAdd`. " +
      "Scope is dropped only where money alone does not do it; a way that costs less but drops more is shown beside it. " +
      beforehand,
  },
] as const satisfies readonly VerbRule[];
