// The verb brief, called as the command calls it. Source: the project's published command line: markdown or html, to
// standard output or --out FILE; --for APPROVER; --json prints one document; bad calls are listed at once, code 2.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brief, reach } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { briefVerb } from "../../../apps/command/src/verbs/brief.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { fullPlan, planOf, today } from "./plans.ts";

const folder = temporaryFolder();
const file = join(folder, "shed.plan.yaml");
writeFileSync(file, fullPlan);

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

/** The exit code. */
function call(...words: string[]): Promise<number> {
  const parsed = parseCall(["brief", file, "--iterations", "200", ...words]);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  return briefVerb(parsed.call);
}

describe("brief", () => {
  it("prints Markdown, the answer first", async () => {
    expect(await call("--today", today)).toBe(0);
    expect(out).toMatch(
      /^# Shed roof\n\nBrief for decision · 20 Jan 2027\n\n## What you are asked to decide\n/,
    );
    expect(out.endsWith("\n")).toBe(true);
    expect(err).toBe("");
  });

  it("prints the very object of the library with --json", async () => {
    expect(await call("--json", "--today", today)).toBe(0);
    expect(JSON.parse(out)).toEqual(brief(planOf(fullPlan), { today, iterations: 200 }).brief);
  });

  it("prints one HTML document that carries its type and runs nothing", async () => {
    expect(await call("--format", "html", "--today", today)).toBe(0);
    expect(out).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(out).toContain("data:font/woff2;base64,");
    expect(out).not.toMatch(/<script|<link|<img|https?:\/\//);
  });

  it("writes a file whole, says so, and prints nothing", async () => {
    const path = join(folder, "new", "brief.html");
    expect(await call("--out", path)).toBe(0); // the name says what it is
    expect([out, err]).toEqual(["", `Wrote ${path}.\n`]);
    expect(readFileSync(path, "utf8")).toContain("</html>");
    expect(readdirSync(join(folder, "new"))).toEqual(["brief.html"]);
    expect(await call("--format", "markdown", "--out", path, "--force")).toBe(0);
    expect(readFileSync(path, "utf8")).toMatch(/^# /);
  });

  it("lets an existing file stand, and writes over it only with --force", async () => {
    const path = join(folder, "mine.md");
    writeFileSync(path, "mine");
    expect(await call("--out", path)).toBe(2);
    expect(err).toContain("Add --force");
    expect(readFileSync(path, "utf8")).toBe("mine");
    expect(await call("--out", path, "--force")).toBe(0);
    expect(readFileSync(path, "utf8")).toContain("# Shed roof");
  });

  it("says what the run left out", async () => {
    expect(await call("--json", "--without", "rain", "--confidence", "0.9")).toBe(0);
    const answer: { confidence: number; scenario: unknown } = JSON.parse(out);
    expect([answer.confidence, answer.scenario]).toEqual([0.9, { without: ["rain"] }]);
    out = "";
    expect(await call("--without", "rain")).toBe(0);
    expect(out).toContain("What if: without rain.");
  });
});

describe("brief --for", () => {
  it("answers one approver, in Markdown, HTML and JSON", async () => {
    expect(await call("--for", "bo")).toBe(0);
    expect(out).toContain("Pre-brief for Bo Reed (Treasurer)");
    out = "";
    expect(await call("--for", "bo", "--format", "html")).toBe(0);
    expect(out).toContain("<title>Pre-brief: Shed roof</title>");
    out = "";
    expect(await call("--for", "bo", "--json")).toBe(0);
    const pre: { approver: { id: string }; questions: unknown[]; figures: { even?: object } } =
      JSON.parse(out);
    expect(pre.approver.id).toBe("bo");
    expect(pre.questions.length).toBeGreaterThan(5);
    // An even chance is half of the futures; what is asked stands in the plan. The rest is what the library answers.
    const even = reach(planOf(fullPlan), { iterations: 200, confidence: 0.5 }).reach;
    expect(pre.figures.even).toMatchObject({ asked: { finishBy: "2027-02-19", sum: 2600, confidence: 0.5 } });
    expect(pre.figures.even).toMatchObject({ answer: even?.answer, chance: even?.chance });
  });

  it("tells what moved since a version", async () => {
    const old = join(folder, "old.plan.yaml");
    writeFileSync(old, fullPlan.replace("duration: [4, 5, 9]", "duration: [3, 4, 6]"));
    expect(await call("--for", "bo", "--since", old)).toBe(0);
    expect(out).toContain("## What changed since I last saw it?");
  });
});

describe("a call that cannot be", () => {
  it.each([
    ["nobody of that id", ["--for", "boo"], "Did you mean bo?"],
    ["a day that is none", ["--today", "2027-02-30"], "--today 2027-02-30"],
    ["another format", ["--format", "pdf"], "Write one of: markdown, html."],
    ["JSON and a format", ["--json", "--format", "html"], "--json prints one JSON document"],
    ["force without a file", ["--force"], "Nothing is written without --out."],
    ["since for nobody", ["--since", "old.yaml"], "Add --for APPROVER"],
    ["a version that is not there", ["--for", "bo", "--since", join(folder, "none.yaml")], "no such file"],
    ["an id that is not there", ["--without", "nobody"], "nobody"],
  ])("says so: %s", async (_what, words, says) => {
    expect(await call(...words)).toBe(2);
    expect(err).toContain(says);
    expect(out).toBe("");
  });

  it("lists everything at once and writes nothing", async () => {
    const path = join(folder, "never.html");
    expect(await call("--format", "pdf", "--today", "soon", "--out", path)).toBe(2);
    expect(err).toContain("--format pdf");
    expect(err).toContain("--today soon");
    expect(existsSync(path)).toBe(false);
  });
});
