// Invalid plans and unreadable files: exit code 2 and every problem at once, each with its place. The rules are
// the project's own published plan format and command line.
import { chmodSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

/** Line, mark for a mistake: what its place must be. */
const TEN: [line: string, place?: string][] = [
  ["format: 1"],
  ["title: Reading room"],
  ["curency: EUR", "curency"],
  ["start: 01.02.2027", "start"],
  ["commitment:"],
  ["  confidence: 80", "commitment.confidence"],
  ["  budget: 210.000", "commitment.budget"],
  ["people:"],
  ["  - { id: tam, name: Tam, capacity: 0.5 }"],
  ["tasks:"],
  ["  - id: survey"],
  ["    name: Survey"],
  ["    duration: [5, 3, 9]", "tasks[0].duration"],
  ["  - id: shelves"],
  ["    name: Shelves"],
  ["    duration: 4"],
  ["    after: [survy]", "tasks[1].after[0]"],
  ["  - id: lights"],
  ["    name: Lights"],
  ["    duration: 2"],
  ["    people: [{ id: tam, share: 1 }]", "tasks[2].people[0]"],
  ["  - id: paint"],
  ["    name: Paint"],
  ["    duration: 3"],
  ["    people: [tom]", "tasks[3].people[0]"],
  ["risks:"],
  ["  - id: damp"],
  ["    name: Damp"],
  ["    probability: 30%", "risks[0].probability"],
  ["  - id: strike"],
  ["    name: Strike"],
  ["    probability: 0.1"],
  ["    impacts: [{ tasks: [shelfs], delay: 3 }]", "risks[1].impacts[0].tasks[0]"],
];

describe("a plan with ten mistakes", () => {
  const plan = TEN.map(([line]) => `${line}\n`).join("");

  for (const words of [["forecast"], ["forecast", "--json"], ["check"]]) {
    it(`lists ten located problems and ends with code 2: ${words.join(" ")}`, async () => {
      const [verb = "", ...options] = words;
      const cwd = temporaryFolder({ "ten.plan.yaml": plan });
      const { code, out, err } = await leeway([verb, "ten.plan.yaml", ...options], { cwd });
      expect(code).toBe(2);
      expect(out).toBe("");
      const lines = err.trimEnd().split("\n");
      TEN.forEach(([, place], k) => {
        if (place === undefined) return;
        const start = `ten.plan.yaml:${k + 1}:`;
        const found = lines.filter((line) => line.startsWith(start) && line.includes(` ${place}`));
        expect(found, `${start} ${place} in\n${err}`).not.toEqual([]);
      });
      expect(lines).toHaveLength(10);
    });
  }

  it("says what would be right", async () => {
    const { err } = await leeway(["forecast", "-"], { input: plan });
    expect(err).toMatch(/curency.*currency/);
    expect(err).toMatch(/210000/);
    expect(err).toMatch(/2027-02-01/);
    expect(err).toMatch(/30%.*0\.3/);
    expect(err).toMatch(/survy.*survey/);
  });
});

describe("a document that is no plan", () => {
  const cases: [title: string, files: Record<string, string | Buffer>, word: RegExp][] = [
    ["missing", {}, /no such file/],
    ["empty", { "plan.yaml": "" }, /empty/],
    ["only spaces", { "plan.yaml": " \n\n" }, /empty/],
    ["binary", { "plan.yaml": Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x00, 0xff]) }, /not a text file/],
    ["with a nul", { "plan.yaml": "title: a\0b" }, /not a text file/],
    ["a list", { "plan.yaml": "- 1\n- 2\n" }, /plan\.yaml/],
    ["a lone word", { "plan.yaml": "hello\n" }, /plan\.yaml/],
    ["broken YAML", { "plan.yaml": "title: [a\ntasks: }\n" }, /plan\.yaml:\d+:\d+/],
  ];
  it.each(cases)("%s: a problem in words and code 2", async (_title, files, word) => {
    const { code, out, err } = await leeway(["forecast", "plan.yaml"], { cwd: temporaryFolder(files) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(word);
    expect(err).not.toMatch(/\bat .*\.m?[jt]s:\d+/); // words, not a stack
  });

  it("a folder, and a file that may not be read", async () => {
    const cwd = temporaryFolder({ "shut.yaml": smallPlan });
    mkdirSync(join(cwd, "plans"));
    const folder = await leeway(["forecast", "plans"], { cwd });
    expect(folder).toMatchObject({ code: 2, out: "", err: expect.stringContaining("folder") });
    chmodSync(join(cwd, "shut.yaml"), 0);
    const shut = await leeway(["forecast", "shut.yaml"], { cwd });
    // The superuser may read everything.
    if (process.getuid?.() === 0) expect(shut.code).toBe(0);
    else expect(shut).toMatchObject({ code: 2, out: "", err: expect.stringContaining("may not be read") });
  });

  // `people` keeps two numbers of every task in every future, here 480 GB; a forecast keeps brackets and would run.
  it("more futures than the machine has memory for", async () => {
    const tasks = Array.from({ length: 3000 }, (_, k) => `  - { id: t${k}, name: Task, duration: 1 }\n`);
    const input = `format: 1\ntitle: Large\nstart: 2027-02-01\ntasks:\n${tasks.join("")}`;
    const { code, out, err } = await leeway(["people", "-", "--iterations", "10000000"], { input });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/iterations: 10000000: .*memory.*at most \d+/);
  });

  it("nothing on standard input", async () => {
    const { code, out, err } = await leeway(["forecast", "-"], { input: "" });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("standard input");
  });

  it("control characters of a plan are not sent to the terminal", async () => {
    const input = `${smallPlan}"ti\\u001b[31mtle": x\n`;
    const { code, err } = await leeway(["forecast", "-"], { input });
    expect(code).toBe(2);
    expect(err).not.toContain("\u001b");
  });
});
