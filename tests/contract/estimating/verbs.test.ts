// The verbs interview, pool, scorecard, uplift and detail, called as the command calls them. Common practice, no source:
// what is written, what is not, which exit code, and that a refused call leaves the plan as it was.
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Readable } from "node:stream";
import { readPlan } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { askPerson } from "../../../apps/command/src/estimating/askPerson.ts";
import { detailVerb } from "../../../apps/command/src/verbs/detail.ts";
import { interviewVerb } from "../../../apps/command/src/verbs/interview.ts";
import { poolVerb } from "../../../apps/command/src/verbs/pool.ts";
import { scorecardVerb } from "../../../apps/command/src/verbs/scorecard.ts";
import { sheetVerb } from "../../../apps/command/src/verbs/sheet.ts";
import { upliftVerb } from "../../../apps/command/src/verbs/uplift.ts";
import { beginInterview } from "../../../packages/core/src/index.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const VERBS = {
  interview: interviewVerb,
  pool: poolVerb,
  scorecard: scorecardVerb,
  uplift: upliftVerb,
  detail: detailVerb,
  sheet: sheetVerb,
};
const PLAN = `# our shed
format: 1
title: Shed
start: 2027-02-01
iterations: 200
people: [{ id: ana, name: Ana }, { id: ben, name: Ben }]
tasks:
  - id: dig
    name: Dig # by hand
    duration: [3, 4, 8]
    cost: 500
  - { id: end, name: End, milestone: true, after: dig }
`;
const folder = temporaryFolder();
const file = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

