import type { moneyRules } from "../../../../packages/core/src/findings/rules/money.ts";
import type { Case } from "./case.ts";

export const moneyCases: Record<(typeof moneyRules)[number]["code"], Case> = {
  // 8 tasks of 4 days: 20 days of Lena at 300 and 8 of Omar at 320, and 200 for blankets, make 9,960 or so.
  "over-budget": {
    found: { "commitment.budget": 9000, "commitment.funds": [{ from: "2027-02-01", amount: 9000 }] },
    near: { "commitment.budget": 10000, "commitment.funds": [{ from: "2027-02-01", amount: 10000 }] },
    path: "commitment.budget",
  },
  "contingency-in-task": {
    found: { "tasks.paint.name": "Contingency" },
    near: { "tasks.paint.name": "Reserve stock ordered" },
    path: "tasks[8]",
    ids: ["paint"],
  },
  "holder-missing": {
    found: { "commitment.holder": undefined },
    near: {
      "commitment.holder": undefined,
      "commitment.finishBy": undefined,
      "commitment.budget": undefined,
    },
    path: "commitment",
  },
  "funds-missing": {
    found: { "commitment.funds": undefined },
    near: { "commitment.funds": undefined, "commitment.budget": undefined },
    path: "commitment",
  },
  "funds-below-budget": {
    found: { "commitment.funds.0.amount": 59999 },
    near: { "commitment.funds.0.amount": 60000 },
    path: "commitment.funds",
  },
  "reserve-in-funds": {
    found: { "commitment.funds.0.amount": 65000 },
    near: { "commitment.funds.0.amount": 65000, "commitment.reserve": undefined },
    path: "commitment.funds",
  },
  "approver-limit": {
    found: { "stakeholders.chair.approvesUpTo": 59999 },
    near: {
      "stakeholders.chair.approvesUpTo": 59999,
      "stakeholders.1": { id: "board", name: "Board", approvesUpTo: 60000 },
      "approvals.1": { who: "board" },
    },
    path: "approvals",
    ids: ["chair"],
  },
};
