import type { purposeRules } from "../../../../packages/core/src/findings/rules/purpose.ts";
import type { Case } from "./case.ts";
import { each } from "./eachTask.ts";

export const purposeCases: Record<(typeof purposeRules)[number]["code"], Case> = {
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
};
