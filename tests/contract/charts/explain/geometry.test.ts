import {
  confidenceSteps,
  futureBars,
  jointDensity,
  palette,
  pathBars,
  peopleWeeks,
  responseWorth,
  spending,
} from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { densityCells } from "../../../../packages/charts/src/joint/densityCells.ts";
import { flow } from "../../../../packages/charts/src/paths/flow.ts";
import { newDocument } from "../newDocument.ts";
import { sampleConfidence } from "./sampleConfidence.ts";
import { sampleFuture, sampleFutureTasks } from "./sampleFuture.ts";
import { samplePaths } from "./samplePaths.ts";
import { samplePeople, samplePersons } from "./samplePeople.ts";
import { sampleResponses } from "./sampleResponses.ts";
import { sampleSpending } from "./sampleSpending.ts";

// Lengths in px against days and money, by proportion, from the figures the samples are made of.

const colours = palette();
const document = newDocument();
const at = (element: Element | undefined, name: string) => Number(element?.getAttribute(name));
const all = (svg: Element, selector: string) => Array.from(svg.querySelectorAll(selector));
const numbers = (element: Element | undefined, name: string) =>
  (element?.getAttribute(name)?.match(/-?[\d.]+/g) ?? []).map(Number);

describe("confidenceSteps(confidence)", () => {
  it("draws dates and sums from the plan as written, in proportion", () => {
    const answer = sampleConfidence();
    const { svg } = confidenceSteps(answer, { document, width: 720 });
    const bars = all(svg, "rect");
    expect(bars).toHaveLength(27);
    const [day, sum, left] = [0, 9, 18].map((first) => {
      const [low, high] = [bars[first], bars[first + 8]];
      return at(high, "width") / at(low, "width");
    });
    const [p50, p95] = [answer.steps[0], answer.steps[8]];
    if (p50 === undefined || p95 === undefined) throw new Error("nine levels");
    const { asWritten } = answer;
    expect(day).toBeCloseTo((p95.day - asWritten.day) / (p50.day - asWritten.day), 2);
    expect(sum).toBeCloseTo((p95.cost - asWritten.cost) / (p50.cost - asWritten.cost), 2);
    expect(left).toBeCloseTo((p95.latenessLeft ?? 0) / (p50.latenessLeft ?? 1), 2);
  });
  it("fills the committed level and no other in its colour", () => {
    const { svg } = confidenceSteps(sampleConfidence(), { document, width: 720 });
    const filled = all(svg, "rect").map((bar) => bar.getAttribute("fill") === colours.committed);
    expect(filled.map((each, k) => (each ? k % 9 : -1)).filter((k) => k >= 0)).toEqual([5, 5, 5]);
  });
});

