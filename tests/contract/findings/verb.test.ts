// The verb check, called as the command calls it. Source: the project's published command line; widths: what help
// promises. That findings are right is tested beside the table.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Finding } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { checkVerb } from "../../../apps/command/src/verbs/check.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { cleanPlan, type Edits, edited } from "./cleanPlan.ts";

const folder = temporaryFolder();

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
function check(data: unknown, ...words: string[]): Promise<number> {
  const file = join(folder, "plan.json");
  writeFileSync(file, typeof data === "string" ? data : JSON.stringify(data));
  const today = words.includes("--today") ? [] : ["--today", "2027-01-15"];
  const parsed = parseCall(["check", file, "--iterations", "400", ...today, ...words]);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  return checkVerb(parsed.call);
}
const lead: Edits = { "tasks.wire.after": { task: "frame", lag: -1 } };
const acceptance = { finding: "lead", who: "omar", date: "2027-01-10", why: "Both know when." };

describe("check", () => {
  it("of a clean plan says so, and gives the measures", async () => {
    expect(await check(cleanPlan(), "--fail-on", "note")).toBe(0);
    expect(out).toContain("No findings.");
    expect(out).toMatch(/Critical path length index +4\.\d\d +at least 0\.95/);
    expect(out).toContain("Run: seed leeway, 400 futures");
    expect(err).toBe("");
  });

  it.each([
    ["error", 0],
    ["warning", 1],
    ["note", 1],
  ])("--fail-on %s ends with %s where the worst is a warning", async (level, code) => {
    expect(await check(edited(lead), "--fail-on", level)).toBe(code);
  });

  it("does not count what was accepted, and still shows it", async () => {
    const plan = edited({ ...lead, acceptedFindings: acceptance });
    expect(await check(plan, "--fail-on", "note")).toBe(0);
    expect(out).toContain("No findings. 1 more is accepted.");
    expect(out).toContain("Both know when. (omar, 2027-01-10)");
  });

  it("--json prints findings, measures and the run, and nothing else", async () => {
    expect(await check(edited({ ...lead, acceptedFindings: acceptance }), "--json")).toBe(0);
    const answer = JSON.parse(out);
    expect(Object.keys(answer).sort()).toEqual(["findings", "measures", "plan", "run", "today"]);
    expect(answer.run).toMatchObject({ seed: "leeway", iterations: 400, sha256: answer.plan.sha256 });
    expect(answer.findings).toMatchObject([
      { code: "lead", path: "tasks[7].after[0]", accepted: { who: "omar" } },
    ]);
  });

  it("--as-written draws nothing and says what it leaves out", async () => {
    const plan = edited({ "commitment.finishBy": "2027-03-05" });
    const codes = () => JSON.parse(out).findings.map(({ code }: Finding) => code);
    await check(plan, "--json");
    expect(codes()).toContain("date-unlikely");
    out = "";
    await check(plan, "--json", "--as-written");
    expect(codes()).not.toContain("date-unlikely");
    expect(JSON.parse(out).run).toBeUndefined();
    out = "";
    await check(plan, "--as-written");
    expect(out).toContain("Without a forecast");
  });

  it("of a plan that runs past its calendars still says what can be said", async () => {
    const plan = edited({ "tasks.paint.duration": [20000, 30000, 40000], "risks.frost.owner": undefined });
    expect(await check(plan, "--json", "--fail-on", "error")).toBe(1);
    const codes = JSON.parse(out).findings.map(({ code }: Finding) => code);
    expect(codes[0]).toBe("runs-past-calendar");
    expect(codes).toContain("entry-without-owner");
  });

  it("of a plan that only some futures take past its calendars says so among the findings", async () => {
    const plan = edited({ "tasks.paint.duration": [3, 4, 60000], "risks.frost.owner": undefined });
    expect(await check(plan, "--json", "--fail-on", "error")).toBe(1);
    const findings: Finding[] = JSON.parse(out).findings;
    expect(findings[0]).toMatchObject({ code: "beyond-calendar", severity: "error", path: "tasks" });
    expect(findings.map(({ code }) => code)).toContain("entry-without-owner");
  });

  it("of what is no plan lists the mistakes, with code 2", async () => {
    expect(await check("title: [", "--json")).toBe(2);
    expect(JSON.parse(out).findings.length).toBeGreaterThan(0);
    expect(err).not.toBe("");
  });

  it("refuses a day that does not exist", async () => {
    expect(await check(cleanPlan(), "--today", "2027-02-30")).toBe(2);
    expect(out).toBe("");
    expect(err).toContain("--today 2027-02-30");
  });

  it.each(["60", "80", "110"])("keeps to %s columns", async (columns) => {
    vi.stubEnv("COLUMNS", columns);
    await check(
      edited({
        ...lead,
        purpose: undefined,
        benefits: undefined,
        risks: undefined,
        people: undefined,
        ...noPeople,
      }),
    );
    vi.unstubAllEnvs();
    // Commands to copy are never wrapped.
    const long = out.split("\n").filter((line) => line.length > Number(columns) && !line.includes("leeway "));
    expect(long).toEqual([]);
  });

  it("shows text of the plan as text", async () => {
    await check(edited({ "tasks.paint.name": "Paint\u001b[2J it\u202e", "tasks.paint.basis": undefined }));
    expect(out).toContain("Paint");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(out).not.toMatch(/[\u001b\u202e]/);
  });
});

const noPeople: Edits = {
  stakeholders: ["omar", "lena", "chair"].map((id) => ({ id, name: id })),
  ...Object.fromEntries(
    cleanPlan()
      .tasks.filter((task) => "people" in task)
      .flatMap(({ id }) => [
        [`tasks.${id}.people`, undefined],
        [`tasks.${id}.scope`, undefined],
      ]),
  ),
};
