/** What a scenario may take in and leave out: every case of the call, and what is said where it cannot. */
import { describe, expect, it } from "vitest";
import {
  applyScenario,
  compile,
  type Forecast,
  forecast,
  type Plan,
  planFromData,
  type ScenarioChoice,
  scenarioNotes,
} from "../../../packages/core/src/index.ts";

const document = {
  format: 1,
  title: "A scenario of everything",
  start: "2027-03-01",
  calendar: "every-day",
  purpose: {
    scope: {
      in: [
        { id: "roof", name: "Roof" },
        { id: "paint", name: "Paint", optional: true, lost: "Bare walls" },
        { id: "fence", name: "Fence", optional: true },
      ],
    },
  },
  people: [{ id: "ana", name: "Ana" }],
  tasks: [
    { id: "build", name: "Build", duration: 10, scope: "roof", cost: 1000, people: "ana" },
    { id: "coat", name: "Coat", duration: 5, scope: "paint", cost: 300, after: "build" },
    { id: "shop", name: "Second coat", duration: 3, cost: 50, after: "coat", onlyIf: "thick-paint" },
  ],
  risks: [
    {
      id: "storm",
      name: "Storm",
      probability: 1,
      impacts: [{ tasks: "build", delay: 4, cost: 100 }],
      responses: [
        { id: "tarpaulin", action: "Tarpaulin", cost: 20, scale: 0.5 },
        { id: "props", action: "Props", cost: 30, scale: 0.5, adopted: true },
      ],
    },
    {
      id: "old",
      name: "Gone by",
      probability: 0.5,
      status: "closed",
      impacts: [{ tasks: "build", delay: 9 }],
    },
  ],
  assumptions: [
    {
      id: "dry-wall",
      statement: "The wall is dry",
      chanceWrong: 1,
      impacts: [{ tasks: "coat", delay: 2 }],
      responses: [{ id: "thick-paint", action: "Two coats", cost: 7, probability: 0 }],
    },
  ],
};

