import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import {
  documentOf,
  importTable,
  type Plan,
  planFromData,
  readPlan,
  type TableOfPlan,
  tableOf,
  writeCsv,
} from "../../../packages/core/src/index.ts";
import { type RandomPlanOptions, randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

// A law, no source needed: what goes out as a table comes back as it was. The random plans are the oracle's, written
// from the page of the plan format by somebody else; the tables are also read by csv-parse, an independent library.

const WHICH: readonly TableOfPlan[] = ["tasks", "people", "register"];
const seeds = Array.from({ length: 20 }, (_, index) => index + 1);

function randomText(seed: number, options: RandomPlanOptions = {}): string {
  const rng = seededRng(seed);
  const document = randomPlanDocument(rng, options);
  const text = rng() < 0.3 ? JSON.stringify(document, null, 2) : stringify(document);
  return rng() < 0.5 || text.startsWith("{") ? text : text.replace("tasks:", "# what is done\ntasks:");
}
function tableText(text: string, which: TableOfPlan): string {
  const { header, rows } = tableOf(documentOf(text) ?? {}, which);
  return writeCsv(header, rows);
}
/** What a plan is without its hashes: a list of one may be written without brackets. */
function meaning(text: string): Partial<Plan> | undefined {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return { ...plan, sha256: "", approvalSha256: "" };
}

describe("a table of a random plan", () => {
  it.each(WHICH)("of %s changes no character when it comes back as it was", (which) => {
    for (const seed of seeds) {
      const text = randomText(seed);
      const back = importTable(text, tableText(text, which), which, { removeMissing: true });
      expect(back.problems.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(back.text === text && back.changes.length === 0, `seed ${seed}`).toBe(true);
    }
  });

  it("undoes every change to tasks and register: the same meaning, read from another plan's lists", () => {
    let compared = 0;
    for (const seed of seeds) {
      // A task that waits for a response (`onlyIf`) needs the register first, an impact the tasks.
      const text = randomText(seed, { chance: false, progress: false });
      const other: Record<string, unknown> = JSON.parse(JSON.stringify(documentOf(text)));
      // What points at tasks goes first; a plan without any task is none.
      for (const key of ["correlations", "overheads", "intervals", "benefits", "commitment", "statusDate"]) {
        delete other[key];
      }
      const whole = planFromData(other).plan;
      if (whole === undefined) continue;
      const nothing = [{ id: "nothing-yet", name: "Nothing yet", milestone: true }];
      const bare = { ...other, tasks: nothing, risks: [], assumptions: [] };
      const emptied = stringify(bare);
      const [tasks, register] = [tableText(text, "tasks"), tableText(text, "register")];
      const first = importTable(emptied, tasks, "tasks", { removeMissing: true });
      expect(
        first.problems.filter(({ severity }) => severity === "error"),
        `seed ${seed}`,
      ).toEqual([]);
      const second = importTable(first.text, register, "register");
      expect(
        second.problems.filter(({ severity }) => severity === "error"),
        `seed ${seed}`,
      ).toEqual([]);
      expect(meaning(second.text), `seed ${seed}`).toEqual({ ...whole, sha256: "", approvalSha256: "" });
      compared++;
    }
    expect(compared).toBeGreaterThan(15);
  });

  it("puts back what was changed in the plan: the same hash", () => {
    let changed = 0;
    for (const seed of seeds) {
      const text = randomText(seed);
      const document = documentOf(text) as {
        tasks: Record<string, unknown>[];
        risks?: Record<string, unknown>[];
      };
      const copy: typeof document = JSON.parse(JSON.stringify(document));
      for (const task of [copy.tasks].flat()) task.name = `Another ${String(task.name)}`;
      for (const risk of [copy.risks ?? []].flat()) risk.cause = "made up";
      const spoilt = stringify(copy);
      if (readPlan(spoilt).plan === undefined) continue;
      const tasks = importTable(spoilt, tableText(text, "tasks"), "tasks", { removeMissing: true });
      const both = importTable(tasks.text, tableText(text, "register"), "register", { removeMissing: true });
      expect(readPlan(both.text).plan?.sha256, `seed ${seed}`).toBe(readPlan(text).plan?.sha256);
      changed += tasks.changes.length;
    }
    expect(changed).toBeGreaterThan(50);
  });

  it("reads the same in an independent library", () => {
    for (const seed of seeds.slice(0, 20)) {
      const text = randomText(seed);
      for (const which of WHICH) {
        const { header, rows } = tableOf(documentOf(text) ?? {}, which);
        const theirs = parse(writeCsv(header, rows), { record_delimiter: "\r\n" }) as string[][];
        const plain = (cell: string) => (cell.startsWith("'") ? cell.slice(1) : cell);
        expect(theirs.map((row) => row.map(plain))).toEqual([header, ...rows.map((row) => row.map(String))]);
      }
    }
  });
});
