import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import {
  documentOf,
  estimateTable,
  importEstimates,
  readPlan,
  writeCsv,
} from "../../../packages/core/src/index.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

// Laws, no source needed: what goes out comes back, and what was spoilt in the plan is put right by the table.

const seeds = Array.from({ length: 20 }, (_, index) => 100 + index);

function tableText(text: string): string {
  const { header, rows } = estimateTable(documentOf(text) ?? {});
  return writeCsv(header, rows);
}

describe("a table of estimates of a random plan", () => {
  it("changes no character when it comes back as it was", () => {
    for (const seed of seeds) {
      const text = stringify(randomPlanDocument(seededRng(seed)));
      const back = importEstimates(text, tableText(text));
      expect({ seed, text: back.text, changes: back.changes }).toEqual({ seed, text, changes: [] });
    }
  });

  it("puts every number back where it was: the same hash", () => {
    let changed = 0;
    for (const seed of seeds) {
      const text = stringify(randomPlanDocument(seededRng(seed), { progress: false }));
      const document = JSON.parse(JSON.stringify(documentOf(text)));
      for (const task of [document.tasks].flat()) {
        for (const of of ["duration", "effort", "cost", "costPerDay"]) {
          const value = task[of];
          if (typeof value === "number") task[of] = value + 1;
          else if (Array.isArray(value)) task[of] = value.map((each: number) => each + 1);
          else if (value?.low !== undefined) {
            for (const part of ["low", "likely", "high"]) if (value[part] !== undefined) value[part] += 1;
          }
        }
      }
      const spoilt = stringify(document);
      const back = importEstimates(spoilt, tableText(text));
      expect(back.problems, `seed ${seed}`).toEqual([]);
      expect(readPlan(back.text).plan?.sha256, `seed ${seed}`).toBe(readPlan(text).plan?.sha256);
      changed += back.changes.length;
    }
    expect(changed).toBeGreaterThan(40);
  });
});
