// The call itself: verbs, options, help. Source: the project's own published command line.
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, leeway, smallPlan, startedCommand } from "./leeway.ts";

beforeAll(build);

describe("an invalid call", () => {
  const cases: [words: string[], expected: RegExp[]][] = [
    [["forecast", "-", "--iteratons", "5"], [/--iteratons\b.*--iterations/]],
    [
      ["forecast", "-", "--jsno", "--sed=3"],
      [/--jsno\b.*--json/, /--sed\b.*--seed/],
    ],
    [["forecast", "-", "--iterations", "ten"], [/--iterations ten\b.*whole number/]],
    [["forecast", "-", "--iterations", "0"], [/--iterations 0\b/]],
    [["forecast", "-", "--iterations"], [/--iterations\b.*needs a value/]],
    [["forecast", "-", "--confidence", "80%"], [/--confidence 80%.*0\.8/]],
    [
      ["forecast", "-", "--confidence=1", "--workers=-2"],
      [/--confidence 1\b/, /--workers -2\b/],
    ],
    [["forecast", "-", "--design", "square"], [/square.*latin-hypercube, plain/]],
    [["forecast", "-", "--without", "Rain"], [/--without Rain/]],
    [["forecast", "-", "--json=yes"], [/--json=yes/]],
    [["forecast", "-", "-x"], [/-x\b/]],
    [["forecast"], [/needs a plan/]],
    [["forecast", "a.yaml", "b.yaml"], [/b\.yaml/]],
    [["forcast", "-"], [/forcast\b.*`forecast`/]],
    [["check", "-", "--fail-on", "serious"], [/serious.*error, warning, note/]],
    [["help", "chekc"], [/chekc\b.*`check`/]],
    [[], [/leeway help/]],
  ];
  it.each(cases)("%j is refused in words, all at once, with code 2", async (words, expected) => {
    const { code, out, err } = await leeway(words, { input: smallPlan });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    for (const pattern of expected) expect(err).toMatch(pattern);
    expect(err.trimEnd().split("\n")).toHaveLength(expected.length);
  });

  it("an unknown id for --without is refused with the nearest known one", async () => {
    const { code, out, err } = await leeway(["forecast", "-", "--without", "rian"], { input: smallPlan });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/rian/);
    expect(err).toMatch(/\brain\b/);
  });
});

describe("help", () => {
  it("lists every verb, and each verb lists its options", async () => {
    const { code, out } = await leeway(["help"]);
    expect(code).toBe(0);
    for (const verb of ["forecast", "check", "schema", "new"]) {
      expect(out).toMatch(new RegExp(`^ +${verb}\\b`, "m"));
    }
    const forecast = await leeway(["forecast", "--help"]);
    expect(forecast.code).toBe(0);
    for (const option of ["--json", "--charts DIR", "--without IDS", "--workers N", "--timing"]) {
      expect(forecast.out).toContain(option);
    }
    expect((await leeway(["help", "forecast"])).out).toBe(forecast.out);
  });

  it("says the same of an option wherever it stands", async () => {
    const { out } = await leeway(["help"]);
    const verbs = [...out.matchAll(/^ {2}([a-z]+) /gm)].map(([, verb = ""]) => verb);
    expect(verbs).toEqual(expect.arrayContaining(["forecast", "explain", "compare", "people", "check"]));
    const said = new Map<string, Set<string>>();
    for (const verb of verbs) {
      const help = (await leeway(["help", verb])).out.replace(/\n {5,}/g, " "); // an option's further lines
      for (const [, option = "", words = ""] of help.matchAll(/^ {2}(--\S+(?: [A-Z]+)?) +(.*)$/gm)) {
        said.set(option, (said.get(option) ?? new Set()).add(words));
      }
    }
    const shared = ["json", "charts DIR", "confidence P", "iterations N", "seed TEXT", "design NAME"];
    for (const option of [...shared, "without IDS", "with IDS", "workers N"]) {
      expect([...(said.get(`--${option}`) ?? [])], option).toHaveLength(1);
    }
  });

  it.each([60, 80])("keeps to %i columns", async (width) => {
    const env = { COLUMNS: String(width) };
    for (const words of [["help"], ["help", "forecast"], ["help", "responses"], ["people", "--help"]]) {
      const { out } = await leeway(words, { env });
      expect(out.split("\n").filter((line) => [...line].length > width)).toEqual([]);
    }
  });

  it("--version prints the version of the run stamp", async () => {
    const { out } = await leeway(["--version"]);
    const forecast = await leeway(["forecast", "-", "--json"], { input: smallPlan });
    expect(out.trim()).toBe(JSON.parse(forecast.out).version);
  });
});

describe("npm run leeway", () => {
  it("takes paths from where the caller stands", async () => {
    const cwd = temporaryFolder({ "roof.plan.yaml": smallPlan });
    const env = { npm_lifecycle_event: "leeway", INIT_CWD: cwd };
    const words = ["forecast", "roof.plan.yaml", "--json"];
    const started = await leeway(words, { program: startedCommand, cwd: temporaryFolder(), env });
    const direct = await leeway(words, { cwd });
    expect(started.code).toBe(0);
    expect(started.out).toBe(direct.out);
  });
});
