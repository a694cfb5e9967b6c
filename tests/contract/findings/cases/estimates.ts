import type { estimateRules } from "../../../../packages/core/src/findings/rules/estimates.ts";
import type { Edits } from "../cleanPlan.ts";
import type { Case } from "./case.ts";
import { each, work } from "./eachTask.ts";

/** Day by day from the start: five tasks finished, each in `days` days, the last on a Friday. */
const history = (took: (k: number) => [started: string, finished: string]): Edits => ({
  statusDate: "2027-03-26",
  ...Object.fromEntries(
    ["draw", "order", "dig", "pour", "frame"].flatMap((id, k) => {
      const [started, finished] = took(k);
      return [
        [`tasks.${id}.started`, started],
        [`tasks.${id}.finished`, finished],
      ];
    }),
  ),
});

export const estimateCases: Record<(typeof estimateRules)[number]["code"], Case> = {
  "no-ranges": { found: each("duration", 4), near: each("duration", 4, ["dig"]), path: "tasks" },
  "range-missing": {
    found: { "tasks.dig.duration": 4, "tasks.dig.basis": undefined },
    near: { "tasks.dig.duration": 4 },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "ranges-symmetric": {
    found: each("duration", [3, 4, 5], ["draw"]),
    near: each("duration", [3, 4, 5], ["draw", "dig"]),
    path: "tasks",
    ids: work.filter((id) => id !== "draw"),
  },
  "range-narrow": {
    found: { "tasks.dig.duration": [10, 10.5, 11] },
    near: { "tasks.dig.duration": [10, 10.5, 11.2] },
    path: "tasks[3]",
    ids: ["dig"],
  },
  // Ranges of 3 to 8 working days, as bounds. Mondays to Thursdays of the fortnight after: 9 or 10 days; or 4.
  "ranges-miss-history": {
    found: history((k) => (k < 2 ? ["2027-02-01", "2027-02-04"] : ["2027-02-01", "2027-02-12"])),
    near: history((k) => (k < 3 ? ["2027-02-01", "2027-02-04"] : ["2027-02-01", "2027-02-12"])),
    path: "tasks",
    ids: ["dig", "pour", "frame"],
  },
  "near-outline": {
    found: { "tasks.dig.detail": "outline" },
    near: { "tasks.paint.detail": "outline", start: "2027-02-01", "tasks.pour.duration": [40, 44, 60] },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "far-detail": {
    found: { "tasks.paint.detail": "firm", "tasks.pour.duration": [200, 270, 400] },
    near: { "tasks.paint.detail": "firm", "tasks.pour.duration": [180, 240, 400] },
    path: "tasks[8]",
    ids: ["paint"],
  },
  "basis-missing": {
    found: { "tasks.dig.basis": undefined },
    near: { "tasks.dig.note": "Hard ground." },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "estimator-missing": {
    found: { "tasks.dig.estimatedBy": undefined },
    near: { "tasks.dig.estimatedBy": "The neighbour" },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "one-estimator": {
    found: { ...each("estimatedBy", "lena") },
    near: { ...each("estimatedBy", "lena", ["order"]) },
    path: "tasks",
    ids: work,
  },
  // p10 to p90 of a triangular law from 1 up: its lower end lies below zero.
  "cut-at-zero": {
    found: { "tasks.dig.duration": { low: 1, likely: 6, high: 14, shape: "triangular", bounds: "p10-p90" } },
    near: { "tasks.dig.duration": { low: 4, likely: 6, high: 14, shape: "triangular", bounds: "p10-p90" } },
    path: "tasks[3].duration",
    ids: ["dig"],
  },
};
