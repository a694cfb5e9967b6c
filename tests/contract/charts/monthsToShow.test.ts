import { monthsToShow, roundToStep } from "@leeway/charts";
import fc from "fast-check";
import { expect, it } from "vitest";

const step = 1000;
const written = (sum: number) => roundToStep(sum, step);

// What stands last in a table of months has to be the whole that is said beside it. Common practice, no source.
it("shows months until a sum stands as the whole is written, and none after that", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 1, maxLength: 30 }), (spent) => {
      const byEnd = spent.map((_, m) => [spent.slice(0, m + 1).reduce((sum, more) => sum + more)] as const);
      const sum = byEnd.at(-1)?.[0] ?? 0;
      const shown = byEnd.slice(0, monthsToShow(byEnd, step)).map(([end]) => written(end));
      expect(shown.at(-1)).toBe(written(sum));
      if (shown.length > 1) expect(shown.at(-2)).not.toBe(written(sum));
    }),
  );
});

it("goes on to a month in which something is spent that leaves the whole as it is written", () => {
  const byEnd = [[500_000], [500_000], [500_300], [500_300]];
  expect(monthsToShow(byEnd, step)).toBe(1);
  expect(monthsToShow(byEnd, step, [40_000, 0, 2_000, 300])).toBe(3);
  expect(monthsToShow([], step)).toBe(0);
});
