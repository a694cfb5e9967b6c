// `--charts DIR` of every verb that draws. Sources: the project's own published command line (files whole or not at
// all, code 2 for a call that cannot be kept); SVG 1.1 section 5.4 (title, desc) and WAI-ARIA's `img` role, recalled
// from memory.
import { mkdirSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { newDocument } from "../charts/newDocument.ts";
import { build, leeway, smallPlan } from "./leeway.ts";

beforeAll(build, 120_000);

const plan = smallPlan
  .replace("tasks:\n", "people: [{ id: ana, name: Ana }]\ntasks:\n")
  .replace("after: [strip]\n", "after: [strip]\n    people: ana\n");
const files = { "old.yaml": smallPlan, "new.yaml": plan.replace("[4, 5, 9]", "[5, 7, 11]") };

/** Words before `--charts`, and the files it writes. */
const cases: [words: string[], names: string[]][] = [
  [
    ["forecast", "new.yaml"],
    ["finish-curve", "fifty-futures", "cost-curve", "drivers"],
  ],
  [
    ["explain", "new.yaml"],
    ["shares-days", "shares-money", "walk-days", "walk-money"],
  ],
  [
    ["compare", "old.yaml", "new.yaml"],
    ["moves-days", "moves-money"],
  ],
  [["responses", "new.yaml"], ["response-worth"]],
  [
    ["confidence", "new.yaml"],
    ["confidence-steps", "joint-density"],
  ],
  [
    ["paths", "new.yaml"],
    ["paths", "tasks-at-stake"],
  ],
  [["future", "new.yaml"], ["future"]],
  [["people", "new.yaml"], ["people-weeks"]],
];
const few = ["--iterations", "400"];

function parseSvg(text: string): Document {
  const window = newDocument().defaultView;
  if (window === null) throw new Error("jsdom's document has a window");
  return new window.DOMParser().parseFromString(text, "image/svg+xml");
}

describe.each(cases)("%j --charts", (words, names) => {
  it("writes its charts, names them on standard error and leaves the answer as it is", async () => {
    const cwd = temporaryFolder(files);
    const [drawn, plain] = await Promise.all([
      leeway([...words, ...few, "--charts", "a/b"], { cwd }),
      leeway([...words, ...few], { cwd }),
    ]);
    expect(drawn).toEqual({
      code: 0,
      out: plain.out,
      err: `Wrote ${names.map((name) => `a/b/${name}.svg`).join(", ")}.\n`,
    });
    expect(readdirSync(join(cwd, "a/b")).sort()).toEqual(names.map((name) => `${name}.svg`).sort());
    for (const name of names) {
      const text = readFileSync(join(cwd, "a/b", `${name}.svg`), "utf8");
      // As XML, which forgives nothing.
      const svg = parseSvg(text).documentElement;
      expect([svg.localName, svg.getAttribute("role")]).toEqual(["svg", "img"]);
      expect(svg.querySelector(":scope > title")?.textContent ?? "").toMatch(/\w+ \w+/);
      expect(text).not.toMatch(/<script|href="(?!#)|url\((?!#)|NaN|undefined/);
    }
  });

  it("ends with code 2 where the folder cannot be one, and writes nothing", async () => {
    const cwd = temporaryFolder({ ...files, taken: "a file" });
    const { code, out, err } = await leeway([...words, ...few, "--charts", "taken"], { cwd });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(new RegExp(`^taken/${names[0]}\\.svg\\b.*not a folder\\. Choose another place`));
    expect(err.trimEnd().split("\n")).toHaveLength(1);
    expect(readdirSync(cwd).sort()).toEqual(["new.yaml", "old.yaml", "taken"]);
    expect(readFileSync(join(cwd, "taken"), "utf8")).toBe("a file");
  });

  it("leaves nothing half-written where one of its files cannot be placed", async () => {
    const cwd = temporaryFolder(files);
    const last = `${names.at(-1)}.svg`;
    mkdirSync(join(cwd, "a", last, "in-the-way"), { recursive: true });
    const { code, out, err } = await leeway([...words, ...few, "--charts", "a"], { cwd });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(`a/${last}`);
    // Those before it are whole, and nothing stands beside them.
    expect(readdirSync(join(cwd, "a")).sort()).toEqual(names.map((name) => `${name}.svg`).sort());
    expect(statSync(join(cwd, "a", last)).isDirectory()).toBe(true);
    for (const name of names.slice(0, -1)) {
      expect(readFileSync(join(cwd, "a", `${name}.svg`), "utf8").trimEnd()).toMatch(/<\/svg>$/);
    }
  });

  it("takes no empty name for a folder", async () => {
    const { code, out, err } = await leeway([...words, "--charts", ""], { cwd: temporaryFolder(files) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^--charts\b.*empty/);
  });
});

describe("help", () => {
  it("offers --charts with the verbs that draw, in the same words, and with no other", async () => {
    const offers = async (verb: string) =>
      / {2}--charts DIR +(.*)\n/.exec((await leeway(["help", verb])).out)?.[1];
    const words = await offers("forecast");
    expect(words).toMatch(/SVG files into DIR/);
    for (const [[verb = ""]] of cases) expect(await offers(verb)).toBe(words);
    for (const verb of ["reach", "why", "check", "schema", "new"]) expect(await offers(verb)).toBe(undefined);
  });
});
