import type { FindingCode } from "@leeway/core";
import { cleanPlan, type Edits, TODAY } from "./cleanPlan.ts";

/** What brings one finding about, and what nearly does. */
export interface Case {
  found: Edits;
  near: Edits;
  /** Where, and about what. */
  path: string;
  ids?: string[];
  today?: string;
}

const tasks = cleanPlan().tasks;
const work = tasks.filter((task) => !("milestone" in task)).map(({ id }) => id);
/** The same edit of every task that takes time, or of all but a few. */
const each = (key: string, value: unknown, but: string[] = []): Edits =>
  Object.fromEntries(work.filter((id) => !but.includes(id)).map((id) => [`tasks.${id}.${key}`, value]));
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
const threat = (id: string, more: object = {}) => ({
  id,
  name: `Trouble ${id}`,
  owner: "omar",
  probability: 0.1,
  impacts: { cost: 100 },
  note: "Borne.",
  ...more,
});
const threats = Object.fromEntries(["one", "two", "three"].map((id, k) => [`risks.${k + 1}`, threat(id)]));
/** The first task is done. */
const drawn: Edits = {
  statusDate: "2027-02-05",
  "tasks.draw.started": "2027-02-01",
  "tasks.draw.finished": "2027-02-04",
};

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

const approved: Edits = { "approvals.0": { who: "chair", decision: "approve", date: "2027-01-05" } };
const approvedOther: Edits = {
  "approvals.0": { who: "chair", decision: "approve", date: "2027-01-05", plan: "another" },
};
/** Looked at on 15 January, the day of all cases. */
const onCondition = (conditionsBy: string): Edits => ({
  "approvals.0": {
    ...{ who: "chair", decision: "approve-subject-to", date: "2027-01-05" },
    ...{ conditions: "A scaffold is found", conditionsBy },
  },
});
/** Frost has come and the pouring is under way: days on top of what remains of it, or none. */
const begunInFrost = (days: number): Edits => ({
  statusDate: "2027-02-12",
  "tasks.pour.started": "2027-02-10",
  "tasks.pour.remaining": 4,
  "risks.frost.status": "occurred",
  "risks.frost.impacts": { tasks: "pour", delay: 3 },
  "risks.frost.actual": { days },
});
const spentOnFrost = (more: Edits): Edits => ({
  statusDate: "2027-02-12",
  "tasks.pour.started": "2027-02-10",
  "tasks.pour.spent": 900,
  "risks.frost.status": "occurred",
  "risks.frost.impacts": { tasks: "pour", cost: [100, 200, 400] },
  ...more,
});

