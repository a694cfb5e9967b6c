/** Load, waits and losses of small plans, worked by hand. */
import { describe, expect, it } from "vitest";
import type { PeopleLoadOptions } from "../../../packages/core/src/index.ts";
import { peopleLoad } from "../../../packages/core/src/index.ts";
import { crewOfFour } from "../../../packages/core/src/models/index.ts";
import { planFrom } from "../integrated/runPlan.ts";

const iterations = 8;
function loadOf(document: object, options: PeopleLoadOptions = {}) {
  const { people, problems } = peopleLoad(planFrom(document), { iterations, ...options });
  if (people === undefined) throw new Error(JSON.stringify(problems));
  return people;
}
const problemsOf = (document: object, lose: PeopleLoadOptions["lose"]) =>
  peopleLoad(planFrom(document), { iterations, ...(lose === undefined ? {} : { lose }) }).problems;

// Monday 1 March 2027. Ana does b (4 days, the longer tail) and then a (3 days); both could start at once.
const twoTasks = {
  format: 1,
  title: "Two tasks, one person",
  start: "2027-03-01",
  commitment: { finishBy: "2027-03-09", budget: 700 },
  people: [{ id: "ana", name: "Ana", rate: 100 }],
  tasks: [
    { id: "a", name: "A", duration: 3, people: "ana" },
    { id: "b", name: "B", duration: 4, people: "ana" },
  ],
};

describe("two tasks, one person", () => {
  const load = loadOf(twoTasks);
  const [ana] = load.people;

  it("asks for five days in the first week and two in the second, of five present in each", () => {
    expect(load.weeks).toEqual(["2027-03-01", "2027-03-08"]);
    expect([ana?.asked, ana?.present, ana?.over, ana?.away]).toEqual([
      [5, 2],
      [5, 5],
      [0, 0],
      [0, 0],
    ]);
    expect([ana?.mean, ana?.p80]).toEqual([
      [5, 2],
      [5, 2],
    ]);
  });

  it("would ask for seven in the first week, three of them beyond her, if nobody waited", () => {
    expect(ana?.unlimited).toEqual({ asked: [7, 0], over: [3, 0] });
  });

  it("keeps A waiting for Ana behind B for four days, in every future", () => {
    expect(load.waits).toEqual([
      {
        task: { id: "a", name: "A" },
        person: { id: "ana", name: "Ana" },
        behind: { id: "b", name: "B" },
        asWritten: 4,
        mean: 4,
        share: 1,
      },
    ]);
  });

  it("ends three days later than without limits, for the same money", () => {
    expect(load.limits?.effect).toEqual({ workingDays: 3, money: 0 });
    expect([load.limits?.with.date, load.limits?.without.date]).toEqual(["2027-03-09", "2027-03-04"]);
  });

  it("ends two days later when she is away on Wednesday and Thursday", () => {
    // B on Monday, Tuesday, Friday and Monday; A on Tuesday to Thursday the 11th. Nobody is paid for the absence.
    const { loss } = loadOf(twoTasks, { lose: { person: "ana", days: 2, from: "2027-03-03" } });
    expect(loss).toMatchObject({
      from: "2027-03-03",
      to: "2027-03-04",
      days: 2,
      part: 1,
      effect: { workingDays: 2, money: 0 },
      before: { date: "2027-03-09", workingDays: 7, cost: 700 },
      after: { date: "2027-03-11", workingDays: 9, cost: 700 },
      chance: { finishBy: [1, 0], budget: [1, 1], both: [1, 0] },
      stopped: ["b"],
      goOn: [],
    });
  });

  it("counts her own working days: from Saturday on, three days are Monday to Wednesday", () => {
    const { loss } = loadOf(twoTasks, { lose: { person: "ana", days: 3, from: "2027-03-06" } });
    expect([loss?.from, loss?.to, loss?.effect.workingDays]).toEqual(["2027-03-08", "2027-03-10", 3]);
  });

  it("falls where she is needed most when no date is given: every day alike, so the first", () => {
    expect(loadOf(twoTasks, { lose: { person: "ana", days: 1 } }).loss?.from).toBe("2027-03-01");
  });

  it("shows the weeks over capacity when capacity is not respected, and what respecting it would cost", () => {
    const free = loadOf({ ...twoTasks, respectCapacity: false });
    expect(free.people[0]?.asked).toEqual([7]);
    expect(free.people[0]?.over).toEqual([3]);
    expect(free.waits).toEqual([]);
    expect(free.limits?.effect).toEqual({ workingDays: 3, money: 0 });
  });

  it("says nothing of limits that cannot be kept: half as much again of Ana as there is", () => {
    const tasks = [{ id: "a", name: "A", duration: 2, people: { id: "ana", share: 1.5 } }];
    const free = loadOf({ ...twoTasks, tasks, respectCapacity: false });
    expect(free.limits).toBeUndefined();
    expect(free.people[0]?.over).toEqual([1]);
  });
});

