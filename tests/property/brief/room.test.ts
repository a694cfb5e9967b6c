// Laws of what is said and what is left out.
import { briefSheet } from "@leeway/charts/brief";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangeLabels } from "../../../packages/charts/src/brief/page/arrangeLabels.ts";
import { fitRoom, heightOf } from "../../../packages/charts/src/brief/sheet/fitRoom.ts";
import { rooms } from "../../../packages/charts/src/brief/sheet/rooms.ts";
import { roundTogether } from "../../../packages/charts/src/words/roundTogether.ts";
import { briefed, fullPlan, planOf } from "../../contract/brief/plans.ts";

const { brief } = briefed(planOf(fullPlan), 80);

describe("roundTogether(values, step)", () => {
  // Largest remainder: every part within one step of its value, and the sum the whole rounded. Balinski & Young,
  // Fair Representation (1982), ch. 3; recalled from memory.
  it("keeps each part within a step and the sum", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 12 }),
        fc.constantFrom(0.1, 1, 10, 1000),
        (values, step) => {
          const rounded = roundTogether(values, step);
          const sum = (list: readonly number[]) => list.reduce((total, each) => total + each, 0);
          rounded.forEach((each, i) => {
            expect(Math.abs(each - (values[i] ?? 0))).toBeLessThanOrEqual(step * (1 + 1e-9));
          });
          expect(Math.abs(sum(rounded) - sum(values))).toBeLessThanOrEqual(step * (0.5 + 1e-6));
        },
      ),
      { seed: 20270120 },
    );
  });

  it("rounds 0.4, 0.4, 0.2 to a whole of one", () => {
    expect(roundTogether([0.4, 0.4, 0.2], 1)).toEqual([1, 0, 0]);
  });
});

describe("arrangeLabels(labels, width)", () => {
  it("loses no label, keeps words inside where they fit, and needs no crossing for two far apart", () => {
    const placed = arrangeLabels(
      [
        { at: 20, wide: 100 },
        { at: 330, wide: 100 },
      ],
      350,
    );
    expect(placed.map(({ at, left }) => [at, left]).sort()).toEqual([
      [20, false],
      [330, true],
    ]);
  });
});

describe("the sheet of a brief", () => {
  it("never loses the decision, the commitment, the caution and the run, however little room", () => {
    const [first] = rooms;
    for (const room of rooms) {
      const sheet = briefSheet(brief, room);
      const of = (key: string) => JSON.stringify(sheet.sections.find((section) => section.key === key));
      expect(of("run")).toBe(JSON.stringify(briefSheet(brief, first).sections.at(-1)));
      expect(of("decision")).toContain("Have the shed closed before the spring rain");
      expect(of("commitment")).toContain("Commit to");
      expect(sheet.sections.map(({ key }) => key)).toEqual(briefSheet(brief).sections.map(({ key }) => key));
    }
  });

  it("says how many it leaves out", () => {
    const many = {
      ...brief,
      assumptions: Array.from({ length: 9 }, (_, i) => ({
        ...(brief.assumptions[0] as (typeof brief.assumptions)[number]),
        id: `a${i}`,
      })),
    };
    for (const room of rooms) {
      const list = briefSheet(many, room).sections.find(({ key }) => key === "assumptions");
      expect(JSON.stringify(list)).toContain(`and ${9 - room.assumptions} more`);
    }
  });

  it("takes less, room by room", () => {
    const heights = rooms.map((room) => heightOf(briefSheet(brief, room)));
    heights.slice(1).forEach((height, i) => {
      expect(height).toBeLessThanOrEqual((heights[i] ?? 0) + 1e-9);
    });
    expect(rooms).toContain(fitRoom(brief));
  });
});