describe("jointDensity(confidence)", () => {
  const { joint } = sampleConfidence();
  const { density } = joint;
  const cells = densityCells(density);
  const held = (tints: number[]) =>
    cells
      .filter((cell) => tints.includes(cell.tint))
      .reduce((sum, cell) => {
        density.counts.forEach((line, row) => {
          if (density.costs[row] !== cell.fromCost) return;
          line.forEach((count, column) => {
            const day = density.days[column] ?? 0;
            if (day >= cell.fromDay && day < cell.toDay) sum += count;
          });
        });
        return sum;
      }, 0);

  it("covers every filled cell once", () => expect(held([0, 1, 2])).toBe(2000));
  it("holds half of the futures in the darkest tint, eight in ten with the next", () => {
    const most = Math.max(...density.counts.flat());
    expect(held([0])).toBeGreaterThanOrEqual(1000);
    expect(held([0])).toBeLessThan(1000 + most);
    expect(held([0, 1])).toBeGreaterThanOrEqual(1600);
    expect(held([0, 1])).toBeLessThan(1600 + most);
  });
  it("gives the denser cell never the paler tint", () => {
    const counts = [
      [1, 9, 2],
      [8, 20, 7],
    ];
    const runs = densityCells({ days: [0, 1, 2, 3], costs: [0, 1, 2], counts });
    const tint = (day: number, cost: number) =>
      runs.find((run) => run.fromCost === cost && day >= run.fromDay && day < run.toDay)?.tint;
    // 47 in all: 20 and then 9 make 29, past half; 8 makes 37, still short of 37.6; 7 completes it; 2 and 1 are the rest.
    expect([tint(1, 1), tint(1, 0), tint(0, 1), tint(2, 1), tint(2, 0), tint(0, 0)]).toEqual([
      0, 0, 1, 1, 2, 2,
    ]);
  });
  it("puts the committed disc where its lines cross, and the curve above and to the right of nothing that holds less", () => {
    const { svg } = jointDensity(sampleConfidence(), { document, width: 720 });
    const disc = all(svg, `circle[fill="${colours.committed}"]`)[0];
    const lines = all(svg, `line[stroke="${colours.committed}"]`);
    const upright = lines.find((line) => at(line, "x1") === at(line, "x2"));
    const level = lines.find((line) => at(line, "y1") === at(line, "y2"));
    expect(at(disc, "cx")).toBeCloseTo(at(upright, "x1"), 2);
    expect(at(disc, "cy")).toBeCloseTo(at(level, "y1"), 2);
    const curve = all(svg, `path[stroke="${colours.ink}"][fill="none"]`).find(
      (path) => (path.getAttribute("d") ?? "").length > 60,
    );
    const points = numbers(curve, "d");
    for (let k = 2; k < points.length; k += 2) {
      expect(points[k] ?? 0).toBeGreaterThanOrEqual(points[k - 2] ?? 0);
      expect(points[k + 1] ?? 0).toBeGreaterThanOrEqual((points[k - 1] ?? 0) - 0.01); // px grow downwards: the sum falls
    }
  });
});

describe("responseWorth(responses)", () => {
  it("draws costs, days and worth from nought, losses to the left, adopted ones filled", () => {
    const { svg } = responseWorth(sampleResponses(), { document, width: 960 });
    const bars = all(svg, "rect");
    const adopted = bars.filter((bar) => bar.getAttribute("fill") === colours.committed);
    expect(adopted).toHaveLength(5); // of two responses of three bars each, one buys no day
    // Panel after panel, in order of worth: meeting, survey, stock, check, hands, crane.
    expect(at(bars[5], "width") / at(bars[0], "width")).toBeCloseTo(9000 / 2000, 1);
    expect(at(bars[7], "width") / at(bars[6], "width")).toBeCloseTo(3.4 / 4.1, 1);
    const worth = bars.slice(-6);
    const zero = at(worth[0], "x");
    expect(at(worth[5], "x") + at(worth[5], "width")).toBeCloseTo(zero, 1);
    expect(at(worth[5], "width") / at(worth[0], "width")).toBeCloseTo(7100 / 9800, 1);
  });
});

describe("spending(forecast)", () => {
  it("draws the band between what half and eight tenths stay within", () => {
    const means = [100_000, 200_000, 100_000];
    const forecast = sampleSpending({ means, released: [500_000], covered: [1] });
    const { svg } = spending(forecast, { document, width: 720 });
    const band = all(svg, `path[fill="${colours.rangeCore}"]`)[0];
    const points = numbers(band, "d");
    const upper = points.slice(0, 8).filter((_, k) => k % 2 === 1);
    const lower = points
      .slice(8, 16)
      .filter((_, k) => k % 2 === 1)
      .reverse();
    const base = upper[0] ?? 0;
    const funds = numbers(all(svg, "path[stroke-dasharray]")[0], "d")[1] ?? 0;
    const unit = (base - funds) / 500_000; // px per euro: the line of money released lies at 500,000
    const { months = [] } = forecast;
    months.forEach(({ cumulative }, k) => {
      expect(base - (upper[k + 1] ?? 0)).toBeCloseTo(cumulative.p80 * unit, 0);
      expect(base - (lower[k + 1] ?? 0)).toBeCloseTo(cumulative.p50 * unit, 0);
    });
  });
  it("draws each month's mean in proportion", () => {
    const forecast = sampleSpending({ means: [100_000, 200_000, 100_000], covered: [1] });
    const tall = all(spending(forecast, { document, width: 720 }).svg, "rect").map((bar) =>
      at(bar, "height"),
    );
    expect(tall).toHaveLength(3);
    expect((tall[1] ?? 0) / (tall[0] ?? 1)).toBeCloseTo(2, 1);
  });
});

