import type { registerRules } from "../../../../packages/core/src/findings/rules/register.ts";
import { type Edits, TODAY } from "../cleanPlan.ts";
import type { Case } from "./case.ts";

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

export const registerCases: Record<(typeof registerRules)[number]["code"], Case> = {
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
};
