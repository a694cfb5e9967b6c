import loadHighs from "highs";
import { describe, expect, it } from "vitest";
import type { LinkDocument, PlanDocument, TaskDocument } from "../../oracle/document.ts";
import { type RandomPlanOptions, randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { forecastOf } from "../laws/runPlan.ts";

/**
 * The plan as written against a linear programme: counted in working time of one calendar, every link is a
 * difference of two starts bounded from below, and the earliest starts are the least solution.
 *
 * Source of the formulation: common practice (critical path as a linear programme; J. E. Kelley, 1961,
 * "Critical-path planning and scheduling: mathematical basis", Oper. Res. 9(3), 296-320; recalled). Solver:
 * HiGHS, Huangfu & Hall (2018), Math. Program. Comput. 10, 119-142.
 *
 * The plans are random, from printed seeds; nothing is drawn, so there is no false alarm.
 */
const options: RandomPlanOptions = {
  fixedOnly: true,
  tasks: [5, 14],
  people: false,
  calendars: false,
  weeks: false,
  progress: false,
  register: false,
  chance: false,
  unbroken: false,
  finishOf: false,
};

/** Working days (Monday to Friday) in [0, t] of a plan that starts on `start`, counted day by day. */
function weekdaysUpTo(start: string, t: number): number {
  const first = Date.parse(`${start}T00:00:00Z`);
  let sum = 0;
  for (let day = 0; day < t - 1e-9; day++) {
    const weekday = new Date(first + day * 86_400_000).getUTCDay();
    if (weekday !== 0 && weekday !== 6) sum += Math.min(1, t - day);
  }
  return sum;
}

const list = <T>(value: T | T[] | undefined): T[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value];

function fixed(value: unknown): number {
  if (value === undefined) return 0;
  if (typeof value !== "number") throw new Error(`not a certain number: ${JSON.stringify(value)}`);
  return value;
}

/** The programme in LP format; variable `s3` is the start of the fourth task in working time. */
function programme(document: PlanDocument): string {
  const tasks = list(document.tasks);
  const at = new Map(tasks.map((task, k) => [task.id, k]));
  const duration = (task: TaskDocument | undefined) => fixed(task?.duration);
  const rows: string[] = [];
  tasks.forEach((task, j) => {
    if (task.notBefore !== undefined) {
      const day = (Date.parse(task.notBefore) - Date.parse(document.start)) / 86_400_000;
      rows.push(`s${j} >= ${weekdaysUpTo(document.start, day)}`);
    }
    for (const written of list(task.after)) {
      const link: LinkDocument = typeof written === "string" ? { task: written } : written;
      const i = at.get(link.task) ?? -1;
      const kind = link.link ?? "finish-to-start";
      let apart = fixed(link.lag);
      if (kind.startsWith("finish")) apart += duration(tasks[i]);
      if (kind.endsWith("finish")) apart -= duration(task);
      rows.push(`s${j} - s${i} >= ${apart}`);
    }
  });
  return [
    "Minimize",
    ` sum: ${tasks.map((_, k) => `s${k}`).join(" + ")}`,
    "Subject To",
    ...rows.map((row, r) => ` r${r}: ${row}`),
    "Bounds",
    ...tasks.map((_, k) => ` s${k} >= 0`),
    "End",
  ].join("\n");
}

describe("the plan as written and a linear programme", () => {
  it("give every task the same earliest start and finish, whatever the links and lags", async () => {
    const highs = await loadHighs();
    const differences: string[] = [];
    let links = 0;
    for (let seed = 1; seed <= 250; seed++) {
      const document = randomPlanDocument(seededRng(seed), options);
      const tasks = list(document.tasks);
      links += tasks.reduce((sum, task) => sum + list(task.after).length, 0);
      const solution = highs.solve(programme(document));
      expect(solution.Status).toBe("Optimal");
      const written = new Map(
        forecastOf(document, { iterations: 1 }).tasks.map((task) => [task.id, task.asWritten]),
      );
      tasks.forEach((task, k) => {
        const { start = Number.NaN, finish = Number.NaN } = written.get(task.id) ?? {};
        const column = solution.Columns[`s${k}`];
        const solved = column !== undefined && "Primal" in column ? column.Primal : Number.NaN;
        const d = fixed(task.duration);
        const ours = [weekdaysUpTo(document.start, start), weekdaysUpTo(document.start, finish)];
        if (!(Math.abs((ours[0] ?? 0) - solved) < 1e-6 && Math.abs((ours[1] ?? 0) - solved - d) < 1e-6)) {
          differences.push(
            `seed ${seed} ${task.id}: [${ours.join(", ")}], solved [${solved}, ${solved + d}]`,
          );
        }
      });
    }
    expect(differences).toEqual([]);
    // 250 plans of about ten tasks: the agreement is about links, not about tasks that stand alone.
    expect(links).toBeGreaterThan(1000);
  });
});
