import { factsOfJson, hashOfLine, readHistory, recordProgress } from "@leeway/core";
import { faultsOf } from "./judgeProblems.ts";

/** All that is wrong with how a file of progress was taken, and with the plan it is recorded in. */
export function faultsOfProgressJson(plan: string, json: string): string[] {
  const { facts, problems } = factsOfJson(json, "progress.json");
  const faults = faultsOf(problems);
  const { after, problems: found } = recordProgress(plan, { statusDate: "2029-01-05", facts });
  faults.push(...faultsOf(found));
  if (after === undefined) return faults;
  const written = json.match(/-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?/g)?.map(Number) ?? [];
  for (const { id, spent } of after.tasks) {
    // 12.5 and 350 are what the plans of this folder say was spent.
    if (spent !== undefined && !plan.includes(`${spent}`) && !written.includes(spent)) {
      faults.push(`${id} is said to have cost ${spent}, which stands nowhere`);
    }
  }
  return faults;
}

/** All that is wrong with how a history was read: lines lost, or a changed one taken for a whole one. */
export function faultsOfHistory(text: string, hashes: ReadonlySet<string>): string[] {
  const { entries, lines, breaks, torn } = readHistory(text);
  const faults: string[] = [];
  if (lines.length !== entries.length) faults.push("entries without their lines");
  const rows = text.replace(/^\uFEFF/, "").split("\n");
  const told = new Set([...lines, ...breaks.map(({ line }) => line), torn?.line]);
  rows.forEach((row, index) => {
    if (row.trim() !== "" && !told.has(index + 1)) faults.push(`line ${index + 1} is told of nowhere`);
  });
  const changed = new Set(breaks.filter(({ what }) => what === "changed").map(({ line }) => line));
  entries.forEach((entry, index) => {
    const line = lines[index] ?? 0;
    if (changed.has(line)) return;
    if (hashOfLine(entry) !== entry.hash) faults.push(`line ${line} was changed, and is told as whole`);
    if (!hashes.has(entry.hash)) faults.push(`line ${line} was forged, and nobody could have told`);
  });
  return faults;
}
