// Plans as text, spoiled. No outside source for what is asked: whatever comes, a plan or located problems in words; a plan
// that is accepted has the numbers another reader finds in its text, and forecasts what the oracle works out from them.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonTexts, yamlTexts } from "../support/corpus.ts";
import { effort, PATIENCE } from "../support/effort.ts";
import { faultsOfText } from "../support/judgePlan.ts";
import { soup, spoiled } from "../support/spoilText.ts";

describe("readPlan", () => {
  it.each([
    ["spoiled YAML", spoiled(yamlTexts), 0.15, 0.05],
    ["spoiled JSON", spoiled(jsonTexts), 0.3, 0.05],
    ["soup of syntax", soup, 0.05, 0],
  ] as const)(
    "takes %s for what it says, or refuses it in words",
    (name, texts, share, least) => {
      const counts = { accepted: 0, forecast: 0, alone: 0 };
      const { numRuns, ...how } = effort(share);
      fc.assert(
        fc.property(texts, (text) => {
          expect(faultsOfText(text, counts)).toEqual([]);
        }),
        { numRuns, ...how },
      );
      console.log(
        `${name}: ${numRuns} texts, ${counts.accepted} accepted, ${counts.forecast} forecast, ${counts.alone} accepted alone`,
      );
      // Otherwise nothing would have been asked of accepted plans.
      expect(counts.accepted).toBeGreaterThanOrEqual(Math.floor(least * numRuns));
      expect(counts.alone).toBeLessThanOrEqual(5 + 0.02 * counts.accepted);
    },
    PATIENCE,
  );
});
