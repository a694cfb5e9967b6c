// The verbs paths, why and future: what a call has to look like, what JSON holds, what a person reads. The words are
// those of the project's own published command line; figures are checked against what `forecast --json` says of the
// same run.
import { beforeAll, describe, expect, it } from "vitest";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

const json = async (words: string[], input = "") => JSON.parse((await leeway(words, { input })).out);
const flat = (text: string) => text.replace(/\s+/g, " ");

/** Two tasks that need one person, the later one with a date of its own; a lag; a link that asks for a finish. */
const sharedPerson = `format: 1
title: Two jobs, one fitter
start: 2027-02-01
people:
  - { id: ada, name: Ada }
tasks:
  - { id: roof, name: Roof, duration: 6, people: [ada] }
  - { id: sills, name: Sills, duration: 3 }
  - id: windows
    name: Windows
    duration: 4
    people: [ada]
    notBefore: 2027-02-03
    priority: -1
    after: [{ task: sills, lag: 1 }]
  - { id: paint, name: Paint, duration: 2, after: [{ task: windows, link: finish-to-finish, lag: 2 }] }
`;

describe("why", () => {
  it("tells every bound as written: links with lags, dates, people and what holds them, and their slack", async () => {
    const told = await json(["why", "-", "windows", "--json"], sharedPerson);
    // By hand, Monday 1 February 2027 first: the roof keeps Ada for six working days, to the end of Monday 8. Sills end
    // on Wednesday 3, and a day of lag later is Thursday 4: from Friday 5 on. The date is Wednesday 3.
    expect(told.asWritten.startDate).toBe("2027-02-09");
    const rows = told.bounds.map((bound: Record<string, unknown>) => [
      bound.kind,
      bound.startDate,
      bound.slack,
      bound.binds,
      bound.share,
    ]);
    expect(rows).toEqual([
      ["person", "2027-02-09", 0, true, 1],
      ["link", "2027-02-05", 2, false, 0],
      ["not-before", "2027-02-03", 4, false, 0],
      ["plan-start", "2027-02-01", 6, false, 0],
    ]);
    expect(told.bounds[0].task).toEqual({ id: "roof", name: "Roof" });
    expect(told.bounds[0].person).toEqual({ id: "ada", name: "Ada" });
    expect(told.bounds[1].lag).toBe(1);
    expect(told.chain.map(({ task }: { task: { id: string } }) => task.id)).toEqual(["roof", "windows"]);
  });

  it("says so in words", async () => {
    const { code, out, err } = await leeway(["why", "-", "windows"], { input: sharedPerson });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const text = flat(out);
    expect(text).toContain("Windows starts on Tuesday 9 February 2027 in the plan as written.");
    expect(text).toContain("What holds it: Ada, busy with Roof.");
    expect(text).toContain("after Sills + 1 working day");
    expect(text).toContain("Roof → [waits for Ada] Windows");
  });

  it("tells a required finish", async () => {
    const told = await json(["why", "-", "paint", "--json"], sharedPerson);
    // Windows run from Tuesday 9 to Friday 12; two working days later is Tuesday 16, so that paint starts on Monday 15.
    expect([told.asWritten.startDate, told.asWritten.finishDate]).toEqual(["2027-02-15", "2027-02-16"]);
    expect(told.bounds[0]).toMatchObject({ kind: "link", link: "finish-to-finish", lag: 2, binds: true });
  });

  it("suggests the task that was meant and ends with code 2", async () => {
    const { code, out, err } = await leeway(["why", "-", "widnows"], { input: sharedPerson });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("widnows: The plan has no task of that id. Did you mean windows (Windows)?");
    const named = await leeway(["why", "-", "Sils"], { input: sharedPerson });
    expect(named.err).toContain("Did you mean sills (Sills)?");
    const none = await leeway(["why", "-", "zzzzzzzz"], { input: sharedPerson });
    expect(none.code).toBe(2);
    expect(none.err).toContain("Its tasks: roof, sills, windows, paint.");
  });

  it("needs a task, and takes one", async () => {
    const none = await leeway(["why", examplePlan]);
    expect(none.code).toBe(2);
    expect(none.err).toContain("Write `leeway why PLAN TASK`.");
    const two = await leeway(["why", examplePlan, "strip-out", "finishes"]);
    expect(two.code).toBe(2);
    expect(two.err).toContain("finishes");
    expect((await leeway(["help", "why"])).out).toContain("leeway why PLAN TASK [options]");
  });

  it("lists every problem at once", async () => {
    const { code, err } = await leeway(["why", "-", "widnows", "--without", "nothing-such"], {
      input: sharedPerson,
    });
    expect(code).toBe(2);
    expect(err).toContain("widnows");
    expect(err).toContain("nothing-such");
  });
});