function planOf(changes: object = {}): Plan {
  const { plan, problems } = planFromData({ ...document, ...changes });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
const plan = planOf();
function run(choice: ScenarioChoice, of: Plan = plan): Forecast {
  const result = forecast(of, { ...choice, iterations: 20 });
  if (result.forecast === undefined) throw new Error(JSON.stringify(result.problems));
  return result.forecast;
}
const daysAndCost = (choice: ScenarioChoice) => {
  const { committed } = run(choice);
  return [committed.day, committed.cost];
};

// Everything is certain, so every line is worked by hand from the words of the plan format. As it stands: build 10 and
// half a storm of 4 days, coat 5 and 2: 19 days; 1,000 + 300, half the storm's 100, props 30: 1,380.
describe("forecast of a scenario", () => {
  it.each([
    ["as it stands", {}, [19, 1380]],
    ["a risk left out: 2 days and 50 less, its response still paid", { without: ["storm"] }, [17, 1330]],
    ["an assumption left out: 2 days less", { without: ["dry-wall"] }, [17, 1380]],
    ["an adopted response left out: the storm whole", { without: ["props"] }, [21, 1400]],
    ["an unadopted response taken in: a quarter of the storm", { with: ["tarpaulin"] }, [18, 1375]],
    ["scope left out: no coat, nothing to be wet", { without: ["paint"] }, [12, 1080]],
    ["a response that brings a task of its own", { with: ["thick-paint"] }, [20, 1437]],
    ["both ways at once", { with: ["tarpaulin"], without: ["props", "paint"] }, [12, 1070]],
    ["everything named twice", { with: ["tarpaulin", "tarpaulin"], without: ["paint", "paint"] }, [11, 1075]],
    ["nothing named", { with: [], without: [] }, [19, 1380]],
  ] as const)("%s", (_, choice, expected) => {
    expect(daysAndCost(choice)).toEqual(expected);
  });

  it("keeps scope that has begun, and a milestone that is behind us", () => {
    const going = planOf({
      statusDate: "2027-03-12",
      tasks: [
        { id: "coat", name: "Coat", duration: 20, scope: "paint", started: "2027-03-10" },
        { id: "gate", name: "Gate", milestone: true, scope: "fence", finished: "2027-03-05", cost: 40 },
      ],
      risks: [],
      assumptions: [],
    });
    const { committed } = run({ without: ["paint", "fence"] }, going);
    expect([committed.day, committed.cost]).toEqual([29, 40]);
    expect(scenarioNotes(going, { without: ["paint", "fence"] }).map(({ rule }) => rule)).toEqual([
      "All its tasks have begun, and work that has begun stays.",
      "All its tasks have begun, and work that has begun stays.",
    ]);
  });

  it("leaves the plan handed in, its draws and its hash alone", () => {
    const before = JSON.stringify({ ...plan, calendars: [...plan.calendars] });
    const { plan: changed } = applyScenario(plan, { with: ["tarpaulin"], without: ["paint"] });
    expect(JSON.stringify({ ...plan, calendars: [...plan.calendars] })).toBe(before);
    expect(changed.sha256).toBe(plan.sha256);
    expect(compile(changed).tasks.map(({ id }) => id)).toEqual(compile(plan).tasks.map(({ id }) => id));
  });
});

describe("problems of a scenario", () => {
  const told = (choice: ScenarioChoice) =>
    applyScenario(plan, choice).problems.map(({ path, received, remedy }) => [path, received, remedy]);

  it.each([
    [{ without: ["stormm"] }, "--without", "Did you mean storm?"],
    [{ with: ["tarpauline"] }, "--with", "Did you mean tarpaulin?"],
    [
      { without: ["zzz"] },
      "--without",
      "Name one of: dry-wall, fence, old, paint, props, storm, tarpaulin, thick-paint.",
    ],
    [{ with: ["storm"] }, "--with", "That is a risk, which counts already. Its responses: tarpaulin."],
    [
      { with: ["dry-wall"] },
      "--with",
      "That is an assumption, which counts already. Its responses: thick-paint.",
    ],
    [{ with: ["old"] }, "--with", "That is a risk, which counts already. It has no response to take in."],
    [{ with: ["paint"] }, "--with", "That is a scope item, which is in the plan already."],
    [
      { without: ["roof"] },
      "--without",
      "That scope item is not optional: say `optional: true`, and in `lost` what is lost without it.",
    ],
    [
      { without: ["coat"] },
      "--without",
      "That is a task: name the optional scope item that it delivers (`scope`).",
    ],
    [{ with: ["ana"] }, "--with", "That person has no `couldAdd`: say there what could be added."],
    [
      { without: ["ana"] },
      "--without",
      "That is a person: see `people --lose`, which shows what an absence does.",
    ],
    [{ with: ["props"], without: ["props"] }, "--with", "Name it once."],
  ] as const)("%j", (choice, path, remedy) => {
    const [found, ...more] = told(choice);
    expect(more).toEqual([]);
    expect([found?.[0], found?.[2]]).toEqual([path, remedy]);
  });

  it("are told all at once, and nothing is forecast", () => {
    const choice = { with: ["storm", "nope"], without: ["roof", "nothing"] };
    expect(told(choice).map(([path, received]) => [path, received])).toEqual([
      ["--with", "`storm`"],
      ["--with", "`nope`"],
      ["--without", "`roof`"],
      ["--without", "`nothing`"],
    ]);
    expect(forecast(plan, choice).forecast).toBeUndefined();
  });

  it("say so when the plan has nothing to switch", () => {
    const bare = planOf({
      risks: [],
      assumptions: [],
      purpose: {},
      tasks: [{ id: "a", name: "A", duration: 1 }],
    });
    expect(applyScenario(bare, { with: ["x"] }).problems[0]?.remedy).toBe("This plan has none.");
  });
});

describe("what changes nothing", () => {
  it("is a warning, and the forecast is the plan's own", () => {
    const choice = { with: ["props"], without: ["tarpaulin", "old", "fence"] };
    const notes = scenarioNotes(plan, choice);
    expect(notes.map(({ severity, path, received, rule }) => [severity, path, received, rule])).toEqual([
      ["warning", "--without", "`tarpaulin`", "It is not adopted."],
      ["warning", "--with", "`props`", "It is adopted already."],
      ["warning", "--without", "`old`", "It is closed already."],
      ["warning", "--without", "`fence`", "No task delivers it (`scope`)."],
    ]);
    expect(run(choice)).toEqual(run({}));
  });

  it("is not said of what does something", () => {
    expect(scenarioNotes(plan, { with: ["tarpaulin"], without: ["storm", "props", "paint"] })).toEqual([]);
  });
});
