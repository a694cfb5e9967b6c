/** `leeway confidence` and `leeway people` as a person or a program calls them, and what a scenario prints. */
import { beforeAll, describe, expect, it } from "vitest";
import type { Confidence, Forecast, PeopleLoad } from "../../../packages/core/src/index.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build, 120_000);

async function json<T>(words: string[], input = smallPlan): Promise<T> {
  const { code, out, err } = await leeway([...words, "--json"], { input });
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(out.endsWith("}\n")).toBe(true);
  return JSON.parse(out) as T; // what the types say is what the command promises
}
/** Every line fits 80 columns, commands to be copied apart. */
function expectFits(out: string): void {
  for (const line of out.split("\n").filter((each) => !each.startsWith("  leeway "))) {
    expect([...line].length, line).toBeLessThanOrEqual(80);
  }
}
const priced = smallPlan.replace("tasks:\n", "lateness: { perWeek: 700, once: 100 }\ntasks:\n");
const crew = `format: 1
title: "Two tasks, one person"
start: 2027-03-01
people: [{ id: ana, name: Ana }]
tasks:
  - { id: a, name: First coat, duration: 3, people: ana }
  - { id: b, name: Plaster, duration: 4, people: ana }
`;

describe("leeway confidence", () => {
  it("prints the forecast's own figures at each level, the plan's own level among them", async () => {
    const run = await json<Forecast>(["forecast", "-"], priced);
    const answer = await json<Confidence>(["confidence", "-"], priced);
    expect(answer.confidence).toBe(0.7);
    expect(answer.steps.map(({ p }) => p)).toEqual([0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95]);
    const own = answer.steps.find(({ p }) => p === 0.7);
    expect([own?.date, own?.day, own?.cost]).toEqual([
      run.committed.date,
      run.committed.day,
      run.committed.cost,
    ]);
    expect(answer.joint.atCommitted).toBe(run.committed.both);
    expect(answer.joint.asked?.both).toBe(run.chance.both);
    expect(answer.stamp.sha256).toBe(run.plan.sha256);
  });

  it("takes another level into the ladder, and another joint level", async () => {
    const answer = await json<Confidence>(["confidence", "-", "--confidence", "0.72", "--joint", "0.6"]);
    expect(answer.steps.some(({ p }) => p === 0.72)).toBe(true);
    expect(answer.joint.frontier.joint).toBe(0.6);
    expect(answer.joint.equal.both).toBeGreaterThanOrEqual(0.6);
  });

  it("says the answer first, in words, on a page of 80 columns", async () => {
    const { code, out, err } = await leeway(["confidence", examplePlan]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const text = out.replace(/\s+/g, " ");
    expect(text).toMatch(
      /At 80 % the plan commits to [A-Z][a-z]+day \d+ [A-Z][a-z]+ 2027 and EUR \d{3},000\./,
    );
    expect(text).toMatch(/By what lateness costs, \d\d %/);
    expect(text).toMatch(/For both together 8 times in 10, promise [A-Z][a-z]+day/);
    expectFits(out);
    for (const line of out.split("\n")) expect(line).not.toMatch(/^\s*% /);
  });

  it("says what to add when the plan does not price lateness", async () => {
    const { out } = await leeway(["confidence", "-"], { input: smallPlan });
    expect(out.replace(/\s+/g, " ")).toContain("Add `lateness: { perWeek: ..., once: ... }`");
  });

  it("speaks of days alone where a plan has no money", async () => {
    const { out } = await leeway(["confidence", "-"], { input: crew });
    expect(out).not.toMatch(/EUR|Money|together/);
    expect(out).toMatch(/At 80 % the plan commits to/);
  });

  it("prints the same bytes twice", async () => {
    const [a, b] = await Promise.all([
      leeway(["confidence", examplePlan]),
      leeway(["confidence", examplePlan]),
    ]);
    expect(a.out).toBe(b.out);
  });

  it("refuses what it cannot read, all at once, and says what would be right", async () => {
    const { code, out, err } = await leeway(["confidence", "-", "--joint", "70", "--iterations", "0"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/--joint 70.*0\.7/);
    expect(err).toMatch(/--iterations 0/);
  });

  it("lists the problems of a broken plan, each with its place", async () => {
    const { code, out, err } = await leeway(["confidence", "-"], {
      input: smallPlan.replace("[2, 3, 6]", "[2, 9, 6]"),
    });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/tasks\[0\]\.duration/);
  });
});

describe("leeway people", () => {
  it("prints load, waits and limits; figures worked by hand", async () => {
    const answer = await json<PeopleLoad>(["people", "-"], crew);
    expect(answer.weeks).toEqual(["2027-03-01", "2027-03-08"]);
    expect(answer.people[0]?.asked).toEqual([5, 2]);
    expect(answer.waits.map(({ task, behind, asWritten }) => [task.id, behind?.id, asWritten])).toEqual([
      ["a", "b", 4],
    ]);
    expect(answer.limits?.effect.workingDays).toBe(3);
  });

  it("says who waits for whom and what an absence does", async () => {
    const words = ["people", "-", "--lose", "ana", "--days", "2", "--from", "2027-03-03"];
    const { code, out, err } = await leeway(words, { input: crew });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const text = out.replace(/\s+/g, " ");
    expect(text).toContain(
      "Without Ana for 2 working days, from Wed 3 Mar 2027 to Thu 4 Mar 2027, the finish at 80 % moves from " +
        "Tuesday 9 March 2027 to Thursday 11 March 2027: +2 working days.",
    );
    expect(text).toContain(
      "is 3 working days later: Tuesday 9 March 2027, without limits Thursday 4 March 2027.",
    );
    expect(out).toMatch(/First coat +Ana +Plaster +4\.0 +4\.0 +100 %/);
    expect(out).toMatch(/If nobody waited, person-days beyond capacity, as written: Ana 3\.0\./);
    const lose = await json<PeopleLoad>(words, crew);
    expect([lose.loss?.effect.workingDays, lose.loss?.stopped]).toEqual([2, ["b"]]);
  });

  it("loses everybody in turn", async () => {
    const { code, out, err } = await leeway(["people", "-", "--lose-each", "--days", "2"], { input: crew });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/Each away in turn for 2 working days: what the commitment moves by/);
    expect(out).toMatch(/Ana +Mon 1 Mar +Tue 2 Mar +\+2\.0 +0/);
  });

  it("shows one person week by week", async () => {
    const { out } = await leeway(["people", "-", "--person", "ana"], { input: crew });
    expect(out).toMatch(/1 Mar 2027 +5\.0 +5\.0 +0 +0 +5\.0 +5\.0/);
    expect(out).toMatch(/8 Mar 2027 +2\.0 +5\.0/);
  });

  it("keeps to a page of 80 columns", async () => {
    const { code, out } = await leeway(["people", examplePlan, "--lose", "designer", "--days", "10"]);
    expect(code).toBe(0);
    expectFits(out);
  });

  it("says so when the plan names nobody", async () => {
    const { code, out } = await leeway(["people", "-"], { input: smallPlan });
    expect(code).toBe(0);
    expect(out).toMatch(/names no people/);
  });

  it.each([
    [["--lose", "anna", "--days", "2"], /--lose.*`anna`.*Did you mean ana\?/],
    [["--lose", "ana"], /--lose.*needs --days/],
    [["--lose-each"], /--lose-each.*needs --days/],
    [["--days", "3"], /--days.*belongs to --lose or --lose-each/],
    [["--lose", "ana", "--days", "2", "--from", "3 March"], /--from.*3 March.*not a date/],
    [["--lose", "ana", "--days", "2", "--from", "2027-02-01"], /--from.*2027-02-01.*starts on 2027-03-01/],
    [["--lose", "ana", "--days", "999"], /--days 999.*1 to 366/],
    [["--person", "bob"], /--person bob.*Name one of: ana/],
    [["--without", "ana"], /--without.*`ana`.*That is a person/],
  ])("refuses %j", async (words, expected) => {
    const { code, out, err } = await leeway(["people", "-", ...words], { input: crew });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(expected);
  });
});