describe("paths", () => {
  it("prints the forecast's criticality, and shares that do not exceed the futures", async () => {
    const paths = await json(["paths", examplePlan, "--json", "--iterations", "3000"]);
    const forecast = await json(["forecast", examplePlan, "--json", "--iterations", "3000"]);
    const critical = new Map(
      forecast.tasks.map((task: { id: string; critical: number }) => [task.id, task.critical]),
    );
    expect(paths.tasks.length).toBe(forecast.tasks.length);
    for (const { id, criticality } of paths.tasks) expect([id, criticality]).toEqual([id, critical.get(id)]);
    expect(paths.committed.date).toBe(forecast.committed.date);
    expect(paths.paths.length).toBeLessThanOrEqual(5);
    const sum = paths.paths.reduce((total: number, { share }: { share: number }) => total + share, 0);
    expect(sum).toBeLessThanOrEqual(1);
    expect(paths.stamp).toEqual({
      seed: forecast.seed,
      iterations: 3000,
      version: forecast.version,
      design: forecast.design,
      sha256: forecast.plan.sha256,
    });
  });

  it("reads: how many chains, the most frequent ones, what is at stake; indices on request", async () => {
    const { code, out, err } = await leeway(["paths", examplePlan, "--iterations", "1000"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const told = await json(["paths", examplePlan, "--iterations", "1000", "--json"]);
    const text = flat(out);
    expect(text).toContain(`${told.different} different chains of tasks set the finish`);
    expect(text).toContain(told.paths[0].names.join(" → "));
    expect(text).toContain("at stake");
    expect(text).not.toContain("significance");
    expect((await leeway(["paths", examplePlan, "--iterations", "1000", "--indices"])).out).toContain(
      "significance",
    );
  });
});

describe("future", () => {
  it("tells one future: its number, dates, cost, and lines that add up", async () => {
    const told = await json(["future", "-", "--iteration", "42", "--iterations", "500", "--json"], smallPlan);
    expect([told.iteration, told.stamp.iterations]).toEqual([42, 500]);
    let sum = 0;
    for (const { money } of told.cost.lines) sum += money;
    expect(sum).toBe(told.cost.total);
    const rain = told.events.find(({ id }: { id: string }) => id === "rain");
    const felt = told.tasks.find(({ id }: { id: string }) => id === "felt");
    const drawn = told.draws.find(
      ({ of, what }: { of: { id: string }; what: string }) => of.id === "felt" && what === "duration",
    );
    // The plan format: a realised duration is the draw plus the delays that occur.
    expect(Math.abs(felt.duration - drawn.value - rain.days)).toBeLessThan(1e-9);
    expect(told.path.map(({ task }: { task: { id: string } }) => task.id)).toEqual(["strip", "felt", "done"]);
    expect(felt.heldBy[0]).toMatchObject({ kind: "link", task: { id: "strip" }, binds: true });
  });

  it("finds the future at a level, the committed one by default", async () => {
    const forecast = await json(["forecast", "-", "--iterations", "500", "--json"], smallPlan);
    const told = await json(["future", "-", "--iterations", "500", "--json"], smallPlan);
    expect([told.at, told.finish.date]).toEqual([0.7, forecast.committed.date]);
    const late = await json(["future", "-", "--iterations", "500", "--at", "0.9", "--json"], smallPlan);
    expect(late.finish.day).toBe(forecast.finish.percentiles.find(({ p }: { p: number }) => p === 0.9).day);
  });

  it("reads: the answer, what occurred, what set the finish, the tasks, the cost", async () => {
    const words = ["future", "-", "--iterations", "500", "--iteration", "42"];
    const { code, out, err } = await leeway(words, { input: smallPlan });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const told = await json([...words, "--json"], smallPlan);
    expect(out.split("\n")[0]).toMatch(/^Shed roof +future 42 of 500$/);
    const text = flat(out);
    expect(text).toContain("This future finishes on ");
    expect(text).toContain(`EUR ${Math.round(told.cost.total).toLocaleString("en-GB")}`);
    expect(text).toContain("Strip the old roof → Lay the felt → Roof closed");
    expect(text).not.toContain("Every draw");
    expect((await leeway([...words, "--draws"], { input: smallPlan })).out).toContain(
      "Lay the felt: duration",
    );
  });

  it("refuses a future that is none, two choices, and says what there is", async () => {
    const far = await leeway(["future", "-", "--iteration", "501", "--iterations", "500"], {
      input: smallPlan,
    });
    expect(far.code).toBe(2);
    expect(far.err).toContain("The run has 500 futures, counted from 1.");
    const both = await leeway(["future", "-", "--iteration", "1", "--at", "0.5"], { input: smallPlan });
    expect(both.code).toBe(2);
    expect(both.err).toContain("Keep one of them.");
  });
});

it.each([60, 80, 100])("all three keep to %i columns", async (width) => {
  const env = { COLUMNS: String(width) };
  const calls = [
    ["paths", examplePlan, "--iterations", "300", "--indices"],
    ["why", examplePlan, "inspection-passed", "--iterations", "300"],
    ["future", examplePlan, "--iterations", "300", "--draws"],
  ];
  for (const words of calls) {
    const { out } = await leeway(words, { env });
    const lines = out.split("\n").filter((line) => !line.startsWith("  leeway "));
    expect(lines.filter((line) => [...line].length > width)).toEqual([]);
    expect(out).not.toContain("\u001b");
  }
});
