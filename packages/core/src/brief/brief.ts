import { whyConfidence } from "../explain/confidence/whyConfidence.ts";
import { explain } from "../explain/contingency/explain.ts";
import { responses } from "../explain/responses/responses.ts";
import type { ExplainingOptions } from "../explain/subject.ts";
import { forecast } from "../forecast/forecast.ts";
import type { Problem } from "../plan/problem.ts";
import type { IsoDate, Plan } from "../plan/types.ts";
import { assumptionBars } from "./assumptionBars.ts";
import { briefOf } from "./briefOf.ts";
import { briefParts } from "./briefParts.ts";
import type { Brief, BriefAnswers } from "./types.ts";

/** The answers a brief is put together from, and for which day. */
export interface BriefOptions extends ExplainingOptions {
  /** The day the brief is written on. */
  today: IsoDate;
  /** Default: the plan's own. */
  confidence?: number;
}
/** A brief, or the problems for which there is none. */
export interface BriefResult {
  brief?: Brief;
  /** What it was put together from, for charts and pre-briefs. */
  answers?: BriefAnswers;
  problems: Problem[];
}

/**
 * The brief of a plan: what is asked, what to commit to, what it is worth, what drives it, what was done about it and
 * when to come back, on one run.
 *
 * Problems are values; nothing is thrown. Cost: that of `forecast`, `explain`, `responses` and `whyConfidence` together.
 */
export function brief(plan: Plan, options: BriefOptions): BriefResult {
  const { today, onProgress, ...run } = options;
  const within = (part: keyof typeof briefParts) => {
    const { from, to } = briefParts[part];
    return onProgress === undefined
      ? run
      : {
          ...run,
          onProgress: (done: number, total: number) =>
            onProgress(Math.floor(1000 * (from + ((to - from) * done) / total)), 1000),
        };
  };
  const outlook = forecast(plan, within("forecast"));
  if (outlook.forecast === undefined) return { problems: outlook.problems };
  const why = explain(plan, within("explain"));
  const bought = responses(plan, within("responses"));
  const level = whyConfidence(plan, within("confidence"));
  const counted = assumptionBars(plan, within("assumptions"));
  const { explanation } = why;
  if (
    explanation === undefined ||
    bought.responses === undefined ||
    level.confidence === undefined ||
    counted.bars === undefined
  ) {
    return { problems: [why, bought, level, counted].flatMap(({ problems }) => problems) };
  }
  const answers: BriefAnswers = {
    forecast: outlook.forecast,
    explanation,
    responses: bought.responses,
    confidence: level.confidence,
    assumptions: counted.bars,
  };
  return { brief: briefOf(plan, answers, { today, scenario: run }), answers, problems: outlook.problems };
}
