import { type Broken, pair, plan, task } from "./broken.ts";

export const TASKS: Broken[] = [
  task("neither duration nor effort", "priority: 1", "no-duration", "", "needs `duration` or `effort`"),
  plan(
    "both duration and effort",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, duration: 1, effort: 1, people: p }",
    "duration-and-effort",
    "tasks.effort",
    "not both",
  ),
  task("effort without a person", "effort: 3", "effort-without-people", "effort", "Effort needs a person"),
  plan(
    "effort with shares of nothing",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, effort: 1, people: { id: p, share: 0 } }",
    "effort-without-people",
    "tasks.effort",
    "sum to 0",
  ),
  task(
    "a milestone with a duration",
    "milestone: true, duration: 1",
    "milestone-key",
    "duration",
    "has no `duration`",
  ),
  plan(
    "a milestone with people",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, milestone: start, people: p }",
    "milestone-key",
    "tasks.people",
    "has no `people`",
  ),
  pair(
    "a link made twice",
    "after: [a, { task: a, link: finish-to-start }]",
    "repeated-link",
    "tasks[1].after[1]",
    "a is linked finish-to-start twice.",
  ),
  plan(
    "a loop shows its way",
    "tasks:\n - { id: a, name: A, duration: 1, after: c }\n - { id: b, name: B, duration: 1, after: a }\n - { id: c, name: C, duration: 1, after: { task: b, link: start-to-start } }\n",
    "loop",
    "tasks[0].after",
    "a -> b -> c -> a",
    { at: "c }" },
  ),
  task("a task after itself", "duration: 1, after: a", "loop", "after", "a -> a"),
  plan(
    "a share above capacity",
    "people: { id: tam, name: Tam, capacity: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: { id: tam, share: 1 } }",
    "share-above-capacity",
    "tasks.people.share",
    "`share` 1 of Tam is more than Tam's capacity 0.5. Write at most 0.5.",
  ),
  plan(
    "capacity that could be added, but none",
    "people: { id: tam, name: Tam, couldAdd: { capacity: 0 } }",
    "out-of-range",
    "people.couldAdd.capacity",
    "above 0",
  ),
  plan(
    "capacity that could be added, unsaid",
    "people: { id: tam, name: Tam, couldAdd: { cost: 500 } }",
    "missing-key",
    "people.couldAdd",
    "needs `capacity`",
  ),
  plan(
    "capacity that could be added at a price below nought",
    "people: { id: tam, name: Tam, couldAdd: { capacity: 0.2, cost: -500 } }",
    "out-of-range",
    "people.couldAdd.cost",
    "at least 0",
  ),
  plan(
    "a bare person above capacity",
    "people: { id: tam, name: Tam, capacity: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: [tam] }",
    "share-above-capacity",
    "tasks.people[0]",
    "Give Tam `share: 0.5` in `people`",
  ),
  plan(
    "a person named twice",
    "people: { id: p, name: P, share: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: [p, p] }",
    "repeated-person",
    "tasks.people[1]",
    "named twice",
  ),
  plan(
    "an absence that ends before it begins",
    "people: { id: p, name: P, away: { from: 2027-03-02, to: 2027-03-01 } }",
    "dates-reversed",
    "people.away.to",
    "Exchange",
  ),
];

export const PROGRESS: Broken[] = [
  task(
    "progress without a status date",
    "duration: 1, started: 2027-01-04",
    "no-status-date",
    "started",
    "needs the plan's `statusDate`",
  ),
  ...(
    [
      [
        "started before the plan",
        "started: 2027-01-03",
        "progress-date",
        "started",
        "before the plan's `start`",
      ],
      [
        "started after the status date",
        "started: 2027-01-20",
        "progress-date",
        "started",
        "after `statusDate`",
      ],
      [
        "finished without having started",
        "finished: 2027-01-05",
        "progress-order",
        "finished",
        "Add `started`.",
      ],
      [
        "finished before it started",
        "started: 2027-01-06, finished: 2027-01-05",
        "progress-order",
        "finished",
        "finished before it started",
      ],
      ["remaining without having started", "remaining: 2", "progress-order", "remaining", "Add `started`"],
      [
        "remaining of a finished task",
        "started: 2027-01-04, finished: 2027-01-05, remaining: 2",
        "progress-order",
        "remaining",
        "Nothing remains",
      ],
      ["spent without having started", "spent: 2", "progress-order", "spent", "Add `started`."],
    ] as const
  ).map(([name, keys, code, key, says]) =>
    plan(
      name,
      `statusDate: 2027-01-12\ntasks:\n - { id: a, name: A, duration: 1, ${keys} }\n`,
      code,
      `tasks[0].${key}`,
      says,
    ),
  ),
];
