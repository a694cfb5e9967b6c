import { describe, expect, it } from "vitest";
import { compare, type MoveKind, planFromData } from "../../../packages/core/src/index.ts";

/**
 * Each change as one plain sentence with its figures and units. The sentences were written by hand before they were
 * compared; how changes are told to people who approve money is common practice, no source.
 */

const base = () => ({
  format: 1 as const,
  title: "Sentences",
  start: "2027-02-01",
  iterations: 20,
  calendar: "town",
  calendars: { town: { holidays: ["2027-03-26"] } } as Record<
    string,
    { workdays?: string[]; holidays?: unknown[] }
  >,
  commitment: { confidence: 0.8, finishBy: "2027-10-01", budget: 5000 } as Record<string, unknown>,
  statusDate: undefined as string | undefined,
  respectCapacity: undefined as boolean | undefined,
  people: [
    { id: "ann", name: "Ann", rate: 400, capacity: 1 },
    { id: "bo", name: "Bo" },
  ] as Record<string, unknown>[],
  tasks: [
    { id: "permit", name: "Permit decision", duration: { low: 20, likely: 25, high: 45, bounds: "p10-p90" } },
    { id: "inspect", name: "Inspection", duration: [1, 2, 4] },
    {
      id: "wire",
      name: "Electrical work",
      effort: [4, 6, 9],
      people: ["ann"],
      after: ["permit"],
      cost: 4000,
    },
    { id: "open", name: "Opening", milestone: true, after: [{ task: "wire", lag: 2 }] },
  ] as Record<string, unknown>[],
  risks: [
    {
      id: "chairs",
      name: "Chairs slip",
      probability: 0.25,
      impacts: { tasks: "inspect", delay: [15, 20, 35] },
      responses: [
        { id: "stock", action: "Reserve stock", cost: 4000, probability: 0.1 },
        { id: "second", action: "Second source", scale: 0.5 },
      ],
    },
  ] as Record<string, unknown>[],
  assumptions: [{ id: "grant", statement: "The grant comes in March", chanceWrong: 0.1 }] as Record<
    string,
    unknown
  >[],
  overheads: [{ id: "rent", name: "Rent", perDay: 550 }] as Record<string, unknown>[],
  note: undefined as string | undefined,
});
type Base = ReturnType<typeof base>;

function compared(edit: (document: Base) => void) {
  const plan = (document: unknown) => {
    const read = planFromData(JSON.parse(JSON.stringify(document)));
    if (read.plan === undefined) throw new Error(JSON.stringify(read.problems));
    return read.plan;
  };
  const changed = base();
  edit(changed);
  const { comparison, problems } = compare(plan(base()), plan(changed));
  if (comparison === undefined) throw new Error(JSON.stringify(problems));
  return comparison;
}

function item(list: Record<string, unknown>[], id: string): Record<string, unknown> {
  const found = list.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}
const range = (low: number, likely: number, high: number) => ({ low, likely, high, bounds: "p10-p90" });
const responses = (document: Base) => item(document.risks, "chairs").responses as Record<string, unknown>[];

