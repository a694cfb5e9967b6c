import type { signOffRules } from "../../../../packages/core/src/findings/rules/signOff.ts";
import type { Edits } from "../cleanPlan.ts";
import type { Case } from "./case.ts";

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
export const signOffCases: Record<(typeof signOffRules)[number]["code"], Case> = {
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
