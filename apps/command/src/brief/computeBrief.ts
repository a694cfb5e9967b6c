import {
  type Brief,
  type BriefAnswers,
  briefOf,
  briefParts,
  type Comparison,
  type IsoDate,
  type Plan,
  type PreBriefExtras,
  type Problem,
  type Reach,
} from "@leeway/core";
import {
  compareInParallel,
  explainInParallel,
  forecastInParallel,
  reachInParallel,
  responsesInParallel,
} from "@leeway/parallel";
import type { EngineOptions } from "../call/engineOptions.ts";
import { answerAside } from "../compute/answerAside.ts";
import { threadsOf } from "../compute/threadsOf.ts";

export interface BriefJob {
  plan: Plan;
  options: EngineOptions;
  today: IsoDate;
  /** Threads at most; default: the cores. */
  workers: number | undefined;
  /** Told in thousandths. */
  onProgress: (done: number, total: number) => void;
}
export interface BriefComputed {
  brief?: Brief;
  answers?: BriefAnswers;
  problems: Problem[];
}

/** `brief(plan, options)` on threads: the same brief, to the bit, whose parts are each shared out as their own verbs do. */
export async function computeBrief({
  plan,
  options,
  today,
  workers,
  onProgress,
}: BriefJob): Promise<BriefComputed> {
  const within = (part: keyof typeof briefParts) => {
    const { from, to } = briefParts[part];
    return (done: number, total: number) =>
      onProgress(Math.floor(1000 * (from + ((to - from) * done) / Math.max(1, total))), 1000);
  };
  const asked = (part: keyof typeof briefParts) => ({
    ...options,
    ...threadsOf(workers),
    onProgress: within(part),
  });
  const outlook = await forecastInParallel(plan, asked("forecast"));
  const { forecast } = outlook;
  if (forecast === undefined) return { problems: outlook.problems };
  const why = await explainInParallel(plan, asked("explain"));
  const bought = await responsesInParallel(plan, asked("responses"));
  const level = await answerAside({ kind: "confidence", plan, options }, within("confidence"));
  const counted = await answerAside({ kind: "assumptions", plan, options }, within("assumptions"));
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
    forecast,
    explanation,
    responses: bought.responses,
    confidence: level.confidence,
    assumptions: counted.bars,
  };
  return { brief: briefOf(plan, answers, { today, scenario: options }), answers, problems: outlook.problems };
}

/** What a pre-brief says besides: how the asked date becomes even, and what moved since `since`. */
export async function computeExtras(
  { plan, options, workers, onProgress }: Omit<BriefJob, "today">,
  since: Plan | undefined,
): Promise<{ extras: PreBriefExtras; problems: Problem[] }> {
  const asked = { ...options, ...threadsOf(workers) };
  const problems: Problem[] = [];
  let even: Reach | undefined;
  let comparison: Comparison | undefined;
  const { finishBy, budget } = plan.commitment;
  if (finishBy !== undefined || budget !== undefined) {
    const found = await reachInParallel(plan, { ...asked, confidence: 0.5, onProgress });
    problems.push(...found.problems);
    even = found.reach;
  }
  if (since !== undefined) {
    const { with: _with, without: _without, ...run } = asked;
    const found = await compareInParallel(since, plan, { ...run, onProgress });
    problems.push(...found.problems);
    comparison = found.comparison;
  }
  return {
    extras: {
      ...(even === undefined ? {} : { even }),
      ...(comparison === undefined ? {} : { comparison }),
    },
    problems,
  };
}
