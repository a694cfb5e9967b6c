// The verbs export, import, inform and roles, called as the command calls them. Common practice, no source: what is
// written, what is not, which exit code, and that a refused call leaves the plan as it was.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import ical from "node-ical";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { exportVerb } from "../../../apps/command/src/verbs/export.ts";
import { importVerb } from "../../../apps/command/src/verbs/import.ts";
import { informVerb } from "../../../apps/command/src/verbs/inform.ts";
import { rolesVerb } from "../../../apps/command/src/verbs/roles.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const VERBS = { export: exportVerb, import: importVerb, inform: informVerb, roles: rolesVerb };
const PLAN = `# our shed
format: 1
title: Shed
start: 2027-03-01
iterations: 64
people: [{ id: ana, name: "Ana \\u001b[31mÄ" }, { id: ben, name: Ben }]
decision: { ask: Say yes, by: 2027-02-19 }
stakeholders:
  - { id: chair, name: Chair, inform: { how: Call, every: week, owner: ana, what: Progress } }
approvals: [{ who: chair, decision: pending }]
tasks:
  - id: dig
    name: Dig # by hand
    duration: [3, 4, 8]
    people: ana
    cost: 500
  - { id: end, name: End, milestone: true, after: dig, target: 2027-03-08, accountable: [chair, ben] }
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
  return VERBS[parsed.call.verb.name as keyof typeof VERBS](parsed.call);
}
function events(text: string): { summary: string; uid: string; type: string; description?: string }[] {
  const all = Object.values(ical.sync.parseICS(text)) as unknown as {
    type: string;
    summary: string;
    uid: string;
  }[];
  return all.filter(({ type }) => type === "VEVENT");
}

describe("export and import", () => {
  it.each(["tasks", "estimates", "people", "register"])(
    "%s: the file as it came out leaves the plan as it was",
    async (what) => {
      const plan = file("a.yaml", PLAN);
      const table = join(folder, `${what}.csv`);
      expect(await run("export", plan, "--what", what, "--out", table)).toBe(0);
      expect(await run("export", plan, "--what", what, "--out", table)).toBe(2);
      expect(err).toContain("--force");
      expect(await run("import", plan, "--what", what, "--read", table)).toBe(0);
      expect(readFileSync(plan, "utf8")).toBe(PLAN);
      expect(out).toContain("The plan is as it was.");
      expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
    },
  );

  it("writes a change, or only shows it", async () => {
    const plan = file("b.yaml", PLAN);
    const table = file("b.csv", "id,name,cost\r\ndig,Dig,700\r\n");
    expect(await run("import", plan, "--what", "tasks", "--read", table, "--dry-run", "--json")).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      written: false,
      changes: [{ of: "dig", key: "cost", from: 500, to: 700 }],
    });
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
    expect(await run("import", plan, "--what", "tasks", "--read", table)).toBe(0);
    expect(readFileSync(plan, "utf8")).toBe(PLAN.replace("cost: 500", "cost: 700"));
  });

  it.each([
    ["no table", ["--what", "tasks", "--read", "nowhere.csv"], "no such file"],
    ["nothing said", [], "Which table?"],
    ["a table of nothing known", ["--what", "tsks", "--read", "x.csv"], "Write one of: tasks"],
    ["estimates cut", ["--what", "estimates", "--read", "x.csv", "--remove-missing"], "takes nothing out"],
  ])("refuses %s", async (_name, words, said) => {
    const plan = file("c.yaml", PLAN);
    expect(await run("import", plan, ...words)).toBe(2);
    expect(err).toContain(said);
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });

  it("refuses a table with one thing wrong: row and column, exit code 2, nothing written", async () => {
    const plan = file("d.yaml", PLAN);
    const table = file("d.csv", "id,name,cost\r\ndig,Dug,700\r\nend,End,much\r\n");
    expect(await run("import", plan, "--what", "tasks", "--read", table)).toBe(2);
    expect(err).toContain("row 3, column “cost”");
    expect(readFileSync(plan, "utf8")).toBe(PLAN);
  });

  it("gives the forecast as a table that another library reads, every row with its stamp", async () => {
    expect(await run("export", file("e.yaml", PLAN), "--what", "forecast")).toBe(0);
    const rows = parse(out, { columns: true, bom: true }) as Record<string, string>[];
    expect(new Set(rows.map(({ what }) => what))).toEqual(
      new Set(["as written", "committed", "finish", "cost", "task", "milestone"]),
    );
    for (const row of rows) expect(row).toMatchObject({ seed: "leeway", futures: "64" });
    const finish = rows.filter(({ what }) => what === "finish").map(({ date }) => date ?? "");
    expect(finish).toEqual([...finish].sort());
  });

  it("gives milestones, targets and the day of the decision as a calendar that another library reads", async () => {
    expect(await run("export", file("f.yaml", PLAN), "--what", "milestones", "--today", "2027-01-01")).toBe(
      0,
    );
    const read = events(out);
    expect(read.map(({ summary }) => summary).sort()).toEqual(
      ["Committed finish: Shed", "Decision: Shed", "End", "Target: End"].sort(),
    );
    expect(read.find(({ summary }) => summary === "End")?.description).toMatch(
      /P10 2027-.*P50 2027-.*P90 2027-.*seed leeway/s,
    );
    expect(read.find(({ summary }) => summary.startsWith("Decision"))?.description).toContain(
      "Still to answer: Chair",
    );
    const first = out;
    out = "";
    await run("export", file("f.yaml", PLAN), "--what", "milestones", "--today", "2027-01-01");
    expect(out).toBe(first);
  });

  it("has no calendar of tasks", async () => {
    expect(await run("export", file("g.yaml", PLAN), "--what", "tasks", "--format", "ics")).toBe(2);
    expect(err).toContain("Write one of: csv, json");
  });
});

describe("inform", () => {
  it("prints the list and writes the calendar; a name cannot command the terminal", async () => {
    const to = join(folder, "inform.ics");
    expect(await run("inform", file("h.yaml", PLAN), "--owner", "ana", "--out", to)).toBe(0);
    expect(out).toMatch(/Mon 1 Mar +Chair: Progress \(Call, Ana/);
    expect(out).not.toContain("\u001b[31m");
    const [series] = events(readFileSync(to, "utf8"));
    expect(series?.summary).toBe("Inform Chair");
    expect(await run("inform", file("h.yaml", PLAN), "--owner", "anna")).toBe(2);
    expect(err).toContain("Did you mean ana?");
  });
});

describe("roles", () => {
  it("fits 80 columns, names rows that break the rule, and comes as a table", async () => {
    const plan = file("i.yaml", PLAN);
    expect(await run("roles", plan)).toBe(0);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(80);
    expect(out).toContain("Dig: nobody is accountable");
    expect(out).toContain("End: 2 are accountable (Chair, Ben)");
    out = "";
    expect(await run("roles", plan, "--format", "csv")).toBe(0);
    const rows = parse(out, { bom: true }) as string[][];
    expect(rows[0]?.slice(0, 3)).toEqual(["id", "name", "phase"]);
    expect(rows[1]?.[0]).toBe("dig");
    out = "";
    expect(await run("roles", plan, "--format", "markdown")).toBe(0);
    expect(out).toMatch(/^\| id \| name \| phase \|/);
    expect(await run("roles", plan, "--json", "--format", "csv")).toBe(2);
  });
});
