import { documentOf, estimateTable, readPlan, sheetCells, sheetOf, tableOf, writeCsv } from "@leeway/core";
import { jsonTexts, yamlTexts } from "./corpus.ts";
import type { TableCase } from "./judgeTable.ts";

const PROGRESS = "id,started,finished,remaining,spent,status\n";

/** The tables of some of the plans, as they go out; most of JSON, which is read ten times as fast. */
export const tables: readonly TableCase[] = [...jsonTexts.slice(0, 14), ...yamlTexts.slice(0, 2)].flatMap(
  (plan): TableCase[] => {
    const read = readPlan(plan).plan;
    const document = documentOf(plan);
    if (read === undefined || document === undefined) return [];
    const of = (what: "tasks" | "people" | "register"): TableCase => {
      const { header, rows } = tableOf(document, what);
      return { plan, what, csv: writeCsv(header, rows) };
    };
    const estimates = estimateTable(document);
    const [headings = [], ...cells] = sheetCells(sheetOf(read, "p-0", { all: true }));
    const facts = read.tasks.map(
      ({ id, milestone }) => `${id},2028-08-01,${milestone ? "2028-08-01" : ""},,12.5,\n`,
    );
    return [
      of("tasks"),
      of("people"),
      of("register"),
      { plan, what: "estimates", csv: writeCsv(estimates.header, estimates.rows) },
      { plan, what: "sheet", csv: writeCsv(headings, cells) },
      { plan, what: "progress", csv: PROGRESS + facts.join("") },
    ];
  },
);