const cases: [what: string, kind: MoveKind, edit: (document: Base) => void][] = [
  [
    "Permit decision: P90 from 45 to 60 working days",
    "estimates",
    ({ tasks }) => Object.assign(item(tasks, "permit"), { duration: range(20, 25, 60) }),
  ],
  [
    "Permit decision: P10 from 20 to 22, likely from 25 to 30 and P90 from 45 to 60 working days",
    "estimates",
    ({ tasks }) => Object.assign(item(tasks, "permit"), { duration: range(22, 30, 60) }),
  ],
  [
    "Permit decision: from P10 20, likely 25, P90 45 working days to 1 week",
    "estimates",
    ({ tasks }) =>
      Object.assign(item(tasks, "permit"), {
        duration: { outcomes: [{ value: 1, chance: 1 }], unit: "weeks" },
      }),
  ],
  [
    "Inspection: highest from 4 to 6.5 working days",
    "estimates",
    ({ tasks }) => Object.assign(item(tasks, "inspect"), { duration: [1, 2, 6.5] }),
  ],
  [
    "Inspection: from lowest 1, likely 2, highest 4 working days to 2 working days (75 %) or 8 working days (25 %)",
    "estimates",
    ({ tasks }) =>
      Object.assign(item(tasks, "inspect"), {
        duration: {
          outcomes: [
            { value: 2, chance: 0.75 },
            { value: 8, chance: 0.25 },
          ],
        },
      }),
  ],
  [
    "Electrical work: likely from 6 to 7 person-days",
    "estimates",
    ({ tasks }) => Object.assign(item(tasks, "wire"), { effort: [4, 7, 9] }),
  ],
  [
    "Electrical work: cost from EUR 4,000 to EUR 4,500",
    "money",
    ({ tasks }) => Object.assign(item(tasks, "wire"), { cost: 4500 }),
  ],
  [
    "Electrical work now also waits for Inspection",
    "logic",
    ({ tasks }) => Object.assign(item(tasks, "wire"), { after: ["permit", "inspect"] }),
  ],
  [
    "Electrical work no longer waits for Permit decision",
    "logic",
    ({ tasks }) => Object.assign(item(tasks, "wire"), { after: [] }),
  ],
  [
    "Opening: lag after Electrical work from 2 to 5 working days",
    "logic",
    ({ tasks }) => Object.assign(item(tasks, "open"), { after: [{ task: "wire", lag: 5 }] }),
  ],
  [
    "Inspection: not before Mon 1 Mar 2027",
    "logic",
    ({ tasks }) => Object.assign(item(tasks, "inspect"), { notBefore: "2027-03-01" }),
  ],
  [
    "Chairs slip: response “Reserve stock” adopted, chance from 25 % to 10 %, for EUR 4,000",
    "risks",
    (document) => Object.assign(item(responses(document), "stock"), { adopted: true }),
  ],
  [
    "Chairs slip: response “Second source” adopted, 50 % of the impact remains",
    "risks",
    (document) => Object.assign(item(responses(document), "second"), { adopted: true }),
  ],
  [
    "Chairs slip: chance from 25 % to 12.5 %",
    "risks",
    ({ risks }) => Object.assign(item(risks, "chairs"), { probability: 0.125 }),
  ],
  [
    "Chairs slip: delay of Inspection highest from 35 to 40 working days",
    "risks",
    ({ risks }) =>
      Object.assign(item(risks, "chairs"), { impacts: { tasks: "inspect", delay: [15, 20, 40] } }),
  ],
  [
    "Chairs slip: has happened",
    "risks",
    ({ risks }) => Object.assign(item(risks, "chairs"), { status: "occurred" }),
  ],
  [
    "The grant comes in March: chance of being wrong from 10 % to 40 %",
    "risks",
    ({ assumptions }) => Object.assign(item(assumptions, "grant"), { chanceWrong: 0.4 }),
  ],
  [
    "Flood: new risk, 5 %: cost EUR 900",
    "risks",
    ({ risks }) => risks.push({ id: "flood", name: "Flood", probability: 0.05, impacts: { cost: 900 } }),
  ],
  [
    "Testing: new task, lowest 1, likely 2, highest 3 working days, after Electrical work",
    "scope",
    ({ tasks }) => tasks.push({ id: "test", name: "Testing", duration: [1, 2, 3], after: ["wire"] }),
  ],
  [
    "Inspection: task left out (it was lowest 1, likely 2, highest 4 working days); Chairs slip: touches Permit decision, no longer Inspection",
    "scope",
    (document) => {
      document.tasks = document.tasks.filter(({ id }) => id !== "inspect");
      Object.assign(item(document.risks, "chairs"), { impacts: { tasks: "permit", delay: [15, 20, 35] } });
    },
  ],
  [
    "Inspection: chance that it is needed from 100 % to 40 %",
    "scope",
    ({ tasks }) => Object.assign(item(tasks, "inspect"), { chance: 0.4 }),
  ],
  [
    "Ann: rate from EUR 400 to EUR 450 a day",
    "money",
    ({ people }) => Object.assign(item(people, "ann"), { rate: 450 }),
  ],
  [
    "Ann: capacity from 1 to 2",
    "people",
    ({ people }) => Object.assign(item(people, "ann"), { capacity: 2 }),
  ],
  [
    "Ann: away Mon 15 Mar 2027 to Fri 19 Mar 2027",
    "people",
    ({ people }) => Object.assign(item(people, "ann"), { away: { from: "2027-03-15", to: "2027-03-19" } }),
  ],
  [
    "Electrical work: Bo works on it",
    "people",
    ({ tasks }) => Object.assign(item(tasks, "wire"), { people: ["ann", "bo"] }),
  ],
  [
    "Calendar town: days off added: Mon 29 Mar 2027",
    "calendar",
    ({ calendars }) => Object.assign(calendars.town ?? {}, { holidays: ["2027-03-26", "2027-03-29"] }),
  ],
  [
    "The plan's calendar: from town to weekdays",
    "calendar",
    (document) => Object.assign(document, { calendar: "weekdays" }),
  ],
  [
    "Rent: from EUR 550 to EUR 600 a day",
    "money",
    ({ overheads }) => Object.assign(item(overheads, "rent"), { perDay: 600 }),
  ],
  [
    "The finish promised: of Opening, no longer of the whole plan",
    "other",
    ({ commitment }) => Object.assign(commitment, { finishOf: "open" }),
  ],
  [
    "People no longer kept within their capacity",
    "people",
    (document) => Object.assign(document, { respectCapacity: false }),
  ],
  [
    "Progress recorded up to Fri 5 Mar 2027: Inspection started Mon 1 Mar 2027, finished Wed 3 Mar 2027",
    "actuals",
    (document) => {
      document.statusDate = "2027-03-05";
      Object.assign(item(document.tasks, "inspect"), { started: "2027-03-01", finished: "2027-03-03" });
    },
  ],
];

