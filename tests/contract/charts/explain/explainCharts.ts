import {
  confidenceSteps,
  futureBars,
  jointDensity,
  movesDays,
  movesMoney,
  pathBars,
  peopleWeeks,
  responseWorth,
  sharesDays,
  sharesMoney,
  spending,
  tasksAtStake,
  walkDays,
  walkMoney,
} from "@leeway/charts";
import type { Drawing } from "../readable.ts";
import { hardComparisons } from "./hardComparisons.ts";
import { hardConfidences } from "./hardConfidences.ts";
import { hardExplanations } from "./hardExplanations.ts";
import { sampleComparison } from "./sampleComparison.ts";
import { sampleConfidence } from "./sampleConfidence.ts";
import { sampleExplanation } from "./sampleExplanation.ts";
import { hardFutures, sampleFuture } from "./sampleFuture.ts";
import { hardPaths, samplePaths } from "./samplePaths.ts";
import { hardPeople, samplePeople } from "./samplePeople.ts";
import { hardResponses, sampleResponses } from "./sampleResponses.ts";
import { hardSpendings, sampleSpending } from "./sampleSpending.ts";

/** A chart by name: drawn of the sample, and of the hard cases. */
export interface ExplainChart {
  name: string;
  sample: Drawing;
  hard: [string, Drawing][];
}

function charts<T>(
  drawn: Record<string, (data: T) => Drawing>,
  sample: T,
  hard: Record<string, T>,
): ExplainChart[] {
  return Object.entries(drawn).map(([name, draw]) => ({
    name,
    sample: draw(sample),
    hard: Object.entries(hard).map(([title, data]) => [title, draw(data)]),
  }));
}

/** Every chart of an explanation. */
export const explainCharts: ExplainChart[] = [
  ...charts(
    {
      sharesDays: (data) => (options) => sharesDays(data, options),
      sharesMoney: (data) => (options) => sharesMoney(data, options),
      walkDays: (data) => (options) => walkDays(data, options),
      walkMoney: (data) => (options) => walkMoney(data, options),
    },
    sampleExplanation(),
    hardExplanations(),
  ),
  ...charts(
    {
      movesDays: (data) => (options) => movesDays(data, options),
      movesMoney: (data) => (options) => movesMoney(data, options),
    },
    sampleComparison(),
    hardComparisons(),
  ),
  ...charts(
    {
      confidenceSteps: (data) => (options) => confidenceSteps(data, options),
      jointDensity: (data) => (options) => jointDensity(data, options),
    },
    sampleConfidence(),
    hardConfidences(),
  ),
  ...charts(
    { responseWorth: (data) => (options) => responseWorth(data, options) },
    sampleResponses(),
    hardResponses(),
  ),
  ...charts({ spending: (data) => (options) => spending(data, options) }, sampleSpending(), hardSpendings()),
  ...charts({ futureBars: (data) => (options) => futureBars(data, options) }, sampleFuture(), hardFutures()),
  ...charts(
    {
      pathBars: (data) => (options) => pathBars(data, options),
      tasksAtStake: (data) => (options) => tasksAtStake(data, options),
    },
    samplePaths(),
    hardPaths(),
  ),
  ...charts({ peopleWeeks: (data) => (options) => peopleWeeks(data, options) }, samplePeople(), hardPeople()),
];