let out = "";
let err = "";
beforeEach(() => {
  out = "";
  err = "";
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

async function run(...words: string[]): Promise<number> {
  const parsed = parseCall(words);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  const verb = VERBS[parsed.call.verb.name as keyof typeof VERBS];
  return verb(parsed.call);
}
const ANSWERS = JSON.stringify({ basis: "Dug two", high: 9, low: 3, likely: 5, dissent: "Too deep" });

describe("interview", () => {
  it("writes one opinion, keeps comments, and leaves the estimate", async () => {
    const plan = file("a.yaml", PLAN);
    const answers = file("a.json", ANSWERS);
    expect(
      await run("interview", plan, "dig", "--by", "ana", "--answers", answers, "--date", "2026-11-02"),
    ).toBe(0);
    const text = readFileSync(plan, "utf8");
    expect(text).toContain("name: Dig # by hand");
    expect(text.startsWith("# our shed")).toBe(true);
    const [task] = readPlan(text).plan?.tasks ?? [];
    expect(task?.duration).toMatchObject({ low: 3, likely: 4, high: 8 });
    expect(task?.opinions).toMatchObject([
      { by: "ana", date: "2026-11-02", basis: "Dug two", dissent: "Too deep" },
    ]);
    expect(task?.opinions?.[0]?.order).toBeUndefined(); // a file does not say what came first
    expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
    expect(out).toContain("Next: leeway pool");
  });

  it("--dry-run shows the change and writes nothing", async () => {
    const plan = file("b.yaml", PLAN);
    await run("interview", plan, "dig", "--by", "ana", "--answers", file("b.json", ANSWERS), "--dry-run");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
    expect(out).toMatch(/^\+ +opinions:$/m);
  });

  it.each([
    ["an unknown task", ["digg", "--by", "ana"], ANSWERS, "Did you mean dig?"],
    ["an unknown person", ["dig", "--by", "anna"], ANSWERS, "Did you mean ana?"],
    ["nobody", ["dig"], ANSWERS, "Add --by"],
    ["a milestone", ["end", "--by", "ana"], ANSWERS, "nothing to ask"],
    ["an estimate it has not", ["dig", "--by", "ana", "--of", "effort"], ANSWERS, "It has: duration, cost"],
    ["a day that is none", ["dig", "--by", "ana", "--date", "2026-02-30"], ANSWERS, "calendar date"],
    [
      "answers out of order",
      ["dig", "--by", "ana"],
      '{"basis":"x","high":1,"low":3,"likely":2}',
      "3 is above 1",
    ],
    ["answers that are none", ["dig", "--by", "ana"], "[1, 2]", "not a JSON object"],
    ["broken answers", ["dig", "--by", "ana"], "{", "not a JSON object"],
    ["a question there is not", ["dig", "--by", "ana"], '{"mode":5}', "Questions: basis"],
  ])("refuses %s, and the plan stays", async (_what, words, answers, said) => {
    const plan = file("c.yaml", PLAN);
    expect(await run("interview", plan, ...words, "--answers", file("c.json", answers))).toBe(2);
    expect(err).toContain(said);
    expect([out, readFileSync(plan, "utf8")]).toEqual(["", PLAN]);
  });

  it("asks line by line from a pipe, and is not done when the lines end early", async () => {
    const subject = { task: "dig", name: "Dig", of: "duration" as const, unit: "days" as const };
    const begun = beginInterview({
      ...subject,
      unitWords: "working days",
      events: [],
      holds: [],
      by: "ana",
      date: "2026-11-02",
    });
    const asked = (text: string) =>
      askPerson(begun, { input: Readable.from([text]), output: process.stderr, width: 80 });
    const done = await asked("Dug two\n9\n12\n3\r\n5\n\nyes\n");
    expect(done.opinion?.estimate).toMatchObject({ low: 3, likely: 5, high: 9 });
    expect(err.replace(/\s+/g, " ")).toContain("12 is above 9");
    const cutOff = await asked("Dug two\n9\n");
    expect([cutOff.opinion, cutOff.question?.key]).toEqual([undefined, "low"]);
  });
});

const SAID = `
    opinions:
      - { by: ana, date: 2026-11-02, low: 3, likely: 5, high: 9, bounds: p10-p90, basis: Dug two }
      - { by: ben, low: 5, likely: 7, high: 13, bounds: p10-p90 }`;

describe("pool", () => {
  it("shows without writing, and settles with the people's names", async () => {
    const before = PLAN.replace("cost: 500", `cost: 500${SAID}`);
    const plan = file("p.yaml", before);
    expect(await run("pool", plan)).toBe(0);
    expect(readFileSync(plan, "utf8")).toBe(before);
    expect(out).toMatch(/Pooled +4 +6 +11/);
    expect(await run("pool", plan, "dig", "--write")).toBe(0);
    const [task] = readPlan(readFileSync(plan, "utf8")).plan?.tasks ?? [];
    expect(task?.duration).toMatchObject({ low: 4, likely: 6, high: 11, bounds: "p10-p90" });
    expect(task?.estimatedBy).toEqual(["ana", "ben"]);
    expect(task?.basis).toBe(
      "Average of 2 opinions (quantiles, equal weights). Ana, 2026-11-02: Dug two; Ben.",
    );
    expect(task?.opinions?.length).toBe(2);
    // A line that is printed as taken away is nowhere printed as put in.
    const printed = out.split("\n");
    const taken = printed.filter((line) => line.startsWith("- ")).map((line) => line.slice(2));
    const put = printed.filter((line) => line.startsWith("+ ")).map((line) => line.slice(2));
    expect(put.length).toBeGreaterThan(0);
    expect(taken.filter((line) => put.includes(line))).toEqual([]);
  });

  it("has no room for JSON where the plan itself goes to standard output", async () => {
    expect(await run("pool", "-", "dig", "--write", "--json")).toBe(2);
    expect(err).toContain("name the plan's file");
  });

  it("says in words when people speak of different things", async () => {
    const apart = SAID.replace("low: 5, likely: 7, high: 13", "low: 50, likely: 70, high: 130");
    await run("pool", file("q.yaml", PLAN.replace("cost: 500", `cost: 500${apart}`)));
    expect(out.replace(/\s+/g, " ")).toContain("The ranges of Ana and Ben have no value in common");
  });

  it("refuses to settle all at once, or where nobody has spoken", async () => {
    const plan = file("r.yaml", PLAN);
    expect(await run("pool", plan, "--write")).toBe(2);
    expect(await run("pool", plan, "dig", "--write")).toBe(2);
    expect(err).toContain("Nobody has said anything");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });
});

describe("sheet", () => {
  it("goes out, comes back as it was, and changes nothing", async () => {
    const before = PLAN.replace("cost: 500", `cost: 500${SAID}`).replace(
      "Dug two",
      '"=2+3, \\"so\\" they say"',
    );
    const plan = file("t.yaml", before);
    const sheet = join(folder, "t.csv");
    rmSync(sheet, { force: true });
    expect(await run("sheet", plan, "--for", "ana", "--out", sheet)).toBe(0);
    const text = readFileSync(sheet, "utf8");
    expect(text).toContain(`"'=2+3, ""so"" they say"`); // RFC 4180; a formula is neutralised (CWE-1236)
    expect(await run("sheet", plan, "--read", sheet, "--by", "ana")).toBe(0);
    expect(out).toContain("0 new, 1 as before, 0 without an answer");
    expect(readFileSync(plan, "utf8")).toBe(before);
    expect(await run("sheet", plan, "--for", "ana", "--out", sheet)).toBe(2); // it may be filled in by now
    expect(readFileSync(sheet, "utf8")).toBe(text);
  });

  it("takes over what was filled in, decimal commas of a semicolon table too", async () => {
    const plan = file("v.yaml", PLAN);
    await run("sheet", plan, "--for", "ben", "--all");
    const filled = out
      .replaceAll(",", ";")
      .replace(/^(dig;.*;duration;working days);;;;;/m, "$1;Dug one;9,5;3;5;");
    expect(
      await run("sheet", plan, "--read", file("v.csv", filled), "--by", "ben", "--date", "2026-11-02"),
    ).toBe(0);
    const [task] = readPlan(readFileSync(plan, "utf8")).plan?.tasks ?? [];
    expect(task?.opinions).toMatchObject([
      { by: "ben", date: "2026-11-02", basis: "Dug one", estimate: { high: 9.5 } },
    ]);
  });

  it("refuses a wrong sheet as a whole, each fault at its row and column", async () => {
    const plan = file("w.yaml", PLAN);
    await run("sheet", plan, "--for", "ben", "--all");
    const filled = out
      .replace(/^(dig,.*,duration,working days),,,,,/m, "$1,Dug one,3,9,5,")
      .replace(/^dig,(.*),cost,/m, "dug,$1,cost,");
    expect(await run("sheet", plan, "--read", file("w.csv", filled), "--by", "ben")).toBe(2);
    expect(err).toContain("row 2, column “beaten one time in ten”");
    expect(err).toContain("row 3, column “task”: dug");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });

  it("wants to know whose and which way", async () => {
    const plan = file("x.yaml", PLAN);
    for (const words of [
      [],
      ["--read", "s.csv"],
      ["--for", "ana", "--read", "s.csv"],
      ["--for", "nobody"],
      ["--for", "ana"],
    ]) {
      expect(await run("sheet", plan, ...words)).toBe(2);
    }
    expect(out).toBe("");
  });
});

describe("scorecard, uplift and detail", () => {
  const task = (k: number) =>
    `  - { id: t${k}, name: T${k}, duration: { low: 4, likely: 5, high: 8, bounds: p10-p90 }, estimatedBy: ana, started: 2026-01-05, finished: 2026-01-${12 + k} }`;
  const past = `format: 1\ntitle: Last shed\nstart: 2026-01-05\nstatusDate: 2026-12-31\npeople: [{ id: ana, name: Ana }]\ntasks:\n${Array.from({ length: 12 }, (_, k) => task(k)).join("\n")}\n`;

  it("scores, and shows an adjusted forecast beside the plain one without touching the plan", async () => {
    const plan = file("s.yaml", PLAN);
    expect(await run("scorecard", file("past.yaml", past), plan, "--apply-to", plan, "--json")).toBe(0);
    const card = JSON.parse(out) as {
      overall: { n: number };
      people: { id: string }[];
      scenario: Record<"plain" | "adjusted", { committed: { workingDays: number } }>;
    };
    expect([card.overall.n, card.people.map(({ id }) => id)]).toEqual([12, ["ana"]]);
    const { plain, adjusted } = card.scenario;
    // All twelve took 6 to 14 working days where 4 to 8 was said, so it must become longer.
    expect(adjusted.committed.workingDays).toBeGreaterThan(plain.committed.workingDays);
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });

  it("adjusts nothing by too few, and does without a file it cannot read", async () => {
    const plan = file("s.yaml", PLAN);
    expect(await run("scorecard", plan, "--apply-to", plan)).toBe(2);
    expect(err).toContain("too few");
    expect(await run("scorecard", plan, join(folder, "nothing.yaml"))).toBe(2);
  });

  it("shows an uplift beside the forecast, with what it is not", async () => {
    const plan = file("u.yaml", PLAN);
    expect(
      await run("uplift", plan, "--kind", "standard-buildings", "--mitigated", "0.5", "--iterations", "100"),
    ).toBe(0);
    // Half of 24 % on 500: 560; half of 4 % on four days ends within the fifth, Friday 5 February.
    expect(out).toMatch(/with what is left of it +Fri 5 Feb 2027 +EUR 560/);
    expect(out).toContain("not contingency");
    for (const wrong of [
      ["--kind", "castles"],
      ["--kind", "standard-buildings=0.5"],
      ["--kind", "roads"],
      [],
    ]) {
      expect(await run("uplift", plan, ...wrong)).toBe(2);
    }
  });

  it("compares an outline with its detail", async () => {
    const old = file("old.yaml", PLAN.replace("name: Dig # by hand", "name: Dig\n    detail: outline"));
    const now = file(
      "now.yaml",
      PLAN.replace("id: dig", "id: dig-one\n    detailOf: dig").replace("after: dig }", "after: dig-one }"),
    );
    expect(await run("detail", old, now)).toBe(0);
    expect(out).toContain("One outline task has become detail");
    expect(out).toContain("No reason is logged");
  });
});