/** One row for each code of the table. Sources of the rules are in the table itself. */
export const cases: Record<FindingCode, Case> = {
  "purpose-missing": {
    found: { purpose: undefined, ...each("scope", undefined), benefits: undefined },
    near: { purpose: { problem: "Rust." }, ...each("scope", undefined), benefits: undefined },
    path: "",
  },
  "problem-missing": {
    found: { "purpose.problem": undefined },
    near: { "purpose.problem": "Rust." },
    path: "purpose",
  },
  "goals-missing": {
    found: { "purpose.goals": undefined, "benefits.0.goal": undefined },
    near: { "purpose.goals.0.measure": undefined },
    path: "purpose",
  },
  "goal-incomplete": {
    found: { "purpose.goals.0.measure": undefined },
    near: { "purpose.goals.0.note": "Agreed." },
    path: "purpose.goals[0]",
    ids: ["dry-tools"],
  },
  "goal-unserved": {
    found: { "benefits.0.goal": undefined },
    near: { benefits: undefined },
    path: "purpose.goals[0]",
    ids: ["dry-tools"],
  },
  "scope-missing": {
    found: { "purpose.scope.in": undefined, ...each("scope", undefined) },
    near: { "purpose.scope.out": undefined },
    path: "purpose",
  },
  "task-without-scope": {
    found: { "tasks.dig.scope": undefined },
    near: { "tasks.approved.scope": undefined },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "scope-without-task": {
    found: { "purpose.scope.in.1": { id: "door", name: "A door" } },
    near: { "purpose.scope.in.1": { id: "door", name: "A door" }, "tasks.wire.scope": "door" },
    path: "purpose.scope.in[1]",
    ids: ["door"],
  },
  "scope-out-empty": {
    found: { "purpose.scope.out": undefined },
    near: { "purpose.scope.out": ["A path"] },
    path: "purpose",
  },
  "constraints-empty": {
    found: { "purpose.constraints": undefined },
    near: { "purpose.constraints": ["None on Sundays."] },
    path: "purpose",
  },
  "quality-missed": {
    found: { "purpose.quality": [{ id: "dry", statement: "Damp inside", atMost: 60, measured: 61 }] },
    near: { "purpose.quality": [{ id: "dry", statement: "Damp inside", atMost: 60, measured: 60 }] },
    path: "purpose.quality[0]",
    ids: ["dry"],
  },
  "quality-unknown": {
    found: { "purpose.quality": [{ id: "dry", statement: "Damp inside", atMost: 60 }] },
    near: {
      "purpose.quality": [{ id: "dry", statement: "Damp inside", atMost: 60, expected: [40, 50, 60] }],
    },
    path: "purpose.quality[0]",
    ids: ["dry"],
  },
  "benefits-missing": { found: { benefits: undefined }, near: { appraisal: undefined }, path: "" },
  "benefit-incomplete": {
    found: { "benefits.0.owner": undefined },
    near: { "benefits.0.amount": undefined, "benefits.0.quantity": 12 },
    path: "benefits[0]",
    ids: ["tools-saved"],
  },
  "appraisal-missing": {
    found: { appraisal: undefined },
    near: { appraisal: undefined, "benefits.0.amount": undefined, "benefits.0.quantity": 12 },
    path: "benefits",
    ids: ["tools-saved"],
  },

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

  "register-empty": {
    found: { risks: undefined, assumptions: undefined },
    near: { risks: undefined },
    path: "",
  },
  "entry-without-owner": {
    found: { "risks.frost.owner": undefined },
    near: { "risks.frost.owner": undefined, "risks.frost.status": "closed" },
    path: "risks[0]",
    ids: ["frost"],
  },
  "no-response": {
    found: { "risks.frost.responses": undefined },
    near: { "risks.frost.responses": undefined, "risks.frost.note": "Borne." },
    path: "risks[0]",
    ids: ["frost"],
  },
  "response-undecided": {
    found: { "risks.frost.responses.0.adopted": false },
    near: { "risks.frost.responses.0.adopted": false, "risks.frost.note": "Decided in March." },
    path: "risks[0]",
    ids: ["frost"],
  },
  "response-overdue": {
    found: { "risks.frost.responses.0.due": "2027-01-14" },
    near: { "risks.frost.responses.0.due": TODAY },
    path: "risks[0].responses[0]",
    ids: ["blankets"],
  },
  "response-incomplete": {
    found: { "risks.frost.responses.0.cost": undefined },
    near: { "risks.frost.responses.0.cost": 0 },
    path: "risks[0].responses[0]",
    ids: ["blankets"],
  },
  "certain-entry": {
    found: { "risks.frost.probability": 1 },
    near: { "risks.frost.probability": 1, "risks.frost.status": "occurred" },
    path: "risks[0]",
    ids: ["frost"],
  },
  "cause-twice": {
    found: {
      correlations: { between: ["pour", "frame"], coefficient: 0.4, cause: "Frost in a cold spring" },
    },
    near: { correlations: { between: ["roof", "frame"], coefficient: 0.4, cause: "Frost in a cold spring" } },
    path: "risks[0]",
    ids: ["frost", "pour"],
  },
  "entry-expired": {
    found: { "risks.frost.expires": "2027-01-14" },
    near: { "risks.frost.expires": TODAY },
    path: "risks[0].expires",
    ids: ["frost"],
  },
  "review-overdue": {
    found: { "assumptions.dry-ground.reviewBy": "2027-01-14" },
    near: { "assumptions.dry-ground.reviewBy": TODAY },
    path: "assumptions[0].reviewBy",
    ids: ["dry-ground"],
  },
  "impact-nowhere": {
    found: { "risks.frost.impacts": undefined },
    near: { "risks.frost.impacts": { cost: 500 } },
    path: "risks[0]",
    ids: ["frost"],
  },
  "entry-outlived": {
    found: {
      ...drawn,
      "risks.frost.expires": undefined,
      "risks.frost.impacts": { tasks: "draw", cost: 500 },
    },
    near: { ...drawn, "risks.frost.impacts": { tasks: "draw", cost: 500 } },
    path: "risks[0]",
    ids: ["frost"],
  },
  "signpost-missing": {
    found: { "assumptions.dry-ground.signpost": undefined },
    near: { "assumptions.dry-ground.signpost": undefined, "assumptions.dry-ground.status": "closed" },
    path: "assumptions[0]",
    ids: ["dry-ground"],
  },
  "only-threats": {
    found: { ...threats, "risks.4": threat("four") },
    near: { ...threats, "risks.4": threat("four", { impacts: { cost: -100 } }) },
    path: "risks",
  },
  // No three draws can move 0.9 together pair by pair where one pair moves 0.9 apart.
  "correlations-repaired": {
    found: {
      correlations: [
        { between: ["draw", "dig"], coefficient: 0.9 },
        { between: ["dig", "roof"], coefficient: 0.9 },
        { between: ["draw", "roof"], coefficient: -0.9 },
      ],
    },
    near: {
      correlations: [
        { between: ["draw", "dig"], coefficient: 0.9 },
        { between: ["dig", "roof"], coefficient: 0.9 },
        { between: ["draw", "roof"], coefficient: 0.9 },
      ],
    },
    path: "correlations",
  },

  "nobody-accountable": {
    found: each("accountable", undefined),
    near: each("accountable", undefined, ["dig"]),
    path: "tasks",
  },
  "accountable-missing": {
    found: { "tasks.dig.accountable": undefined },
    near: {
      "tasks.dig.accountable": undefined,
      "tasks.dig.phase": "Ground",
      phases: { name: "Ground", accountable: "omar" },
    },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "accountable-several": {
    found: { "tasks.dig.accountable": ["omar", "chair"] },
    near: { "tasks.dig.accountable": ["omar", "omar"] },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "task-without-people": {
    found: { "tasks.dig.people": undefined },
    near: { "tasks.dig.people": undefined, "tasks.dig.cost": 100 },
    path: "tasks[3]",
    ids: ["dig"],
  },
  "no-people": {
    found: {
      people: undefined,
      stakeholders: [
        { id: "omar", name: "Omar" },
        { id: "chair", name: "Chair" },
        { id: "lena", name: "Lena" },
      ],
      ...each("people", undefined),
    },
    near: { ...each("people", undefined) },
    path: "",
  },
  "over-allocated": {
    found: { respectCapacity: false, "tasks.roof.people": "lena" },
    near: { respectCapacity: true, "tasks.roof.people": "lena" },
    path: "people[0]",
    ids: ["lena"],
  },
  "path-on-one-person": {
    found: { "tasks.roof.duration": [2, 3, 6] },
    near: {},
    path: "people[0]",
    ids: ["lena"],
  },
  "away-in-task": {
    found: { "people.lena.away": "2027-02-02" },
    near: { "people.lena.away": { from: "2027-02-01", to: "2027-02-01" } },
    path: "tasks[1]",
    ids: ["draw", "lena"],
  },
  "rate-missing": {
    found: { "people.lena.rate": undefined },
    near: { "people.lena.rate": undefined, "people.omar.rate": undefined },
    path: "people[0]",
    ids: ["lena"],
  },
  "person-unused": {
    found: { "people.2": { id: "mia", name: "Mia", rate: 1 } },
    near: { "people.2": { id: "mia", name: "Mia", rate: 1 }, "tasks.dig.consulted": "mia" },
    path: "people[2]",
    ids: ["mia"],
  },

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

  "change-unexplained": {
    found: { ...approved, changes: { date: "2027-01-06", who: "omar", what: "A bigger door" } },
    near: { ...approved, changes: { date: "2027-01-04", who: "omar", what: "A bigger door" } },
    path: "changes[0]",
  },
  "change-unlogged": {
    found: approvedOther,
    near: {
      ...approvedOther,
      changes: { date: "2027-01-05", who: "omar", what: "A door", why: "It rains", approvedBy: "chair" },
    },
    path: "approvals[0]",
    ids: ["chair"],
  },
  "conditions-lapsed": {
    found: onCondition("2027-01-14"),
    near: onCondition("2027-01-15"),
    path: "approvals[0]",
    ids: ["chair"],
  },
  "occurred-in-remaining": {
    found: begunInFrost(2),
    near: begunInFrost(0),
    path: "risks[0]",
    ids: ["frost", "pour"],
  },
  "occurred-in-spent": {
    found: spentOnFrost({}),
    near: spentOnFrost({ "risks.frost.actual": { cost: 150 } }),
    path: "risks[0]",
    ids: ["frost", "pour"],
  },
  "objection-open": {
    found: { objections: { id: "too-dear", text: "Too dear" } },
    near: { objections: { id: "too-dear", text: "Too dear", state: "answered" } },
    path: "objections[0]",
    ids: ["too-dear"],
  },
  "acceptance-unused": {
    found: { acceptedFindings: { finding: "lead", who: "omar", date: "2027-01-10", why: "Known." } },
    near: {
      "tasks.wire.after": { task: "frame", lag: -1 },
      acceptedFindings: { finding: "lead", who: "omar", date: "2027-01-10", why: "Known." },
    },
    path: "acceptedFindings[0]",
  },
};
