import { coverIsBelow } from "../../budget/left/coverOf.ts";
import type { AgreedFrom, ContingencyLeft, Cover } from "../../budget/left/types.ts";
import { dayNumber, isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { wilson } from "../../estimating/score/wilson.ts";
import type { Curve, Forecast } from "../../forecast/types.ts";
import type { IsoDate, Plan, ReturnTrigger } from "../../plan/types.ts";
import { personOf } from "../../signoff/approvalsState.ts";
import { hasLapsed } from "../../signoff/hasLapsed.ts";
import { signedHere } from "../../signoff/signedHere.ts";
import type { CoverNow, TriggerNow, TriggersNow } from "./types.ts";

/** So near the limit is close: five points of chance, and as much of a ratio. Common practice, no source. */
const near = 0.05;

/**
 * Where each agreed return trigger of a plan stands at a forecast of it.
 *
 * `tripped` is read off the values as they are printed; sampling limits (95 %; of a chance Wilson's) say whether that is
 * `uncertain`. A trigger that has not tripped is `close` where its limits reach the condition, or five points of chance
 * (of a cover: 0.05 of the ratio) would. Pure: simulates nothing.
 *
 * The date and the sum agreed are what was signed: what `left` was measured against, else what this plan commits to where
 * it is the one that was signed and has no progress; else what the plan asks for.
 *
 * Conditions of an approval that have a day stand among them, under `conditions-of-WHO`: nobody has to agree on those.
 *
 * @param today  The day of today; the later of it and the status date says whether conditions have lapsed.
 * @param left  Contingency left of the same run; triggers on its cover are unknown without it.
 */
export function evaluateTriggers(
  plan: Plan,
  forecast: Forecast,
  left?: Pick<ContingencyLeft, "money" | "days">,
  today?: IsoDate,
): TriggersNow {
  const now = [today, plan.statusDate].reduce((a, b) => ((b ?? "") > (a ?? "") ? b : a));
  return {
    currency: plan.currency,
    confidence: forecast.committed.confidence,
    triggers: [
      ...plan.returnTriggers.map((trigger) => ({
        id: trigger.id,
        ...(trigger.name === undefined ? {} : { name: trigger.name }),
        ...(trigger.note === undefined ? {} : { note: trigger.note }),
        ...stateOf(trigger, plan, forecast, left),
      })),
      ...conditionsOf(plan, now),
    ],
  };
}

function conditionsOf(plan: Plan, now: IsoDate | undefined): TriggerNow[] {
  return plan.approvals.flatMap((approval): TriggerNow[] => {
    const { who, decision, conditions, conditionsBy: by, conditionsMet: met } = approval;
    if (decision !== "approve-subject-to" || conditions === undefined || by === undefined) return [];
    const said = {
      who,
      name: personOf(plan, who).name,
      conditions,
      by,
      ...(met === undefined ? {} : { met }),
    };
    const unknown = "Neither today nor a status date is known.";
    const state = now === undefined && met === undefined ? "unknown" : undefined;
    return [
      {
        id: `conditions-of-${who}`,
        condition: "conditionsBy",
        state: state ?? (hasLapsed(approval, now ?? by) ? "tripped" : "quiet"),
        uncertain: false,
        approval: said,
        ...(state === undefined ? {} : { unknown }),
      },
    ];
  });
}

type Found = Omit<TriggerNow, "id" | "name" | "note">;

function stateOf(
  trigger: ReturnTrigger,
  plan: Plan,
  forecast: Forecast,
  left: Pick<ContingencyLeft, "money" | "days"> | undefined,
): Found {
  const { chanceOfDateBelow, chanceOfBudgetBelow, contingencyCoverBelow, signpost } = trigger;
  if (chanceOfDateBelow !== undefined) {
    const { chance, asked, committed, finish } = forecast;
    const agreed =
      agreedOf(left?.days, left?.days?.agreedDate) ??
      signedIn(plan, committed.date, () => chanceBy(finish.curve, momentAfter(plan, committed.date))) ??
      agreedOf({ chance: chance.finishBy }, asked.finishBy);
    return chanceState(
      "chanceOfDateBelow",
      chanceOfDateBelow,
      unsigned(plan, agreed, committed.date),
      forecast,
    );
  }
  if (chanceOfBudgetBelow !== undefined) {
    const { chance, asked, committed, cost } = forecast;
    const agreed =
      agreedOf(left?.money, left?.money?.agreed) ??
      signedIn(plan, committed.cost, () => chanceBy(cost.curve, committed.cost)) ??
      agreedOf({ chance: chance.budget }, asked.budget);
    return chanceState(
      "chanceOfBudgetBelow",
      chanceOfBudgetBelow,
      unsigned(plan, agreed, committed.cost),
      forecast,
    );
  }
  if (contingencyCoverBelow !== undefined) return coverState(contingencyCoverBelow, left);
  if (signpost !== undefined) return signpostState(signpost, plan);
  if (trigger.finishLaterThan !== undefined) return finishState(trigger.finishLaterThan, plan, forecast);
  return costState(trigger.costAbove ?? Number.POSITIVE_INFINITY, forecast);
}

/** What was agreed, and the chance that it holds now; absent where nothing was. */
interface Agreed {
  value: number;
  asked: string | number;
  from: AgreedFrom;
  onceSigned?: string | number;
}

/** What this plan commits to, where it is the very plan that was signed: with progress, another would have to be run. */
function signedIn(plan: Plan, asked: string | number, chance: () => number): Agreed | undefined {
  return signedHere(plan) === plan ? { value: chance(), asked, from: "signed" } : undefined;
}

/** What is only asked for counts until somebody signs; what was signed and is not at hand is not known. */
function unsigned(
  { approvals }: Plan,
  agreed: Agreed | undefined,
  committed: string | number,
): Agreed | undefined {
  const signed = approvals.some(
    ({ decision, plan }) =>
      plan !== undefined && (decision === "approve" || decision === "approve-subject-to"),
  );
  return agreed?.from === "plan" && !signed ? { ...agreed, onceSigned: committed } : agreed;
}

/** The end of a day, as a finish is read. */
function momentAfter({ start }: Plan, day: IsoDate): number {
  return dayNumber(day) - dayNumber(start) + 1;
}

/** The highest probability of the curve whose value is no more than this: to the half per cent, rounded down. */
function chanceBy({ p, at }: Curve, value: number): number {
  const limit = value + tolerance * Math.max(1, Math.abs(value));
  return p.reduce(
    (found, each, index) => ((at[index] ?? Number.POSITIVE_INFINITY) <= limit ? each : found),
    0,
  );
}

function agreedOf(
  cover: { chance?: number | undefined; agreedFrom?: AgreedFrom } | undefined,
  asked: string | number | undefined,
): Agreed | undefined {
  if (cover?.chance === undefined || asked === undefined) return undefined;
  return { value: cover.chance, asked, from: cover.agreedFrom ?? "plan" };
}

function chanceState(
  condition: "chanceOfDateBelow" | "chanceOfBudgetBelow",
  limit: number,
  agreed: Agreed | undefined,
  { iterations }: Forecast,
): Found {
  if (agreed === undefined) {
    const [what, key] = condition === "chanceOfDateBelow" ? ["date", "finishBy"] : ["sum", "budget"];
    const unknown = `No ${what} was agreed: give \`commitment: { ${key}: ... }\`, or have the plan signed.`;
    return { condition, state: "unknown", uncertain: false, unknown };
  }
  const { value, asked, from, onceSigned } = agreed;
  const { low, high } = wilson(Math.round(value * iterations), iterations);
  const tripped = value < limit - tolerance;
  const close = low < limit - tolerance || value < limit + near - tolerance;
  return {
    condition,
    state: tripped ? "tripped" : close ? "close" : "quiet",
    uncertain: low < limit && limit <= high,
    chance: { value, low, high, limit, asked, from, ...(onceSigned === undefined ? {} : { onceSigned }) },
  };
}

function coverState(limit: number, left: Pick<ContingencyLeft, "money" | "days"> | undefined): Found {
  const condition = "contingencyCoverBelow";
  if (left === undefined) {
    const unknown = "What is left of the contingency was not worked out with this forecast.";
    return { condition, state: "unknown", uncertain: false, unknown };
  }
  const parts = (["money", "days"] as const).flatMap((kind) => {
    const cover = left[kind];
    return cover === undefined ? [] : [coverPart(kind, cover, limit)];
  });
  if (parts.length === 0) {
    const unknown = "Neither a sum nor a date was agreed, so no contingency can be left.";
    return { condition, state: "unknown", uncertain: false, unknown };
  }
  const worst = (["tripped", "close", "quiet"] as const).find((state) =>
    parts.some(({ now }) => now.state === state),
  );
  return {
    condition,
    state: worst ?? "quiet",
    uncertain: parts.some(({ now, uncertain }) => uncertain && now.state === worst),
    cover: { limit, parts: parts.map(({ now }) => now) },
  };
}

function coverPart(
  kind: "money" | "days",
  cover: Cover,
  limit: number,
): { now: CoverNow; uncertain: boolean } {
  // The level's percentile is what is sampled; what is left is not.
  const at = (committed: number): Cover => {
    const exposure = committed - cover.asWritten;
    return { ...cover, exposure, spare: cover.left - exposure };
  };
  const tripped = coverIsBelow(cover, limit);
  const { left, exposure, ratio, committed, low, high } = cover;
  const atLow = coverIsBelow(at(cover.low), limit);
  const atHigh = coverIsBelow(at(cover.high), limit);
  const close = atHigh || (exposure > tolerance && coverIsBelow(cover, limit + near));
  const state = tripped ? "tripped" : close ? "close" : "quiet";
  return {
    now: { kind, left, exposure, committed, low, high, ...(ratio === undefined ? {} : { ratio }), state },
    uncertain: atLow !== atHigh,
  };
}

function signpostState(id: string, plan: Plan): Found {
  const condition = "signpost";
  const assumption = plan.assumptions.find((each) => each.id === id);
  if (assumption === undefined) {
    return { condition, state: "unknown", uncertain: false, unknown: `There is no assumption ${id} here.` };
  }
  const { name: statement, signpost: sign, tripped, status, reviewBy } = assumption;
  const due = reviewBy !== undefined && plan.statusDate !== undefined && reviewBy <= plan.statusDate;
  return {
    condition,
    state: tripped !== undefined || status === "occurred" ? "tripped" : "quiet",
    uncertain: false,
    signpost: {
      assumption: id,
      statement,
      ...(sign === undefined ? {} : { sign }),
      ...(tripped === undefined ? {} : { tripped }),
      status,
      ...(due && status === "open" ? { reviewDue: reviewBy } : {}),
    },
  };
}

function finishState(limit: string, plan: Plan, { committed, finish }: Forecast): Found {
  const { date: value, lowDate: low, highDate: high } = committed;
  const later = momentAt(finish.curve, committed.confidence + near);
  const laterDay = dayNumber(plan.start) + Math.ceil(later - tolerance) - 1;
  const tripped = value > limit;
  return {
    condition: "finishLaterThan",
    state: tripped ? "tripped" : high > limit || isoDate(laterDay) > limit ? "close" : "quiet",
    uncertain: low <= limit && limit < high,
    finish: { value, low, high, limit },
  };
}

function costState(limit: number, { committed, cost }: Forecast): Found {
  const { cost: value, costLow: low, costHigh: high } = committed;
  const above = limit + tolerance * Math.max(1, Math.abs(limit));
  const tripped = value > above;
  const close = high > above || momentAt(cost.curve, committed.confidence + near) > above;
  return {
    condition: "costAbove",
    state: tripped ? "tripped" : close ? "close" : "quiet",
    uncertain: low <= above && above < high,
    cost: { value, low, high, limit },
  };
}

/** The curve at the first of its probabilities that is p or above; its end beyond. */
function momentAt({ p, at }: Curve, level: number): number {
  const index = p.findIndex((each) => each >= level - tolerance);
  return at[index < 0 ? at.length - 1 : index] ?? Number.NEGATIVE_INFINITY;
}
