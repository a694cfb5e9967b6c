import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Model } from "../../simulate/model.ts";
import type { Settings } from "../settings.ts";
import type { WalkKind, WalkStep } from "../types.ts";
import { type Cause, settingsWith, taskSlots } from "./causes.ts";

/** A step of the walk: what varies at its end, or nothing to run when it ends at a level of everything. */
export interface WalkStage {
  kind: WalkKind;
  step: string;
  text: string;
  settings: Settings;
}

/**
 * The way from the plan as written to the mean of everything, step by step: the spread along the path that drives
 * the plan as written; the spread of all estimates, where strands that merge wait for the latest; limited people,
 * beyond what they cost in the plan as written; risks and assumptions. Steps that the plan has nothing for are left
 * out. Each stage is measured by its mean, people without limits plus what limits add to the plan as written until
 * they have their own step.
 */
export function walkStages(model: Model, asWritten: AsWritten, causes: readonly Cause[]): WalkStage[] {
  const isSpread = ({ kind }: Cause) => kind === "spread" || kind === "cause";
  const spreads = (c: number) => isSpread(causes[c] as Cause);
  const stages: WalkStage[] = [];
  if (causes.some(isSpread)) {
    stages.push(
      {
        kind: "spread",
        step: "Spread along the driving path",
        text: "Estimates on the path that drives the plan as written vary; on average they take longer or shorter than their likely value.",
        settings: alongPath(model, asWritten, causes),
      },
      {
        kind: "merging",
        step: "Merging of paths",
        text: "All other estimates vary too; where strands meet, the latest decides.",
        settings: settingsWith(model, causes, spreads),
      },
    );
  }
  const limited = causes.find(({ people }) => people);
  if (limited !== undefined) {
    stages.push({
      kind: "people",
      step: limited.name,
      text: "People have limits: tasks wait for whoever is busy longer than planned.",
      settings: settingsWith(model, causes, (c) => spreads(c) || (causes[c] as Cause).people),
    });
  }
  if (causes.some(({ kind }) => kind === "risk" || kind === "assumption")) {
    stages.push({
      kind: "register",
      step: "Risks and assumptions",
      text: "Risks occur and assumptions turn out wrong, as often as the plan says.",
      settings: {},
    });
  }
  return stages;
}

/** The steps between neighbouring values; they add up to the last less the first. */
export function walkSteps(
  stages: readonly WalkStage[],
  means: readonly (readonly [number, number])[],
  from: readonly [number, number],
  to: readonly [number, number],
  confidence: number,
): WalkStep[] {
  let before = from;
  const steps = stages.map(({ kind, step, text }, i): WalkStep => {
    const mean = means[i] as readonly [number, number];
    const moved = { workingDays: mean[0] - before[0], money: mean[1] - before[1] };
    before = mean;
    return { kind, step, text, ...moved };
  });
  const level = `${Number((100 * confidence).toPrecision(12))} %`;
  steps.push({
    kind: "percentile",
    step: `From the mean to ${level}`,
    text: `The commitment is to be kept by ${level} of the futures, not just by the average one.`,
    workingDays: to[0] - before[0],
    money: to[1] - before[1],
  });
  return steps;
}

/** Everything held but the estimates of the tasks that drive the plan as written. */
function alongPath(model: Model, asWritten: AsWritten, causes: readonly Cause[]): Settings {
  const { slots, entries, needed, people } = settingsWith(model, causes, () => false);
  const held = new Map(slots);
  const taken = new Map(needed);
  model.tasks.forEach((task, j) => {
    if (asWritten.block.moves[j]?.[0] !== 1 || task.progress?.finished === true) return;
    for (const slot of taskSlots(model, j)) held.delete(slot);
    taken.delete(j);
  });
  return {
    slots: held,
    ...(entries === undefined ? {} : { entries }),
    needed: taken,
    ...(people === undefined ? {} : { people }),
  };
}