describe("everybody lost in turn", () => {
  // Ben's two days come after Ana's week, so his absence from Monday on costs nothing; hers costs its three days.
  const plan = {
    ...twoTasks,
    people: [
      { id: "ben", name: "Ben" },
      { id: "ana", name: "Ana" },
      { id: "cara", name: "Cara" },
    ],
    tasks: [
      { id: "a", name: "A", duration: 5, people: "ana" },
      { id: "b", name: "B", duration: 2, after: "a", people: "ben" },
    ],
  };

  it("puts the worst first, each as if lost alone", () => {
    const lose = { days: 3, from: "2027-03-01" };
    const { losses, loss } = loadOf(plan, { loseEach: lose });
    expect(loss).toBeUndefined();
    expect(losses?.map(({ person, effect }) => [person.id, effect.workingDays])).toEqual([
      ["ana", 3],
      ["ben", 0],
      ["cara", 0],
    ]);
    for (const each of losses ?? []) {
      expect(loadOf(plan, { lose: { ...lose, person: each.person.id } }).loss).toEqual(each);
    }
  });

  it("falls where each is needed most when no date is given", () => {
    const { losses } = loadOf(plan, { loseEach: { days: 1 } });
    expect(losses?.map(({ person, from, effect }) => [person.id, from, effect.workingDays])).toEqual([
      ["ana", "2027-03-01", 1],
      ["ben", "2027-03-08", 1],
      ["cara", "2027-03-01", 0],
    ]);
  });

  it("looks at all futures: Ben works in the third week in most of them, whatever the plan as written says", () => {
    const spread = {
      ...plan,
      tasks: [
        {
          id: "a",
          name: "A",
          duration: {
            outcomes: [
              { value: 5, chance: 0.4 },
              { value: 10, chance: 0.31 },
              { value: 11, chance: 0.29 },
            ],
          },
          people: "ana",
        },
        { id: "b", name: "B", duration: 2, after: "a", people: "ben" },
      ],
    };
    const { people } = peopleLoad(planFrom(spread), { iterations: 1000, loseEach: { days: 2 } });
    const ben = people?.losses?.find(({ person }) => person.id === "ben");
    // As written B is on the 8th and 9th; in 60 % of the futures he works on the 16th, in 31 % also on the 15th, in 29 %
    // on the 17th: 0.31 + 0.6 against 0.4 + 0.4.
    expect([ben?.from, ben?.to]).toEqual(["2027-03-15", "2027-03-16"]);
  });

  it("tells of somebody without whom the work could never be done, and lists the others", () => {
    // Ben works on Mondays alone, and is away for 60 of them: more than the 366 days the format allows a gap to last.
    const lonely = {
      ...plan,
      calendars: { mondays: { workdays: ["mon"] } },
      people: [
        { id: "ben", name: "Ben", calendar: "mondays" },
        { id: "ana", name: "Ana" },
      ],
    };
    const { people, problems } = peopleLoad(planFrom(lonely), { iterations, loseEach: { days: 60 } });
    expect(people?.losses?.map(({ person }) => person.id)).toEqual(["ana"]);
    expect(problems.map(({ severity, received }) => [severity, received])).toEqual([
      ["warning", "without `ben`"],
    ]);
    const alone = peopleLoad(planFrom(lonely), { iterations, lose: { person: "ben", days: 60 } });
    expect(alone.people).toBeUndefined();
    expect(alone.problems.map(({ severity }) => severity)).toEqual(["error"]);
  });
});

