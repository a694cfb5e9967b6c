import { networkDocument } from "./network.ts";
import type { NetworkAnswer, PlanData, SimulatedAnswer, TestModel } from "./testModel.ts";

/** What the durations of a three-point network are: certain at (a + 4m + b) / 6, or drawn from one shape. */
export type ThreePointDurations = "expected" | "pert" | "triangular";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface ThreePointAnswer {
  /** With every duration at its expected value. */
  expected: NetworkAnswer;
  /** The finish with every duration at its most likely value: what the plan as written says. */
  likelyFinish: number;
  pert: SimulatedAnswer;
  triangular: SimulatedAnswer;
}

export interface ThreePointTable {
  title: string;
  source: string;
  /** By task: lowest, most likely, highest. */
  estimates: Readonly<Record<string, readonly [low: number, likely: number, high: number]>>;
  after: Readonly<Record<string, readonly string[]>>;
  names?: Readonly<Record<string, string>>;
}

/** The test model of a table of three-point estimates. */
export function threePointModel(
  table: ThreePointTable,
  durations: ThreePointDurations,
  known: ThreePointAnswer,
): TestModel<ThreePointAnswer> {
  const { title, source, estimates, after } = table;
  const entries = Object.entries(estimates);
  const drawn = durations !== "expected";
  const document: PlanData = networkDocument(
    {
      title,
      after,
      durations: Object.fromEntries(
        entries.map(([id, [low, likely, high]]) => [
          id,
          drawn ? [low, likely, high] : (low + 4 * likely + high) / 6,
        ]),
      ),
      ...(table.names === undefined ? {} : { names: table.names }),
    },
    drawn ? { estimates: { shape: durations } } : {},
  );
  return { document, known, source };
}
