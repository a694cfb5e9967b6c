import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";

/** What the register says that happened, happened; a quality bar is one number; conditions have words. */
export function checkFacts(plan: PlanDraft, reading: Reading): void {
  for (const entry of [...(plan.risks ?? []), ...(plan.assumptions ?? [])]) {
    const { actual, status } = entry;
    if (actual === undefined) continue;
    const place = reading.placeOf(actual);
    if (status !== "occurred") {
      const rule = "`actual` says what it did, so it has occurred.";
      reading.report(place, "actual-status", rule, "Write status: occurred, or remove `actual`.");
    }
    const takesTime = (entry.impacts ?? []).some(
      ({ delay, factor, wait }) => delay !== undefined || factor !== undefined || wait !== undefined,
    );
    if (actual.days !== undefined && !takesTime) {
      const rule = "No impact of it delays a task, so its days touch nothing.";
      const remedy = "Add an impact with `tasks` and `delay`, or remove `days`.";
      reading.report(reading.placeOf(actual, "days"), "actual-nowhere", rule, remedy);
    }
  }
  for (const bar of plan.purpose?.quality ?? []) {
    const { node } = reading.placeOf(bar);
    const written = ["atLeast", "atMost"].filter((key) => node.kind === "map" && node.entries.has(key));
    if (written.length !== 1) {
      const rule = "A quality bar has `atLeast` or `atMost`, exactly one of the two.";
      const remedy = written.length === 0 ? "Add the number that has to hold." : "Make two bars of it.";
      const at = written.length === 0 ? reading.placeOf(bar) : reading.placeOf(bar, "atMost");
      reading.report(at, "quality-bound", rule, remedy, { received: bar.id ?? "" });
    }
    if (bar.on !== undefined && bar.measured === undefined) {
      const rule = "`on` is the day it was measured.";
      reading.report(reading.placeOf(bar, "on"), "quality-measured", rule, "Add `measured`, or remove `on`.");
    }
  }
  for (const approval of plan.approvals ?? []) {
    if (approval.conditions !== undefined) continue;
    for (const key of ["conditionsBy", "conditionsMet"] as const) {
      if (approval[key] === undefined) continue;
      const rule = `\`${key}\` belongs to \`conditions\`.`;
      reading.report(reading.placeOf(approval, key), "without-conditions", rule, "Write `conditions`.");
    }
  }
}