describe("people who go along, part-time absences and crews", () => {
  it("lets a task go on without a person who goes along, and counts the days somebody stands in", () => {
    const plan = {
      ...twoTasks,
      people: [{ id: "ana", name: "Ana", away: { from: "2027-03-02", to: "2027-03-03" } }],
      tasks: [{ id: "a", name: "A", duration: 4, people: { id: "ana", share: 0.5, along: true } }],
    };
    const load = loadOf(plan, { lose: { person: "ana", days: 2, from: "2027-03-01" } });
    expect(load.people[0]).toMatchObject({ asked: [2], present: [3], over: [0], away: [1] });
    // The first two days she would have been there are Monday and Thursday.
    expect(load.loss).toMatchObject({
      from: "2027-03-01",
      to: "2027-03-04",
      effect: { workingDays: 0, money: 0 },
      stopped: [],
      goOn: ["a"],
    });
  });

  it("waits for a part-time absence to pass, behind no task", () => {
    // Half of Ana is away Monday and Tuesday; the task needs all of her, so it starts on Wednesday.
    const plan = {
      ...twoTasks,
      people: [{ id: "ana", name: "Ana", away: { from: "2027-03-01", to: "2027-03-02", share: 0.5 } }],
      tasks: [{ id: "a", name: "A", duration: 2, people: "ana" }],
    };
    const load = loadOf(plan);
    expect(load.waits).toEqual([
      {
        task: { id: "a", name: "A" },
        person: { id: "ana", name: "Ana" },
        asWritten: 2,
        mean: 2,
        share: 1,
      },
    ]);
    expect(load.people[0]).toMatchObject({ asked: [2], present: [4], over: [0] });
  });

  it("goes through what is in the way one after the other, behind whoever ends first", () => {
    // A crew of two: c (8 days) and d (5 days) begin, e (4 days) waits for d to end; with one of the two crews gone for
    // good they go one after the other.
    const plan = {
      ...twoTasks,
      people: [{ id: "crew", name: "Crew", capacity: 2 }],
      tasks: [
        { id: "c", name: "C", duration: 8, people: "crew" },
        { id: "d", name: "D", duration: 5, people: "crew" },
        { id: "e", name: "E", duration: 4, people: "crew" },
      ],
    };
    const load = loadOf(plan);
    expect(load.waits.map(({ task, behind, asWritten }) => [task.id, behind?.id, asWritten])).toEqual([
      ["e", "d", 5],
    ]);
    const half = loadOf(plan, { lose: { person: "crew", days: 60, from: "2027-03-01", part: 0.5 } });
    expect([half.loss?.before.workingDays, half.loss?.after.workingDays]).toEqual([9, 17]);
  });
});

// Hartmann (1998), Naval Research Logistics 45, 733-750: six activities, one resource of four units, 13 periods
// (recalled; recomputed in tests/reference/people). Without the resource the longest chain is b, d, f: 4 + 2 + 4.
describe("six tasks on a crew of four", () => {
  const { document, known } = crewOfFour();
  const load = loadOf(document);
  const tasks = document.tasks as { id: string; duration: number; people: { share: number }[] }[];

  it("asks for as many crew-days as the tasks hold", () => {
    const work = tasks.reduce((sum, { duration, people }) => sum + duration * (people[0]?.share ?? 1), 0);
    const asked = load.people[0]?.asked ?? [];
    expect(asked.reduce((sum, days) => sum + days, 0)).toBeCloseTo(work, 9);
    expect(load.people[0]?.over.every((days) => days === 0)).toBe(true);
  });

  it("ends after the published 13 periods", () => {
    expect(load.limits?.with.day).toBe(known.finish);
    expect(load.limits?.with.day).toBe(13);
    expect(load.limits?.without.day).toBe(4 + 2 + 4);
  });
});

describe("what is wrong with a wanted absence", () => {
  it("names everything at once, with the way out", () => {
    const problems = problemsOf(twoTasks, { person: "anna", days: 0, from: "2027-02-26", part: 2 });
    expect(problems.map(({ path }) => path)).toEqual(["--lose", "--days", "--part", "--from"]);
    expect(problems[0]?.remedy).toBe("Did you mean ana?");
    expect(problems[3]?.rule).toContain("the plan starts on 2027-03-01");
  });

  it("refuses a date that does not exist and a past one", () => {
    expect(problemsOf(twoTasks, { person: "ana", days: 1, from: "2027-02-30" })[0]?.received).toBe(
      "2027-02-30",
    );
    const going = { ...twoTasks, statusDate: "2027-03-02" };
    expect(problemsOf(going, { person: "ana", days: 1, from: "2027-03-02" })[0]?.rule).toContain(
      "2027-03-02",
    );
    expect(problemsOf(going, { person: "ana", days: 1, from: "2027-03-03" })).toEqual([]);
  });

  it("says when a plan names no people", () => {
    const bare = { ...twoTasks, people: [], tasks: [{ id: "a", name: "A", duration: 3 }] };
    expect(problemsOf(bare, { person: "ana", days: 1 })[0]?.remedy).toBe("This plan names no people.");
    expect(loadOf(bare).people).toEqual([]);
  });
});
