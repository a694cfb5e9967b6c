// Plans as values in memory, spoiled: see text.test.ts.
import { inspect } from "node:util";
import { planFromData } from "@leeway/core";
import fc from "fast-check";
import { expect, it } from "vitest";
import { documents } from "../support/corpus.ts";
import { effort, PATIENCE } from "../support/effort.ts";
import { faultsOfForecast, faultsOfPlan, faultsOfReading } from "../support/judgePlan.ts";
import { dataSoup, spoiledData } from "../support/spoilData.ts";

it.each([
  ["spoiled documents", spoiledData(documents), 0.3],
  ["soup of keys and values", dataSoup, 0.05],
] as const)(
  "takes %s for what they say, or refuses them in words",
  (name, values, share) => {
    let accepted = 0;
    const { numRuns, ...how } = effort(share);
    fc.assert(
      fc.property(values, fc.nat(3), (value, lot) => {
        const reading = planFromData(value);
        const faults = faultsOfReading(reading, inspect(value, { depth: 9 }));
        const { plan } = reading;
        if (plan !== undefined) {
          accepted++;
          // As JSON says it: keys with nothing behind them are not there.
          faults.push(...faultsOfPlan(plan, JSON.parse(JSON.stringify(value))));
          if (lot === 0) faults.push(...faultsOfForecast(plan));
        }
        expect(faults).toEqual([]);
      }),
      { numRuns, ...how },
    );
    console.log(`${name}: ${numRuns}, ${accepted} accepted`);
    expect(Object.hasOwn(Object.prototype, "id")).toBe(false);
  },
  PATIENCE,
);
