import { writeFileSync } from "node:fs";
import { join } from "node:path";
import {
  forecast,
  type Plan,
  readPlan,
  type SchemaName,
  SHEET_COLUMNS,
  type SheetKey,
} from "../../../../packages/core/src/index.ts";

/** A call, and the schema that its answer has to fit. */
export type CallOfVerb = [schema: SchemaName, ...words: string[]];

const TODAY = ["--today", "2027-01-04"];
const SOMEBODY = `
people: { id: ana, name: Ana }
stakeholders: { id: chair, name: Chair, approvesUpTo: 1000000 }
approvals: { who: chair, decision: pending }
`;
const TABLES = ["tasks", "estimates", "register", "people", "forecast", "milestones", "communication"];

/**
 * Every verb that prints JSON, about one plan in a folder of its own, in an order in which each has something to tell:
 * a version is signed, an opinion is given, progress is recorded. A plan without people is asked by somebody added.
 */
export function everyCall(text: string, folder: string): CallOfVerb[] {
  const file = (name: string, content: string) => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  };
  const plan = file("a.plan.yaml", text);
  const bare = planOf(text);
  const peopled = bare.people.length > 0 ? text : text + SOMEBODY;
  const named = file("named.plan.yaml", peopled);
  const read = planOf(peopled);
  const older = file("older.plan.yaml", peopled.replace(/^title: .*$/m, "title: An older one"));
  const task = read.tasks.find(({ duration }) => duration?.kind === "range")?.id ?? "";
  const first = read.tasks.find(({ milestone }) => milestone === false)?.id ?? "";
  const by = read.people[0]?.id ?? "";
  const signer = read.stakeholders.find(({ approvesUpTo = 0 }) => approvesUpTo >= 800_000)?.id ?? "";
  const signs = signer === "" ? (read.approvals[0]?.who ?? "") : signer;
  const entries = [...read.risks, ...read.assumptions];
  const response = entries.flatMap(({ responses }) => responses).find(({ adopted }) => !adopted)?.id;
  const asked = ["--by", read.commitment.finishBy ?? "2027-12-31", "--sum", "500000"];
  const open = read.objections.filter(({ state }) => state === "open").map(({ id }) => id);
  const answers = file("said.json", '{ "basis": "Two such jobs", "high": 30, "low": 10, "likely": 15 }');
  const row: Partial<Record<SheetKey, string>> = {
    task,
    of: "duration",
    unit: "working days",
    low: "9",
    likely: "16",
    high: "40",
    basis: "Asked around",
  };
  const sheet = file(
    "sheet.csv",
    [SHEET_COLUMNS.map(({ heading }) => heading), SHEET_COLUMNS.map(({ key }) => row[key] ?? "")]
      .map((line) => `${line.join(",")}\r\n`)
      .join(""),
  );
  const cells = file("tasks.csv", `id,name\r\n${first},Called otherwise\r\n`);
  return [
    ["check", "check", plan, ...TODAY],
    ["check", "check", plan, "--as-written", ...TODAY],
    ["check", "check", file("broken.plan.yaml", `${text}tsks: []\n`)],
    ["forecast", "forecast", plan, "--tornado"],
    ["verify", "forecast", plan, "--verify", file("saved.json", JSON.stringify(forecast(bare).forecast))],
    ["explain", "explain", plan, "--without", entries[0]?.id ?? ""],
    ["assumptions", "assumptions", plan],
    ["confidence", "confidence", plan],
    ["responses", "responses", plan, "--sum", "5000"],
    ["responses", "responses", plan, ...(response === undefined ? [] : ["--with", response])],
    ["reach", "reach", plan, ...asked],
    ["money", "money", plan, ...asked],
    ["people", "people", named, "--lose", by, "--days", "5"],
    ["paths", "paths", plan, "--indices"],
    ["why", "why", plan, task],
    ["future", "future", plan, "--iteration", "7"],
    ["compare", "compare", older, named],
    ["detail", "detail", ...outlineAndDetail(text, file)],
    ["uplift", "uplift", plan, "--kind", "standard-buildings=0.6", "--kind", "non-standard-buildings=0.4"],
    ["uplift", "uplift", plan, "--kind", "roads", "--stage", "2", "--without", entries[0]?.id ?? ""],
    ["brief", "brief", plan, ...TODAY],
    ["brief", "brief", named, "--for", signs, "--since", older, ...TODAY],
    ["object", "object", named],
    ["roles", "roles", named],
    ["inform", "inform", plan],
    ...TABLES.map((what): CallOfVerb => ["export", "export", plan, "--what", what, "--format", "json"]),
    ["triggers", "triggers", plan],
    ["scorecard", "scorecard", plan],
    ["scorecard", "scorecard", file("past.plan.yaml", pastTasks(bare)), "--apply-to", plan],
    ["history", "history", named, "--add", ...TODAY],
    ["approvals", "approvals", named, ...TODAY],
    ["sign", "sign", named, "--as", signs, "--despite-errors", "--accept", open.join(","), ...TODAY].filter(
      (word, k, words) => word !== "" && !(word === "--accept" && words[k + 1] === ""),
    ) as CallOfVerb,
    ["import", "import", named, "--what", "tasks", "--read", cells],
    ["approvals", "approvals", named, "--signed", older, ...TODAY],
    ["interview", "interview", named, task, "--by", by, "--answers", answers, "--date", "2027-01-04"],
    ["sheet", "sheet", named, "--read", sheet, "--by", signs, "--date", "2027-01-05"],
    ["pool", "pool", named],
    ["pool", "pool", named, task, "--write", "--dry-run"],
    ["object", "object", named, "--as", by, "--text", "Too early", ...TODAY],
    [
      "change",
      "change",
      named,
      "--as",
      by,
      "--what",
      "A start",
      "--why",
      "A reason",
      "--approved-by",
      signs,
      ...TODAY,
    ],
    ["record", "record", named, "--status", read.start, "--started", first, ...TODAY],
    ["history", "history", named, "--explain", ...TODAY],
  ];
}

export function planOf(text: string): Plan {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

/** The plan with one outline task more, and with two in its place that say they detail it. */
function outlineAndDetail(text: string, file: (name: string, content: string) => string): string[] {
  const more = (tasks: string) => text.replace(/^tasks:$/m, `tasks:\n${tasks}`);
  const detail = ["one", "other"].map(
    (id) => `  - { id: ${id}, name: Its ${id} half, duration: [4, 7, 15], detailOf: rough }\n`,
  );
  return [
    file(
      "outline.plan.yaml",
      more("  - { id: rough, name: Rough, duration: [9, 14, 30], detail: outline }\n"),
    ),
    file("detail.plan.yaml", more(detail.join(""))),
  ];
}

/** Finished tasks with ranges, enough of them that what was said can be scored. */
function pastTasks({ start }: Plan): string {
  const tasks = Array.from({ length: 12 }, (_, k) => {
    const said = `duration: [${2 + k}, ${4 + k}, ${9 + k}], started: ${start}, finished: ${start}`;
    return `  - { id: done-${k}, name: Done ${k}, ${said} }\n`;
  });
  return `format: 1\ntitle: Past\nstart: ${start}\nstatusDate: ${start}\ntasks:\n${tasks.join("")}`;
}
