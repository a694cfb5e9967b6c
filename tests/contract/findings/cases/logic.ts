import type { logicRules } from "../../../../packages/core/src/findings/rules/logic.ts";
import type { Case } from "./case.ts";

const extra = (more: object) => ({
  id: "extra",
  name: "Extra work",
  scope: "shed",
  duration: [3, 4, 8],
  people: "omar",
  accountable: "omar",
  estimatedBy: "omar",
  basis: "As drawn.",
  ...more,
});
const withoutPeople = ({ people: _, ...rest }: ReturnType<typeof extra>) => rest;

export const logicCases: Record<(typeof logicRules)[number]["code"], Case> = {
  "runs-past-calendar": {
    found: { "tasks.paint.duration": [20000, 30000, 40000] },
    near: { "tasks.paint.duration": [200, 300, 400] },
    path: "tasks[8]",
    ids: ["paint"],
  },
  "open-start": {
    found: { "tasks.order.after": undefined },
    near: { "tasks.approved": undefined, "tasks.draw.after": undefined },
    path: "tasks[2]",
    ids: ["order"],
  },
  "open-end": {
    found: { "tasks.+": extra({ after: "draw" }) },
    near: { "tasks.+": extra({ after: "handed-over" }) },
    path: "tasks[10]",
    ids: ["extra"],
  },
  dangling: {
    found: { "tasks.order.after": { task: "draw", link: "finish-to-finish" } },
    near: { "tasks.order.after": [{ task: "draw", link: "finish-to-finish" }, "approved"] },
    path: "tasks[2]",
    ids: ["order"],
  },
  "no-effect-on-finish": {
    found: {
      "tasks.+": withoutPeople(extra({ after: "draw", cost: 100 })),
      "tasks.11": { id: "aside", name: "Aside", milestone: true, after: "extra" },
    },
    // Who does it is wanted on the way to the finish, so it may hold that up.
    near: {
      "tasks.+": extra({ after: "draw" }),
      "tasks.11": { id: "aside", name: "Aside", milestone: true, after: "extra" },
    },
    path: "tasks[10]",
    ids: ["extra"],
  },
  lead: {
    found: { "tasks.wire.after": { task: "frame", lag: -1 } },
    near: { "tasks.wire.after": { task: "frame", lag: 1 } },
    path: "tasks[7].after[0]",
    ids: ["wire", "frame"],
  },
  lag: {
    found: { "tasks.wire.after": { task: "frame", lag: 1 } },
    near: { "tasks.wire.after": { task: "frame", lag: 1 }, "tasks.wire.note": "Glue has to set." },
    path: "tasks[7].after[0]",
    ids: ["wire", "frame"],
  },
  // 12 links: 11 of 12 are 92 %, 10 of 12 are 83 %.
  "link-mix": {
    found: {
      "tasks.wire.after": { task: "frame", link: "start-to-start" },
      "tasks.roof.after": { task: "frame", link: "start-to-start" },
    },
    near: { "tasks.wire.after": { task: "frame", link: "start-to-start" } },
    path: "tasks",
  },
  "hard-date": {
    found: { "tasks.wire.notBefore": "2027-03-01" },
    near: { "tasks.wire.notBefore": "2027-03-01", "tasks.wire.note": "The electrician is away until then." },
    path: "tasks[7]",
    ids: ["wire"],
  },
  // As written draw 1-4 Feb, dig and pour until 16 Feb, against an order of 4 days: its float is that of the longer way.
  "high-float": {
    found: { "tasks.pour.duration": [40, 45, 60] },
    near: { "tasks.pour.duration": [40, 44, 60], "tasks.dig.duration": 0 },
    path: "tasks[2]",
    ids: ["order"],
  },
  "negative-float": {
    found: { "commitment.finishBy": "2027-03-03" },
    near: { "commitment.finishBy": "2027-03-04" },
    path: "commitment.finishBy",
    ids: ["draw", "dig", "pour", "frame", "roof", "wire", "paint"],
  },
  "long-task": {
    found: { "tasks.pour.duration": [40, 45, 60] },
    near: { "tasks.pour.duration": [40, 44, 60] },
    path: "tasks[4]",
    ids: ["pour"],
  },
  "date-past": {
    found: { "tasks.pour.target": "2027-03-31" },
    near: { "tasks.pour.target": "2027-04-01" },
    path: "tasks[4].target",
    ids: ["pour"],
    today: "2027-04-01",
  },
  "status-missing": { found: {}, near: { statusDate: "2027-02-01" }, path: "start", today: "2027-02-02" },
  "status-stale": {
    found: { statusDate: "2027-02-01" },
    near: { statusDate: "2027-02-02" },
    path: "statusDate",
    today: "2027-03-09",
  },
  "remaining-missing": {
    found: { statusDate: "2027-02-02", "tasks.draw.started": "2027-02-01" },
    near: { statusDate: "2027-02-02", "tasks.draw.started": "2027-02-01", "tasks.draw.remaining": [1, 2, 4] },
    path: "tasks[1]",
    ids: ["draw"],
  },
  "out-of-sequence": {
    found: {
      statusDate: "2027-02-02",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.remaining": [1, 2, 4],
    },
    near: {
      statusDate: "2027-02-02",
      "tasks.approved.finished": "2027-02-01",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.remaining": [1, 2, 4],
    },
    path: "tasks[0]",
    ids: ["approved", "draw"],
  },
  "missed-task": {
    found: {
      statusDate: "2027-02-05",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.finished": "2027-02-05",
    },
    near: {
      statusDate: "2027-02-05",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.finished": "2027-02-04",
    },
    path: "tasks[1]",
    ids: ["draw"],
  },
  // Without `paint` the milestone behind it still stands at its date; two days later it would move.
  "path-does-not-respond": {
    found: {
      "tasks.handed-over.notBefore": "2027-03-12",
      "tasks.frame.notBefore": "2027-03-01",
      "tasks.frame.note": "Wood comes by ship.",
      "tasks.pour.duration": [8, 12, 20],
    },
    near: { "tasks.frame.notBefore": "2027-02-05", "tasks.frame.note": "Wood comes by ship." },
    path: "tasks[1]",
    ids: ["draw"],
  },
  // 22 of the 24 working days as written are 0.917, 23 are 0.958.
  "cpli-low": {
    found: { "commitment.finishBy": "2027-03-02" },
    near: { "commitment.finishBy": "2027-03-03" },
    path: "commitment.finishBy",
  },
  "bei-low": {
    found: {
      statusDate: "2027-02-10",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.finished": "2027-02-04",
      "tasks.order.started": "2027-02-05",
      "tasks.order.remaining": 2,
      "tasks.dig.started": "2027-02-05",
      "tasks.dig.finished": "2027-02-10",
    },
    near: {
      statusDate: "2027-02-10",
      "tasks.draw.started": "2027-02-01",
      "tasks.draw.finished": "2027-02-04",
      "tasks.order.started": "2027-02-05",
      "tasks.order.finished": "2027-02-10",
      "tasks.dig.started": "2027-02-05",
      "tasks.dig.finished": "2027-02-10",
    },
    path: "statusDate",
  },
  "redundant-link": {
    found: { "tasks.pour.after": ["draw", "dig"] },
    near: { "tasks.pour.after": [{ task: "draw", lag: 9 }, "dig"] },
    path: "tasks[4].after[0]",
    ids: ["pour", "draw"],
  },
};