describe("a scenario on the command line", () => {
  it.each(["forecast", "confidence", "people"])("%s says what it is, in text and in JSON", async (verb) => {
    const words = [verb, "-", "--without", "rain", "--with", "tarpaulin"];
    const { code, out, err } = await leeway(words, { input: smallPlan });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("What if: with tarpaulin; without rain.");
    const { scenario } = await json<{ scenario: object }>(words);
    expect(scenario).toEqual({ with: ["tarpaulin"], without: ["rain"] });
    const plain = await json<{ scenario?: object }>([verb, "-"]);
    expect(plain.scenario).toBeUndefined();
  });

  it("warns of what changes nothing, and answers all the same", async () => {
    const { code, out, err } = await leeway(["forecast", "-", "--without", "tarpaulin"], {
      input: smallPlan,
    });
    expect(code).toBe(0);
    expect(out).toMatch(/Commit to/);
    expect(err).toMatch(/--without.*`tarpaulin`.*not adopted/);
  });

  it("refuses what is both taken in and left out", async () => {
    const { code, out, err } = await leeway(
      ["forecast", "-", "--with", "tarpaulin", "--without", "tarpaulin"],
      {
        input: smallPlan,
      },
    );
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/taken in and left out at once/);
  });

  it("reads a plan whose name needs quotes, and quotes it back", async () => {
    const cwd = temporaryFolder({ "my plan.yaml": smallPlan });
    const { out } = await leeway(["confidence", "my plan.yaml"], { cwd });
    expect(out).toContain("leeway confidence 'my plan.yaml' --joint 0.7");
  });
});
