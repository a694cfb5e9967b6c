import type { Confidence } from "@leeway/core";
import { levelsSpend } from "../sentences/speaksOfMoney.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { roundSignificant } from "../words/roundSignificant.ts";

/**
 * What the levels say, in one sentence: where the next step holds more than it avoids, as far as sampling lets
 * it be told; and where lateness has no price, what the next step takes.
 */
export function stepsFinding(answer: Confidence): string {
  const { steps, stop, confidence, plan } = answer;
  const money = (value: number) => formatMoney(roundSignificant(value, 2), plan.currency);
  const level = formatPercent(confidence);
  if (stop === undefined) {
    const at = steps.findIndex((step) => step.p === confidence);
    const next = steps[at + 1] ?? steps[steps.length - 1];
    if (next === undefined) return "No level of confidence has been tried";
    if (next.bought === undefined) return `${level} is the only level that was tried`;
    const before = steps[steps.indexOf(next) - 1];
    const step = `The step from ${formatPercent(before?.p ?? confidence)} to ${formatPercent(next.p)}`;
    if (!levelsSpend(answer))
      return `${step} takes ${next.bought.workingDays === 0 ? "no day" : formatDays(next.bought.workingDays)}`;
    if (next.bought.workingDays === 0 && next.bought.money === 0) return `${step} takes no day and no money`;
    return `${step} takes ${formatDays(next.bought.workingDays)} and ${money(next.bought.money)}`;
  }
  const best = formatPercent(stop.p);
  if (!stop.clear)
    return `Stopping near ${best} is worth most, as far as ${level} and its neighbours can be told apart`;
  const { next } = stop;
  if (next === undefined) return `Even the step to ${best} avoids more lateness than it holds in money`;
  const beyond = `the step to ${formatPercent(next.p)} holds ${money(next.costs)} more and avoids ${money(next.avoids)} of lateness`;
  if (stop.p === confidence) return `Steps pay up to ${best}: ${beyond}`;
  return stop.p < confidence
    ? `Beyond ${best} a step costs more than it avoids, and the plan commits to ${level}: ${beyond}`
    : `Going on from ${level} to ${best} avoids more lateness than it holds; ${beyond}`;
}
