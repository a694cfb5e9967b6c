import { someoneOf } from "../../brief/someone.ts";
import { stampOf } from "../../explain/confidence/stampOf.ts";
import { standingAt } from "../../explain/confidence/standings.ts";
import { type ExplainingOptions, explaining, type Subject } from "../../explain/subject.ts";
import { type Outcome, runVariants } from "../../explain/variants.ts";
import type { Problem } from "../../plan/problem.ts";
import type { IsoDate, Plan } from "../../plan/types.ts";
import { compile } from "../../simulate/compile.ts";
import { asOf } from "../asOf.ts";
import { coverOfDays, coverOfMoney } from "./coverOf.ts";
import { exposureAhead } from "./exposureAhead.ts";
import { settled } from "./settled.ts";
import type { AgreedFrom, ContingencyLeft } from "./types.ts";

/** What was signed, and of which day the rest is asked. */
export interface ContingencyLeftOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
  /** What was agreed, where it is known otherwise: a sum, the last day. */
  agreed?: { money?: number; date?: IsoDate };
  /** The version that was signed: what it commits to at its own level is what was agreed. */
  signed?: Plan;
  /** The day it is looked at, where that is later than the plan's status date. */
  today?: IsoDate;
  /** false: leave out the way ahead, which costs a run a month. */
  ahead?: boolean;
  /** false: leave out what settled entries held, which costs most of the runs; `held` and `release` are nothing then. */
  settled?: boolean;
}
/** Contingency left against the exposure ahead, or why it cannot be told. */
export interface ContingencyLeftResult {
  left?: ContingencyLeft;
  problems: Problem[];
}

/**
 * What is left of the contingency against what it still has to cover, in money and in days.
 *
 * Left = what was agreed less the plan as written now. Exposure = the percentile at the level committed to, now, less
 * the plan as written now. So the cover is enough exactly when what was agreed holds at that level. What was agreed is,
 * part by part: `agreed` as given, else what the `signed` version commits to (same seed and iterations), else the
 * plan's `budget` and `finishBy`; without any, that part is absent and `missing` says what would help.
 *
 * Contingency is for identified uncertainty; the sponsor's reserve is handed through and counted nowhere.
 *
 * Problems are values. Cost: one run for the cover, two to the power of the settled entries (six at most) for what they
 * held, one a month for the way ahead; all on the forecast's draws.
 */
export function contingencyLeft(given: Plan, options: ContingencyLeftOptions = {}): ContingencyLeftResult {
  const { plan, problems: unfit } = asOf(given, options.today);
  const answer = (subject: Subject): ContingencyLeftResult => {
    const { model, asWritten, draw } = subject;
    const confidence = options.confidence ?? model.confidence;
    const terms = termsOf(plan, options, subject);
    const [{ spends, covers } = { spends: true, covers: {} }] = runVariants(
      draw,
      [{ model }],
      (rows: Outcome): { spends: boolean; covers: Pick<ContingencyLeft, "money" | "days"> } => ({
        spends: rows.cost.some((cost) => cost !== 0),
        covers: {
          ...(terms.money === undefined
            ? {}
            : { money: coverOfMoney(rows, confidence, asWritten.cost, ...terms.money) }),
          ...(terms.date === undefined
            ? {}
            : { days: coverOfDays(model, rows, confidence, asWritten, ...terms.date) }),
        },
      }),
      options.onProgress,
    );
    const { commitment, statusDate } = plan;
    const holder = someoneOf(plan)(commitment.holder);
    return {
      left: {
        stamp: stampOf(model, draw),
        plan: { title: plan.title, currency: plan.currency, start: plan.start },
        confidence,
        ...(statusDate === undefined ? {} : { statusDate }),
        ...(holder === undefined ? {} : { holder }),
        ...(commitment.releaseRule === undefined ? {} : { releaseRule: commitment.releaseRule }),
        ...(commitment.reserve === undefined ? {} : { reserve: commitment.reserve }),
        ...covers,
        missing: missing(plan, terms, spends),
        ...(options.settled === false ? unsettled : settled(plan, options, draw, confidence, covers)),
        ahead: options.ahead === false ? [] : exposureAhead(model, asWritten, draw, confidence),
      },
      problems: [],
    };
  };
  return explaining(plan, options, answer, { unfit: [...unfit, ...otherMoney(plan, options.signed)] });
}

const nothing = { workingDays: 0, money: 0 };
const unsettled = { settled: [], held: nothing, heldIn: "without-progress" as const, release: nothing };

/** Sums in two currencies are not compared. */
function otherMoney({ currency }: Plan, signed: Plan | undefined): Problem[] {
  if (signed === undefined || signed.currency === currency) return [];
  return [
    {
      code: "other-currency",
      severity: "error",
      path: "--signed",
      received: signed.currency,
      rule: `The version that was signed counts in ${signed.currency}, the plan in ${currency}.`,
      remedy: "Give the agreed sum itself, in the plan's currency.",
    },
  ];
}

/** What was agreed, and where that comes from. */
interface Terms {
  money?: [number, AgreedFrom];
  date?: [IsoDate, AgreedFrom];
}

function termsOf(plan: Plan, { agreed, signed }: ContingencyLeftOptions, { draw }: Subject): Terms {
  const { commitment } = plan;
  const terms: Terms = {};
  if (commitment.budget !== undefined) terms.money = [commitment.budget, "plan"];
  if (commitment.finishBy !== undefined) terms.date = [commitment.finishBy, "plan"];
  if (signed !== undefined && (agreed?.money === undefined || agreed.date === undefined)) {
    const model = compile(signed);
    const [standing] = runVariants(draw, [{ model }], (rows) => standingAt(model, rows, model.confidence));
    if (standing !== undefined) {
      terms.money = [standing.cost, "signed"];
      terms.date = [standing.date, "signed"];
    }
  }
  if (agreed?.money !== undefined) terms.money = [agreed.money, "given"];
  if (agreed?.date !== undefined) terms.date = [agreed.date, "given"];
  return terms;
}

/** A plan that costs nothing misses no sum. */
function missing({ commitment, statusDate }: Plan, { money, date }: Terms, spends: boolean): string[] {
  return [
    ...(money === undefined && spends
      ? [
          "No sum was agreed, so none can be left. Give `commitment: { budget: ... }`, or the version that was signed.",
        ]
      : []),
    ...(date === undefined
      ? [
          "No date was agreed, so no days can be left. Give `commitment: { finishBy: ... }`, or the version that was signed.",
        ]
      : []),
    ...(statusDate === undefined
      ? ["The plan has no `statusDate`: nothing counts as done, and no window of a risk as passed."]
      : []),
    ...(commitment.holder === undefined
      ? ["Nobody holds the contingency: name them with `commitment: { holder: ... }`."]
      : []),
    ...(commitment.releaseRule === undefined
      ? ["Nobody says how contingency is released: write it down as `commitment: { releaseRule: ... }`."]
      : []),
  ];
}
