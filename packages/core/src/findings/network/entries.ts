import type { Plan, RegisterEntry } from "../../plan/types.ts";

export interface PlacedEntry {
  entry: RegisterEntry & { cause?: string };
  path: string;
}

/** Assumptions, then risks, each with its path. */
export function entriesOf(plan: Plan): PlacedEntry[] {
  return [
    ...plan.assumptions.map((entry, at) => ({ entry, path: `assumptions[${at}]` })),
    ...plan.risks.map((entry, at) => ({ entry, path: `risks[${at}]` })),
  ];
}
