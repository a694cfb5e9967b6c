// Files of progress and histories, spoiled. No outside source for what is asked: see judgeJson.ts.
import {
  forecast,
  type HistoryEntry,
  historyFacts,
  lineOf,
  linked,
  readHistory,
  readPlan,
} from "@leeway/core";
import fc from "fast-check";
import { expect, it } from "vitest";
import { jsonTexts } from "../support/corpus.ts";
import { effort, PATIENCE } from "../support/effort.ts";
import { faultsOfHistory, faultsOfProgressJson } from "../support/judgeJson.ts";
import { spoiled } from "../support/spoilText.ts";

const plan = jsonTexts[0] ?? "";
const ids = (JSON.parse(plan) as { tasks: { id: string }[] | { id: string } }).tasks;

const REPORTS = [
  [{ id: [ids].flat()[0]?.id, started: "2028-03-01", remaining: [2, 4, 7], spent: 350.5 }],
  [
    { id: "e-0", status: "occurred" },
    { id: [ids].flat()[0]?.id, started: "2028-03-01", finished: "2028-03-09" },
  ],
  [],
].map((report) => JSON.stringify(report, undefined, 1));

it(
  "takes a spoiled file of progress for what it says, or refuses it in words",
  () => {
    fc.assert(
      fc.property(spoiled(REPORTS), (json) => {
        expect(faultsOfProgressJson(plan, json)).toEqual([]);
      }),
      effort(0.05),
    );
  },
  PATIENCE,
);

/** A history of three forecasts, each with the hash of the one before. */
function history(): HistoryEntry[] {
  const read = readPlan(plan).plan;
  const found = read && forecast(read, { iterations: 40 }).forecast;
  if (read === undefined || found === undefined) throw new Error("the plan of the test is none");
  const entries: HistoryEntry[] = [];
  for (const date of ["2027-01-04", "2027-01-05", "2027-01-06"]) {
    entries.push(linked(historyFacts(read, found, undefined, { date, what: "as planned" }), entries.at(-1)));
  }
  return entries;
}

it(
  "loses no line of a spoiled history and takes no changed one for whole",
  () => {
    const entries = history();
    const text = entries.map(lineOf).join("");
    const hashes = new Set(entries.map(({ hash }) => hash));
    fc.assert(
      fc.property(spoiled([text]), (spoilt) => {
        expect(faultsOfHistory(spoilt, hashes)).toEqual([]);
      }),
      effort(0.05),
    );
  },
  PATIENCE,
);

it("tells a line that has no canonical form as changed, instead of stumbling over it", () => {
  const [first] = history();
  if (first === undefined) throw new Error("no history");
  const line = lineOf(first).trimEnd().replace(/}$/, "");
  const deep = `${"[".repeat(50_000)}${"]".repeat(50_000)}`;
  for (const odd of [`${line},"x":1e999}\n`, `${line},"x":${deep}}\n`]) {
    expect(readHistory(odd).breaks).toContainEqual({ line: 1, what: "changed" });
  }
});
