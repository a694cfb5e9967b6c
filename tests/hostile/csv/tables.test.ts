// Tables on their way back, spoiled. No outside source for what is asked: a plan again or located problems in words, the
// text as it came where something is wrong, and no number in the plan that csv-parse finds in no cell.
import fc from "fast-check";
import { expect, it } from "vitest";
import { effort, PATIENCE } from "../support/effort.ts";
import { faultsOfTable } from "../support/judgeTable.ts";
import { spoiledTables } from "../support/spoilTable.ts";
import { tables } from "../support/tables.ts";

it(
  "takes a spoiled table for what it says, or refuses it in words",
  () => {
    const { numRuns, ...how } = effort(0.07);
    fc.assert(
      fc.property(spoiledTables(tables), (one) => {
        expect(faultsOfTable(one)).toEqual([]);
      }),
      { numRuns, ...how },
    );
    console.log(`tables: ${numRuns}`);
  },
  PATIENCE,
);
