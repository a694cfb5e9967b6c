// The verbs record, history and triggers on files of their own. What must hold: nothing is written when one thing is
// wrong, what was written is not lost when the program is stopped, and two that write at once both get their line.
import { createHash } from "node:crypto";
import {
  appendFileSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { type HistoryFacts, readHistory, readPlan } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { appendToHistory } from "../../../apps/command/src/history/append.ts";
import { besidePlan } from "../../../apps/command/src/history/besidePlan.ts";
import { withLock } from "../../../apps/command/src/history/withLock.ts";
import { writePlan } from "../../../apps/command/src/history/writePlan.ts";
import { historyVerb } from "../../../apps/command/src/verbs/history.ts";
import { recordVerb } from "../../../apps/command/src/verbs/record.ts";
import { triggersVerb } from "../../../apps/command/src/verbs/triggers.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const PLAN = `format: 1
title: Shed roof # of the rowing club
start: 2027-02-01
iterations: 256
commitment: { confidence: 0.7, finishBy: 2027-02-19, budget: 2600 }
people: { id: ines, name: Ines }
tasks:
  - id: strip
    name: Strip the old roof
    duration: [2, 3, 6]
    cost: 400
  - id: felt
    name: Lay the felt
    after: strip
    duration: [4, 5, 9]
    cost: [1500, 1800, 3000]
risks: { id: rain, name: A week of rain, probability: 0.3, impacts: { tasks: felt, delay: [2, 3, 5] } }
returnTriggers: { id: late, finishLaterThan: 2027-02-19 }
`;
function scratch(text = PLAN): { plan: string; folder: string; history: () => string } {
  const folder = temporaryFolder();
  const plan = join(folder, "shed.plan.yaml");
  writeFileSync(plan, text);
  return { plan, folder, history: () => readFileSync(join(folder, "shed.history.jsonl"), "utf8") };
}

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
afterEach(() => {
  vi.restoreAllMocks();
});
async function leeway(...words: string[]): Promise<number> {
  const parsed = parseCall(words);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  const verbs = { record: recordVerb, history: historyVerb, triggers: triggersVerb };
  return verbs[parsed.call.verb.name as keyof typeof verbs](parsed.call);
}
const FIRST = [
  "--status",
  "2027-02-05",
  "--started",
  "strip=2027-02-01",
  "--finished",
  "strip=2027-02-04",
  "--today",
  "2027-02-06",
];

describe("leeway record", () => {
  it("writes progress, keeps both versions and two linked forecasts, and says what moved", async () => {
    const { plan, folder, history } = scratch();
    expect(await leeway("record", plan, ...FIRST, "--as", "ines", "--why", "Dry days")).toBe(0);
    expect(readFileSync(plan, "utf8")).toBe(
      PLAN.replace("start: 2027-02-01\n", "start: 2027-02-01\nstatusDate: 2027-02-05\n").replace(
        "    cost: 400\n",
        "    cost: 400\n    started: 2027-02-01\n    finished: 2027-02-04\n",
      ),
    );
    const { entries, breaks } = readHistory(history());
    expect(breaks).toEqual([]);
    expect(entries.map(({ statusDate, date }) => [statusDate, date])).toEqual([
      [undefined, "2027-02-06"],
      ["2027-02-05", "2027-02-06"],
    ]);
    expect(entries[1]?.change).toMatchObject({ who: "ines", why: "Dry days" });
    expect(entries[1]?.sha256).toBe(readPlan(readFileSync(plan, "utf8")).plan?.sha256);
    const versions = readdirSync(join(folder, "shed.versions")).map(
      (name) => readPlan(readFileSync(join(folder, "shed.versions", name), "utf8")).plan?.sha256,
    );
    expect(versions.sort()).toEqual(entries.map(({ sha256 }) => sha256).sort());
    expect(out).toMatch(/The committed date (moved from|stays)/);
    expect(out).toMatch(/Of 1 agreed|The agreed return trigger/);
    // Nothing is left lying about.
    expect(readdirSync(folder).sort()).toEqual(["shed.history.jsonl", "shed.plan.yaml", "shed.versions"]);
  });
  it("writes nothing when one thing is wrong, and lists all", async () => {
    const { plan, folder } = scratch();
    const words = ["--status", "2027-02-05", "--started", "stripp", "--closed", "rian", "--as", "inez"];
    expect(await leeway("record", plan, ...words)).toBe(2);
    expect(err).toMatch(/Did you mean strip\?[\s\S]*Did you mean rain\?[\s\S]*Did you mean ines\?/);
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
    expect(readdirSync(folder)).toEqual(["shed.plan.yaml"]);
    err = "";
    expect(await leeway("record", plan, "--status", "05.02.2027", "--from", join(folder, "none.csv"))).toBe(
      2,
    );
    expect(err).toMatch(/There is no such file[\s\S]*Write 2027-02-05/);
  });
  it("takes ids with commas between them, a date after them for all, and names each that is wrong", async () => {
    const { plan } = scratch();
    const words = [
      "--status",
      "2027-02-09",
      "--started",
      "strip,felt=2027-02-05",
      "--finished",
      "strip, felt",
    ];
    expect(await leeway("record", plan, ...words, "--json")).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ changed: ["strip", "felt"], finished: ["strip", "felt"] });
    expect(readFileSync(plan, "utf8").match(/started: 2027-02-05/g)).toHaveLength(2);
    expect(
      await leeway(
        "record",
        scratch().plan,
        "--status",
        "2027-02-09",
        "--occurred",
        "rain,snow,",
        "--dry-run",
      ),
    ).toBe(2);
    expect(err).toMatch(/--occurred snow/);
  });
  it("needs a status date, and a file", async () => {
    expect(await leeway("record", scratch().plan)).toBe(2);
    expect(err).toContain("--status");
    expect(await leeway("record", "-", "--status", "2027-02-05")).toBe(2);
    expect(err).toContain("standard input has no place");
  });
  it("shows with --dry-run the lines that would change, and writes nothing", async () => {
    const { plan, folder } = scratch();
    expect(await leeway("record", plan, ...FIRST, "--dry-run")).toBe(0);
    expect(out).toContain("Would change 3 lines");
    expect(out).toContain("4 + statusDate: 2027-02-05");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
    expect(readdirSync(folder)).toEqual(["shed.plan.yaml"]);
  });
  it("prints one JSON document with --json", async () => {
    const { plan, history } = scratch();
    expect(await leeway("record", plan, ...FIRST, "--json")).toBe(0);
    const answer = JSON.parse(out) as { changed: string[]; forecast: HistoryFacts; written: boolean };
    expect(answer).toMatchObject({ changed: ["strip"], finished: ["strip"], written: true });
    expect(readHistory(history()).entries[1]).toMatchObject(answer.forecast);
  });
  it("says so where something else stands in the place of the history", async () => {
    const { plan, folder } = scratch();
    mkdirSync(join(folder, "shed.history.jsonl"));
    expect(await leeway("record", plan, ...FIRST)).toBe(2);
    expect(err).toContain("That is a folder.");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });
  it("goes on from a history whose last line was torn, and keeps the piece", async () => {
    const { plan, folder, history } = scratch();
    await leeway("record", plan, ...FIRST);
    const before = history();
    appendFileSync(join(folder, "shed.history.jsonl"), before.slice(0, 100));
    expect(await leeway("record", plan, "--status", "2027-02-08", "--started", "felt=2027-02-05")).toBe(0);
    expect(err).toContain("was never finished");
    expect(history().startsWith(before)).toBe(true);
    expect(readHistory(history())).toMatchObject({ breaks: [] });
    expect(readHistory(history()).entries.length).toBe(3);
    expect(readFileSync(join(folder, "shed.history.torn"), "utf8")).toBe(`${before.slice(0, 100)}\n`);
  });
  it("adds the line break that a complete last line lacks", async () => {
    const { plan, folder, history } = scratch();
    await leeway("record", plan, ...FIRST);
    writeFileSync(join(folder, "shed.history.jsonl"), history().replace(/\n$/, ""));
    await leeway("record", plan, "--status", "2027-02-08", "--started", "felt=2027-02-05");
    expect(readHistory(history()).entries.length).toBe(3);
    expect(readHistory(history()).breaks).toEqual([]);
  });
});

describe("leeway history", () => {
  it("says that there is none yet, and keeps the first with --add", async () => {
    const { plan, history } = scratch();
    expect(await leeway("history", plan)).toBe(0);
    expect(out).toContain("No forecast was kept yet");
    expect(await leeway("history", plan, "--add", "--why", "As agreed", "--today", "2027-01-20")).toBe(0);
    expect(readHistory(history()).entries[0]?.change).toEqual({ what: "forecast kept", why: "As agreed" });
  });
  it("tells of a line that was changed; with --fail by code 1", async () => {
    const { plan, folder, history } = scratch(PLAN.replace(/returnTriggers.*\n/, ""));
    await leeway("record", plan, ...FIRST);
    expect(await leeway("history", plan, "--fail")).toBe(0);
    expect(out).toContain("The history holds together");
    writeFileSync(
      join(folder, "shed.history.jsonl"),
      history().replace('"iterations":256', '"iterations":257'),
    );
    expect(await leeway("history", plan, "--fail")).toBe(1);
    expect(out.replace(/\s+/g, " ")).toContain(
      "shed.history.jsonl:1: this line was changed after it was written.",
    );
  });
  it("explains each step with the versions kept, and says where one is missing", async () => {
    const { plan, folder, history } = scratch();
    await leeway("record", plan, ...FIRST);
    out = "";
    await leeway("history", plan, "--explain", "--json");
    type Step = { from: string; to: string; difference: { workingDays: number; money: number } };
    const { steps } = JSON.parse(out) as { steps: Step[] };
    // What moved is what lies between the two lines that were kept.
    const [first, last] = readHistory(history()).entries;
    expect(steps.map(({ from, to }) => [from, to])).toEqual([[first?.sha256, last?.sha256]]);
    const days = (entry = first) => entry?.finish.committed.workingDays ?? Number.NaN;
    const money = (entry = first) => entry?.cost.committed ?? Number.NaN;
    expect(steps[0]?.difference.workingDays).toBeCloseTo(days(last) - days(), 6);
    expect(steps[0]?.difference.money).toBeCloseTo(money(last) - money(), 6);
    expect(Math.abs(days(last) - days()) + Math.abs(money(last) - money())).toBeGreaterThan(0);
    rmSync(join(folder, "shed.versions"), { recursive: true });
    out = "";
    expect(out).not.toMatch(/history \S+ --explain/);
    out = "";
    await leeway("history", plan);
    expect(out).toMatch(/history \S+ --explain/);
    out = "";
    await leeway("history", plan, "--explain");
    expect(out).not.toMatch(/history \S+ --explain/);
    expect(out.replace(/\s+/g, " ")).toContain("was not kept: nothing can be said");
  });
});

describe("leeway triggers", () => {
  it("ends with code 1 with --fail, and only then, when one has tripped", async () => {
    const { plan } = scratch(PLAN.replace("2027-02-19 }\n", "2027-02-02 }\n"));
    expect(await leeway("triggers", plan)).toBe(0);
    expect(await leeway("triggers", plan, "--fail")).toBe(1);
    expect(
      await leeway(
        "triggers",
        scratch(PLAN.replace("finishLaterThan: 2027-02-19", "costAbove: 99999")).plan,
        "--fail",
      ),
    ).toBe(0);
  });
  it("says how to agree on some where there are none", async () => {
    expect(await leeway("triggers", scratch(PLAN.replace(/returnTriggers.*\n/, "")).plan, "--fail")).toBe(0);
    expect(out).toContain("returnTriggers:");
  });
});

describe("files beside a plan", () => {
  it("are not written over a plan that changed meanwhile", async () => {
    const { plan } = scratch();
    expect(await writePlan(plan, `${PLAN} `, "never")).toBe(false);
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
    expect(await writePlan(plan, PLAN, "now")).toBe(true);
    expect(readFileSync(plan, "utf8")).toBe("now");
  });
  it("get a line of everybody who writes at once, each linked to the one before", async () => {
    const { plan, history } = scratch();
    await leeway("record", plan, ...FIRST);
    const [first] = readHistory(history()).entries;
    if (first === undefined) throw new Error("no entry");
    const { hash: _, previous: __, ...facts } = first;
    await Promise.all(
      Array.from({ length: 8 }, (_, i) =>
        appendToHistory(besidePlan(plan), () => [{ ...facts, seed: String(i) }]),
      ),
    );
    const { entries, breaks } = readHistory(history());
    expect(breaks).toEqual([]);
    expect(new Set(entries.map(({ seed }) => seed)).size).toBe(9);
  });
  it("are freed of the lock of a process that is gone", async () => {
    const { plan } = scratch();
    writeFileSync(`${plan}.lock`, "999999999");
    await expect(withLock(plan, () => "done")).resolves.toBe("done");
    expect(existsSync(`${plan}.lock`)).toBe(false);
  });
  it("stand beside the file itself where a plan is reached by a link", async () => {
    const { plan, folder, history } = scratch();
    symlinkSync(plan, join(folder, "link.plan.yaml"));
    expect(await leeway("record", join(folder, "link.plan.yaml"), ...FIRST)).toBe(0);
    expect(readHistory(history()).entries.length).toBe(2);
    expect(lstatSync(join(folder, "link.plan.yaml")).isSymbolicLink()).toBe(true);
    expect(readFileSync(plan, "utf8")).toContain("statusDate");
  });
  it("are named after the plan", () => {
    const name = (plan: string) => besidePlan(plan).history;
    expect(name("a/shed.plan.yaml")).toBe(join("a", "shed.history.jsonl"));
    expect(name("shed.plan.json")).toBe("shed.history.jsonl");
    expect(name("shed.yml")).toBe("shed.history.jsonl");
    expect(name("shed")).toBe("shed.history.jsonl");
  });
  it("hold hashes that anybody can check", async () => {
    const { plan, history } = scratch();
    await leeway("record", plan, ...FIRST);
    for (const line of history().trim().split("\n")) {
      const { hash, ...rest } = JSON.parse(line) as Record<string, unknown>;
      // RFC 8785: keys in the order of their code units at every depth.
      const sorted = (value: unknown): unknown =>
        Array.isArray(value)
          ? value.map(sorted)
          : typeof value === "object" && value !== null
            ? Object.fromEntries(
                Object.entries(value)
                  .sort(([a], [b]) => (a < b ? -1 : 1))
                  .map(([key, one]) => [key, sorted(one)]),
              )
            : value;
      expect(hash).toBe(
        createHash("sha256")
          .update(JSON.stringify(sorted(rest)))
          .digest("hex"),
      );
    }
  });
});
