// A table into a plan, as a planner changes it in a spreadsheet: what is taken over, what is told, what is refused.
// Common practice, no source.
import { describe, expect, it } from "vitest";
import {
  documentOf,
  importEstimates,
  importTable,
  tableOf,
  writeCsv,
} from "../../../packages/core/src/index.ts";

const PLAN = `# our shed
format: 1
title: Shed
start: 2027-02-01
people: [{ id: ana, name: Ana }, { id: ben, name: Ben }]
tasks:
  # first the ground
  - id: dig
    name: Dig # by hand
    duration: [3, 4, 8]
    cost: 500
  - { id: end, name: End, milestone: true, after: dig }
risks:
  - id: rain
    name: Rain
    probability: 0.3
    impacts: { tasks: dig, delay: [1, 2, 4] }
`;
const errors = (problems: { severity: string; path: string; code: string }[]) =>
  problems.filter(({ severity }) => severity === "error").map(({ path, code }) => `${path} ${code}`);
const table = (...lines: string[]) => `${lines.join("\r\n")}\r\n`;

describe("importTable", () => {
  it("takes over what changed, adds what is new, keeps comments and order, takes nothing out", () => {
    const read = importTable(
      PLAN,
      table("name,id,duration,after,people", '"Dig deep",dig,"[3, 5, 9]",,', 'Pave,pave,2,dig,"ana, ben"'),
      "tasks",
    );
    expect(errors(read.problems)).toEqual([]);
    expect(read.text).toBe(
      PLAN.replace("name: Dig #", "name: Dig deep #")
        .replace("[3, 4, 8]", "[3, 5, 9]")
        .replace(
          "after: dig }\n",
          "after: dig }\n  - { id: pave, name: Pave, duration: 2, after: [dig], people: [ana, ben] }\n",
        ),
    );
    expect(read.changes.map(({ kind, of, key, row }) => [kind, of, key, row])).toEqual([
      ["changed", "dig", "name", 2],
      ["changed", "dig", "duration", 2],
      ["added", "pave", undefined, 3],
    ]);
  });

  it("takes out what is missing only when asked to", () => {
    const some = table("id,name,milestone,after", "end,End,yes,");
    const kept = importTable(PLAN, some, "tasks");
    expect(kept.text).toBe(PLAN);
    expect(kept.problems).toMatchObject([
      { code: "emptied", severity: "warning", path: "row 2, column “after”" },
    ]);
    const cut = importTable(PLAN, some, "tasks", { removeMissing: true });
    // Rain still hits a task that is gone: the plan would be none, so nothing is taken over.
    expect(errors(cut.problems)).toHaveLength(1);
    expect(cut.text).toBe(PLAN);
    const rain = importTable(PLAN, table("what,of,id"), "register", { removeMissing: true });
    expect(documentOf(rain.text)).not.toHaveProperty("risks.0");
  });

  it("lists every problem at once, with row and column, and then takes nothing over", () => {
    const bad = table(
      "id,nmae,name,duration,target,chance",
      "dig,x,Dig,3 days,2027-02-30,30%",
      "dig,,Dig,3,,",
      ",,Nothing,3,,",
      "new,,New,[1;2,05.04.2027,",
    );
    const read = importTable(PLAN, bad, "tasks");
    expect(read.text).toBe(PLAN);
    expect(errors(read.problems)).toEqual([
      "row 3, column “id” repeated-row",
      "row 4, column “id” missing-id",
      "row 2, column “duration” not-a-number",
      "row 2, column “chance” not-a-number",
      "row 5, column “duration” brackets",
    ]);
    expect(read.problems.find(({ path }) => path.includes("chance"))?.remedy).toBe("Write 0.3.");
    expect(read.problems[0]).toMatchObject({ code: "unknown-column", severity: "warning" });
    expect(read.problems[0]?.remedy).toContain("“name”");
  });

  it("finds what only the whole plan shows at the row and column it came from", () => {
    const read = importTable(
      PLAN,
      table("id,name,duration,target,after", 'dig,Dig,"[5, 4, 8]",5.4.2027,endd'),
      "tasks",
    );
    expect(read.text).toBe(PLAN);
    expect(new Set(read.problems.map(({ path }) => path))).toEqual(
      new Set(["row 2, column “duration”", "row 2, column “target”", "row 2, column “after”"]),
    );
  });

  it("reads semicolons and decimal commas, and says so; refuses what may be a thousand", () => {
    const register = "what;of;id;probability;scale;name\r\nrisk;;rain;0,25;;Rain\r\n";
    const read = importTable(PLAN, register, "register");
    expect(read.text).toBe(PLAN.replace("probability: 0.3", "probability: 0.25"));
    expect(read.problems).toMatchObject([
      { code: "decimal-comma", severity: "warning", path: "row 2, column “probability”" },
    ]);
    const cost = importTable(PLAN, "id;cost\r\ndig;1.500\r\n", "tasks");
    expect(errors(cost.problems)).toEqual(["row 2, column “cost” not-a-number"]);
    expect(cost.problems[0]?.remedy).toBe("Write 1500, or 1,5 if the dot is the decimal point.");
  });

  it("puts a new risk with its impacts and responses in as one", () => {
    const read = importTable(
      PLAN,
      table(
        "what,of,id,name,probability,tasks,delay,cost,adopted",
        "risk,,frost,Frost,0.1,,,,",
        "impact,frost,1,,,dig,2,,",
        "response,frost,straw,Straw,0.05,,,80,yes",
        "response,rain,tent,A tent,0.1,,,200,",
      ),
      "register",
    );
    expect(errors(read.problems)).toEqual([]);
    expect(documentOf(read.text)).toMatchObject({
      risks: [
        { id: "rain", responses: [{ id: "tent", action: "A tent", probability: 0.1, cost: 200 }] },
        {
          id: "frost",
          impacts: [{ tasks: ["dig"], delay: 2 }],
          responses: [{ id: "straw", action: "Straw", probability: 0.05, cost: 80, adopted: true }],
        },
      ],
    });
    expect(read.text.startsWith("# our shed\n")).toBe(true);
    const lost = importTable(PLAN, table("what,of,id,tasks,delay", "impact,storm,1,dig,2"), "register");
    expect(errors(lost.problems)).toEqual(["row 2, column “of” unknown-id"]);
  });

  it("does not take a formula for one: what goes out with an apostrophe comes back without", () => {
    const text = PLAN.replace("name: Dig #", 'name: "=1+1" #');
    const { header, rows } = tableOf(documentOf(text) ?? {}, "tasks");
    const csv = writeCsv(header, rows);
    expect(csv).toContain("dig,'=1+1,");
    expect(importTable(PLAN, csv, "tasks").text).toBe(text.replace('"=1+1"', "=1+1"));
  });
});

describe("importEstimates", () => {
  it("keeps the form, names rows that are of nothing", () => {
    const read = importEstimates(
      PLAN,
      table("task,of,low,likely,high,basis", "dig,duration,2,4,9,Three sheds", "dig,cost,,600,,"),
    );
    expect(read.problems).toEqual([]);
    expect(read.text).toBe(
      PLAN.replace("[3, 4, 8]", "[2, 4, 9]").replace("cost: 500\n", "cost: 600\n    basis: Three sheds\n"),
    );
    const bad = importEstimates(
      PLAN,
      table("task,of,low,likely,high", "digg,duration,1,2,3", "dig,price,1,2,3", "dig,duration,5,4,3"),
    );
    expect(bad.text).toBe(PLAN);
    expect(errors(bad.problems)).toEqual([
      "row 2, column “task” unknown-id",
      "row 3, column “of” estimate-of",
    ]);
    const order = importEstimates(PLAN, table("task,of,low,likely,high", "dig,duration,5,4,3"));
    expect(errors(order.problems)[0]).toMatch(/^row 2, column “duration”/);
  });
});
