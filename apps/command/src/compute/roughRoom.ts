import { roughTasks } from "../start/roughTasks.ts";

/** More is left to be asked for when it is known to be needed. */
const most = 160e6;
const usual = 10_000;
/** Of rows that do not grow with iterations, by task. */
const besides = 20_000;

/**
 * Bytes that forecasting a plan may take, guessed from its text: the finishes of as many tasks as durations or efforts are
 * named. A wrong guess costs time or memory, never a figure.
 */
export function roughRoom(text: string, iterations = stated(text)): number {
  return Math.min(most, roughTasks(text) * (8 * iterations + besides));
}

function stated(text: string): number {
  return Number(/\biterations"?:\s*(\d{1,7})\b/.exec(text)?.[1] ?? usual);
}