describe("futureBars(future)", () => {
  const { svg } = futureBars(sampleFuture(), { document, width: 720 });
  const bars = all(svg, `rect[height="12"]`);

  it("draws tasks as long as they took, dark where they set the finish", () => {
    const done = sampleFutureTasks.filter((task) => task.needed && !task.milestone);
    expect(bars).toHaveLength(done.length);
    const unit = at(bars[0], "width") / 22; // the survey took 22 days
    done.forEach((task, k) => {
      expect(at(bars[k], "width") / unit).toBeCloseTo(task.finish - task.start, 0);
      expect((at(bars[k], "x") - at(bars[0], "x")) / unit).toBeCloseTo(task.start, 0);
    });
    const dark = bars.filter((bar) => bar.getAttribute("fill") === colours.ink);
    expect(dark).toHaveLength(7);
  });
  it("marks what a risk struck, and only that", () => {
    const squares = all(svg, `rect[fill="${colours.register}"]`);
    expect(squares).toHaveLength(1);
    const roof = bars[6]; // survey, brief, design, tender, permit, heat, roof
    expect(at(squares[0], "x") + 3.5).toBeCloseTo(at(roof, "x"), 1);
  });
});

describe("pathBars(paths)", () => {
  it("draws shares in proportion, and makes bold what the first path does not pass", () => {
    const { svg } = pathBars(samplePaths(), { document, width: 720 });
    const widths = all(svg, "rect").map((bar) => at(bar, "width"));
    expect((widths[1] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(0.23 / 0.42, 2);
    const bold = all(svg, "text[font-weight='600']").map((text) => text.textContent);
    expect(bold.filter((text) => !/%$/.test(text ?? ""))).toEqual([
      "Heat pump delivered and set working →",
      "Builder chosen (Ilse Marr) →",
      "Builder chosen →",
      "Heat pump delivered and set working →",
    ]);
  });
});

describe("flow(pieces, width, size, most)", () => {
  const pieces = Array.from({ length: 40 }, (_, k) => ({ text: `piece ${k} →`, bold: k % 3 === 0 }));
  it("keeps pieces in order, on their lines and within the width", () => {
    const { placed, lines } = flow(pieces, 300, 13, 99);
    expect(placed.map((each) => each.text)).toEqual(pieces.map((each) => each.text));
    placed.forEach((each, k) => {
      const before = placed[k - 1];
      if (before === undefined) return;
      expect(each.line > before.line || each.x > before.x).toBe(true);
      expect(each.x).toBeLessThan(300);
    });
    expect(lines).toBe((placed[placed.length - 1]?.line ?? 0) + 1);
  });
  it("says how many it leaves out", () => {
    const { placed, lines } = flow(pieces, 300, 13, 3);
    expect(lines).toBe(3);
    const last = placed[placed.length - 1]?.text ?? "";
    expect(last).toBe(`… and ${40 - (placed.length - 1)} more`);
  });
});

describe("peopleWeeks(load)", () => {
  it("stacks what is too much on what is not, as high as the days asked", () => {
    const one = samplePersons.slice(0, 1);
    const { svg } = peopleWeeks(samplePeople(one), { document, width: 720 });
    const dark = all(svg, `rect[fill="${colours.ink}"]`);
    const [ilse] = one;
    const over = ilse?.unlimited.over.filter((days) => days > 0) ?? [];
    expect(dark).toHaveLength(over.length);
    const tallest = Math.max(...(ilse?.unlimited.asked ?? []));
    // The strip is 40 px high and its tallest bar fills it.
    expect(dark.map((bar) => at(bar, "height"))).toEqual(
      over.map((days) => expect.closeTo((days / tallest) * 40, 1)),
    );
  });
  it("leaves open what falls into an absence", () => {
    const { svg } = peopleWeeks(samplePeople(samplePersons.slice(0, 1)), { document, width: 720 });
    // Two weeks away, with work in both.
    expect(all(svg, `rect[fill="${colours.paper}"]`)).toHaveLength(2);
  });
});
