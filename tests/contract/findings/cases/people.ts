import type { peopleRules } from "../../../../packages/core/src/findings/rules/people.ts";
import type { Case } from "./case.ts";
import { each } from "./eachTask.ts";

export const peopleCases: Record<(typeof peopleRules)[number]["code"], Case> = {
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
};
