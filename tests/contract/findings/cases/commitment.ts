import type { commitmentRules } from "../../../../packages/core/src/findings/rules/commitment.ts";
import type { Case } from "./case.ts";

export const commitmentCases: Record<(typeof commitmentRules)[number]["code"], Case> = {
  "no-commitment": {
    found: { commitment: undefined },
    near: { commitment: { finishBy: "2027-06-30" } },
    path: "",
  },
  "confidence-by-default": {
    found: { "commitment.confidence": undefined },
    near: { commitment: undefined },
    path: "commitment",
  },
  // As written: six tasks of four days in a row, from Monday 1 February: 24 working days, Thursday 4 March.
  "finish-by-before-plan": {
    found: { "commitment.finishBy": "2027-03-03" },
    near: { "commitment.finishBy": "2027-03-04" },
    path: "commitment.finishBy",
  },
  "target-before-plan": {
    found: { "tasks.draw.target": "2027-02-03" },
    near: { "tasks.draw.target": "2027-02-04" },
    path: "tasks[1].target",
    ids: ["draw"],
  },
  "date-unlikely": {
    found: { "commitment.finishBy": "2027-03-05" },
    near: { "commitment.finishBy": "2027-03-31" },
    path: "commitment.finishBy",
  },
  "budget-unlikely": {
    found: { "commitment.budget": 10000, "commitment.funds.0.amount": 10000 },
    near: { "commitment.budget": 14000, "commitment.funds.0.amount": 14000 },
    path: "commitment.budget",
  },
  "target-unlikely": {
    found: { "tasks.paint.target": "2027-03-05" },
    near: { "tasks.paint.target": "2027-03-31" },
    path: "tasks[8].target",
    ids: ["paint"],
  },
  "too-few-tasks": {
    found: { "tasks.wire": undefined, "tasks.paint.after": "roof" },
    near: {},
    path: "tasks",
  },
  "one-unknown": {
    found: { "tasks.dig.duration": [4, 4, 60] },
    near: { "tasks.dig.duration": [3, 4, 9] },
    path: "",
    ids: ["dig"],
  },
};