describe("a move in words", () => {
  it.each(cases)("%s", (what, kind, edit) => {
    const { moves, alsoChanged } = compared(edit);
    expect(moves.map((move) => ({ what: move.what, kind: move.kind }))).toEqual([{ what, kind }]);
    expect(alsoChanged).toEqual([]);
  });

  const quiet: [text: string, edit: (document: Base) => void][] = [
    [
      "Date asked for: from Fri 1 Oct 2027 to Fri 29 Oct 2027",
      ({ commitment }) => Object.assign(commitment, { finishBy: "2027-10-29" }),
    ],
    [
      "Sum asked for: from EUR 5,000 to EUR 6,000",
      ({ commitment }) => Object.assign(commitment, { budget: 6000 }),
    ],
    [
      "Permit decision: note and basis",
      ({ tasks }) => Object.assign(item(tasks, "permit"), { note: "Asked.", basis: "The office" }),
    ],
    [
      "Chairs slip: response “Reserve stock”: cost",
      (document) => Object.assign(item(responses(document), "stock"), { cost: 5000 }),
    ],
    ["Chairs slip: owner", ({ risks }) => Object.assign(item(risks, "chairs"), { owner: "ann" })],
    ["Bo: role", ({ people }) => Object.assign(item(people, "bo"), { role: "Electrician" })],
    [
      "What is to be decided: what is asked and date of the decision",
      (document) => Object.assign(document, { decision: { ask: "Say yes", by: "2027-01-20" } }),
    ],
    [
      "Accepted findings: 1 more entry",
      (document) =>
        Object.assign(document, {
          acceptedFindings: { finding: "no-owner", who: "ann", date: "2027-01-04", why: "Known" },
        }),
    ],
    [
      "Permit decision: what people said of it",
      ({ tasks }) =>
        Object.assign(item(tasks, "permit"), {
          opinions: { by: "ann", ...range(22, 26, 50) },
        }),
    ],
    ["The plan: note", (document) => Object.assign(document, { note: "Second round" })],
  ];
  it.each(quiet)("%s: moves nothing and is listed apart", (text, edit) => {
    const { moves, alsoChanged, difference } = compared(edit);
    expect(moves).toEqual([]);
    expect(difference).toEqual({ workingDays: 0, money: 0 });
    expect(alsoChanged).toEqual([text]);
  });
});
