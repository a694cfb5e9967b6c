import type { DrivingPath, Paths, TaskIndices } from "@leeway/core";
import { longName, markup, rightToLeft } from "./hardExplanations.ts";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

/** Names of the sample plan's tasks by id. Invented data. */
const names: Record<string, string> = {
  go: "Funding agreed",
  survey: "Survey of the quay wall",
  design: "Design",
  permit: "Permit decided",
  tender: "Builder chosen",
  roof: "Roof and windows",
  fit: "Shelving and desks",
  heat: "Heat pump delivered and set working",
  books: "Books moved back",
  open: "Doors open",
};

const path = (share: number, tasks: string[], waits: Record<string, string> = {}): DrivingPath => ({
  tasks,
  names: tasks.map((id) => names[id] ?? id),
  ways: tasks.map((id, k) => {
    const person = waits[id];
    if (person !== undefined) return { kind: "person", person: { id: person, name: person } };
    return { kind: k === 0 ? "plan-start" : "link" };
  }),
  share,
});

export const samplePathList: DrivingPath[] = [
  path(0.42, ["go", "survey", "design", "permit", "roof", "fit", "books", "open"]),
  path(0.23, ["go", "survey", "design", "permit", "heat", "books", "open"]),
  path(0.14, ["go", "survey", "design", "tender", "roof", "fit", "books", "open"], { roof: "Ilse Marr" }),
  path(0.06, ["go", "survey", "design", "tender", "heat", "books", "open"]),
  path(0.034, ["go", "design", "permit", "roof", "fit", "open"]),
];

const task = (id: string, criticality: number, daysAtStake?: number, slack?: number): TaskIndices => ({
  id,
  name: names[id] ?? id,
  criticality,
  significance: Math.min(1, criticality * 1.1),
  cruciality: criticality * 0.6,
  scheduleSensitivity: criticality * 0.3,
  ...(slack === undefined ? {} : { slack }),
  ...(daysAtStake === undefined ? {} : { daysAtStake }),
});

export const sampleIndices: TaskIndices[] = [
  task("open", 1, 0, 0),
  task("books", 0.97, 2.3, 0.1),
  task("design", 0.94, 3.9, 0.4),
  task("survey", 0.9, 2.2, 0.9),
  task("permit", 0.71, 12.6, 4),
  task("roof", 0.59, 7.4, 5.5),
  task("heat", 0.3, 2.8, 11),
  task("tender", 0.2, undefined, 19),
  task("go", 0, undefined),
];

/** The driving paths of the sample plan. */
export function samplePaths(paths = samplePathList, tasks = sampleIndices, different = 31): Paths {
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    confidence: 0.8,
    committed: { date: "2027-11-02", day: 274.6, workingDays: 196 },
    paths,
    different,
    tasks,
  };
}

/** Paths at the edges of what a plan can give, by name. */
export function hardPaths(): Record<string, Paths> {
  const renamed = (name: string) =>
    samplePaths(
      samplePathList.map((each) => ({
        ...each,
        names: each.names.map((_, k) => `${name} ${k}`),
        ways: each.ways.map((way) =>
          way.person === undefined ? way : { ...way, person: { id: "p", name } },
        ),
      })),
      sampleIndices.map((each) => ({ ...each, name })),
    );
  const many = Array.from({ length: 60 }, (_, k) => `s${k}`);
  return {
    "no path": samplePaths([], [], 0),
    "one path in every future": samplePaths(
      [path(1, ["go", "design", "open"])],
      sampleIndices.slice(0, 1),
      1,
    ),
    "one task": samplePaths([path(1, ["open"])], [task("open", 1, 3, 0)], 1),
    "all equal": samplePaths(
      samplePathList.map((each) => ({ ...each, share: 0.2 })),
      sampleIndices.map((each) => ({ ...each, criticality: 0.5, daysAtStake: 2 })),
      5,
    ),
    "a path within another": samplePaths(
      [path(0.5, ["go", "open"]), path(0.5, ["go", "design", "open"])],
      [],
      2,
    ),
    "nothing at stake": samplePaths(
      undefined,
      sampleIndices.map((each) => ({ ...each, daysAtStake: 0 })),
    ),
    "sixty tasks a path": samplePaths(
      [0.002, 0.001].map((share) => path(share, many)),
      many.map((id, k) => task(id, 1 - k / 60, k % 7)),
      4000,
    ),
    "very long names": renamed(longName),
    "right to left": renamed(rightToLeft),
    "markup for names": renamed(markup),
  };
}
