import {
  costCurve,
  driversBars,
  fiftyFutures,
  finishCurve,
  palette,
  planBars,
  tornadoDays,
  tornadoMoney,
} from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { heldText } from "../../../packages/charts/src/tornado/heldText.ts";
import { hardForecasts } from "./hardForecasts.ts";
import { newDocument } from "./newDocument.ts";
import { sampleForecast, sampleTask, skewed } from "./sampleForecast.ts";

// Geometry is checked against the forecast by proportion: lengths in px against days and money. The finding
// and the table are checked against the figures the sample was made from. No outside source exists for these.

const colours = palette();
const document = newDocument();
const at = (element: Element | undefined, name: string) => Number(element?.getAttribute(name));
const byText = (svg: Element, text: string) =>
  Array.from(svg.querySelectorAll("text")).find((each) => each.textContent === text);
const discs = (svg: Element, fill: string) => Array.from(svg.querySelectorAll(`circle[fill="${fill}"]`));

/** Px of a day, read off two labelled ticks of the axis (labels stand 4 px right of their tick). */
function dayScale(svg: Element, one: [string, number], two: [string, number]): (day: number) => number {
  const [a, b] = [at(byText(svg, one[0]), "x") - 4, at(byText(svg, two[0]), "x") - 4];
  return (day) => a + ((day - one[1]) / (two[1] - one[1])) * (b - a);
}

describe("finishCurve(forecast)", () => {
  const forecast = sampleForecast();
  const { svg, title, table } = finishCurve(forecast, { document, width: 720 });
  // 1 October 2027 is 242 days after 1 February 2027, 1 January 2028 is 334 (28+31+30+31+30+31+31+30 = 242).
  const x = dayScale(svg, ["Oct", 242], ["Jan", 334]);

  it("puts the committed disc at its date and its level", () => {
    const disc = discs(svg, colours.committed)[0];
    expect(at(disc, "cx")).toBeCloseTo(x(forecast.committed.day), 1);
    const [zero, all] = [byText(svg, "0 %"), byText(svg, "100 %")].map((each) => at(each, "y"));
    expect(at(disc, "cy") + 4).toBeCloseTo((zero ?? 0) + 0.8 * ((all ?? 0) - (zero ?? 0)), 1);
  });
  it("puts the peg at the end of the day asked for", () => {
    const peg = svg.querySelector("path[stroke-linejoin='round'][fill='#fbf8f1']");
    const from = Number(/^M([\d.]+),/.exec(peg?.getAttribute("d") ?? "")?.[1]);
    expect(from).toBeCloseTo(x(243), 1);
  });
  it("draws the curve through the quantiles", () => {
    const path = svg.querySelector("path[fill='none'], g[fill='none'] path")?.getAttribute("d") ?? "";
    const points = path
      .slice(1)
      .split("L")
      .map((each) => each.split(",").map(Number));
    const kept = forecast.finish.curve.at.filter((_, k) => {
      const p = forecast.finish.curve.p[k] ?? 0;
      return p >= 0.01 && p <= 0.99;
    });
    expect(points).toHaveLength(kept.length);
    expect(points.map(([px]) => px)).toEqual(kept.map((day) => expect.closeTo(x(day), 1)));
  });
  it("draws a band that, read across at a percentile, is as wide as its limits", () => {
    const d = svg.querySelector("path[fill-opacity], [fill-opacity] path")?.getAttribute("d") ?? "";
    const corners = Array.from(d.matchAll(/([\d.]+),([\d.]+)/g), ([, a, b]) => ({
      x: Number(a),
      y: Number(b),
    }));
    const half = corners.length / 2; // there along the upper edge and back along the lower, or the other way
    const [one, two] = [corners.slice(0, half), corners.slice(half).reverse()];
    const zero = at(byText(svg, "0 %"), "y") - 4;
    const all = at(byText(svg, "100 %"), "y") - 4;
    const crossing = (edge: { x: number; y: number }[], p: number) => {
      const level = zero + p * (all - zero);
      const k = edge.findIndex((each) => each.y <= level);
      const [a, b] = [edge[k - 1] ?? { x: 0, y: 0 }, edge[k] ?? { x: 0, y: 0 }];
      return a.x + ((level - a.y) / (b.y - a.y)) * (b.x - a.x);
    };
    for (const { p, low, high } of forecast.finish.percentiles) {
      const ends = [crossing(one, p), crossing(two, p)].sort((a, b) => a - b);
      expect(Math.abs((ends[0] ?? 0) - x(low))).toBeLessThan(0.5);
      expect(Math.abs((ends[1] ?? 0) - x(high))).toBeLessThan(0.5);
    }
  });
  it("states the finding", () =>
    expect(title).toBe("Half of all futures finish by Wed 20 Oct; 80 % by Mon 15 Nov 2027"));
  it("tables every percentile with its limits, and the levels", () => {
    expect(table.rows).toHaveLength(forecast.finish.percentiles.length + 2);
    const row = table.rows.find((each) => each[0] === "Committed");
    expect(row?.slice(1, 3)).toEqual(["80 %", "Mon 15 Nov 2027"]);
  });
  it.each([
    ["every level on one day", "Every future finishes on Fri 13 Aug 2027"],
    // Ranks 0.5 ± 1.96 · 0.005: 240 + 60 · 0.4902 = 269.4 and 400 + 60 · 0.5098 = 430.6 days; 400 + 48 = 448 days.
    [
      "two humps",
      "Half of all futures finish by a date between 28 Oct 2027 and 6 Apr 2028; 80 % by Sun 23 Apr 2028",
    ],
    ["low level", "10 % of all futures finish by Mon 20 Sep; half by Wed 20 Oct 2027"],
    ["half is the level", "50 % of all futures finish by Wed 20 Oct 2027"],
    ["P50 is P80", "Half of all futures, and 80 %, finish by Sun 15 Aug 2027"],
  ])("states the finding: %s", (name, words) => {
    const hard = hardForecasts()[name] ?? forecast;
    expect(finishCurve(hard, { document }).title).toBe(words);
  });
});

describe("costCurve(forecast)", () => {
  it("shows no digit the limits do not support", () => {
    // Half the width of the limits is 3,500: thousands.
    const forecast = sampleForecast();
    Object.assign(forecast.committed, { cost: 655_432, costLow: 652_000, costHigh: 659_000 });
    const { title, subtitle, table } = costCurve(forecast, { document });
    expect(title).toBe("Half of all futures cost at most EUR 628,000; 80 % at most EUR 655,000");
    const sums = subtitle.match(/EUR [\d,]+/g) ?? [];
    const rows = table.rows.filter((each) => each[0] !== "Asked for");
    for (const sum of sums) expect(sum).toMatch(/000$/);
    for (const row of rows) expect(row[2]).toMatch(/000$/);
    expect([sums.length > 0, rows.length > 0]).toEqual([true, true]);
  });
  it("writes a saving with its sign", () => {
    const hard = hardForecasts()["negative cost"] ?? sampleForecast();
    expect(costCurve(hard, { document }).title).toContain("at most −EUR 32,900");
  });
  it("puts a level beyond the axis at its edge, with an arrow", () => {
    const hard = hardForecasts()["asked for far too early and far too late"] ?? sampleForecast();
    const { svg } = costCurve(hard, { document });
    expect(byText(svg, "← Asked for")?.textContent).toBe("← Asked for");
    expect(byText(svg, "As written →")?.textContent).toBe("As written →");
  });
});

describe("tornadoDays(forecast), tornadoMoney(forecast)", () => {
  const forecast = sampleForecast();

  it("draws bars in proportion, the furthest first", () => {
    const { svg } = tornadoDays(forecast, { document });
    const bars = Array.from(svg.querySelectorAll("rect"));
    expect(bars).toHaveLength(12);
    const reaches = [20.6, 16.3, 11.5]; // permit -8.2 to 12.4, wall -5.1 to 11.2, roof -4.4 to 7.1
    const unit = at(bars[0], "width") / (reaches[0] ?? 1);
    expect(at(bars[1], "width") / unit).toBeCloseTo(reaches[1] ?? 0, 1);
    expect(at(bars[2], "width") / unit).toBeCloseTo(reaches[2] ?? 0, 1);
    for (let k = 1; k < bars.length; k++) expect(at(bars[k], "y")).toBeGreaterThan(at(bars[k - 1], "y"));
  });
  it("starts the bars from the committed line", () => {
    const { svg } = tornadoDays(forecast, { document });
    const zero = at(svg.querySelector(`line[stroke="${colours.committed}"]`) ?? undefined, "x1");
    const bar = svg.querySelector("rect") ?? undefined;
    expect((zero - at(bar, "x")) / at(bar, "width")).toBeCloseTo(8.2 / 20.6, 2);
  });
  it("labels both ends with the held value and the change, and counts the rest", () => {
    const { svg, table } = tornadoDays(forecast, { document });
    for (const words of [
      "−8.2",
      "20 days",
      "+12",
      "45 days",
      "absent",
      "occurs",
      "and 1 more, none reaching further than 0.2",
    ])
      expect(byText(svg, words)?.textContent).toBe(words);
    expect(table.rows).toHaveLength(13); // 15 items, two of which move no date
  });
  it("ranks by money in money", () => {
    const { title, table } = tornadoMoney(forecast, { document });
    expect(title).toBe(
      "“Quay wall needs pinning” moves the committed cost most: from EUR 9,800 less (absent) to EUR 21,000 more (occurs)",
    );
    expect(table.rows[1]?.[0]).toBe("Price of the glass");
  });
  it("writes what an item is held at in the words of the other charts", () => {
    const [bar] = forecast.tornado ?? [];
    if (bar === undefined) throw new Error("the sample has a tornado");
    const cost = { ...bar, kind: "task-cost" as const, lowText: "185000 EUR", highText: "250000.5 EUR" };
    expect(heldText(cost, "low", "EUR")).toBe("EUR 185,000");
    expect(heldText(cost, "high", "EUR")).toBe("EUR 250,001");
    const wrong = {
      ...bar,
      kind: "assumption" as const,
      sides: "absent-occurs" as const,
      lowText: "absent",
      highText: "occurs",
    };
    expect([heldText(wrong, "low", "EUR"), heldText(wrong, "high", "EUR")]).toEqual(["holds", "is wrong"]);
    expect(heldText({ ...bar, lowText: "20 days" }, "low", "EUR")).toBe("20 days");
  });
  it("says so when the forecast holds no tornado", () => {
    const { tornado: _, ...bare } = forecast;
    expect(tornadoDays(bare, { document }).title).toBe("No item has been held at its ends yet");
  });
});

describe("fiftyFutures(forecast)", () => {
  it("draws fifty dots, and fills those that make the committed date", () => {
    const forecast = sampleForecast();
    const { svg, title, table, subtitle } = fiftyFutures(forecast, { document, width: 720 });
    const full =
      discs(svg, colours.committed).length +
      svg.querySelectorAll(`g[fill="${colours.committed}"] circle`).length;
    expect(svg.querySelectorAll("circle")).toHaveLength(50);
    expect(full).toBe(40);
    expect(title).toBe("40 of 50 futures finish by Mon 15 Nov 2027, 11 by 1 Oct 2027 as asked");
    expect(subtitle).toContain("Each dot is one way this could go");
    expect(table.rows.filter((row) => row[2] === "made")).toHaveLength(40);
  });
  it("counts by the day: who ends on the committed date, at whatever hour, has made it", () => {
    // All fifty end on day 193, the committed one at an hour when not all have.
    const forecast = sampleForecast({ finishAt: (p) => 193.1 + p * 0.8, asked: {} });
    expect(fiftyFutures(forecast, { document }).title).toBe("All 50 futures finish on Fri 13 Aug 2027");
  });
  it("spreads the dots evenly over the quantiles", () => {
    // Uniform over 500 days: dot k ends in the day of 500 (k + 0.5) / 50 = 10 k + 5.
    const forecast = sampleForecast({ finishAt: (p) => 500 * p, asked: {} });
    const dates = fiftyFutures(forecast, { document }).table.rows.map((row) => row[1]);
    expect(dates[0]).toBe("Fri 5 Feb 2027"); // 1 February + 4 days
    expect(dates[1]).toBe("Mon 15 Feb 2027");
    expect(dates[49]).toBe("Fri 9 Jun 2028"); // + 494 days = 365 + 29 + 31 + 30 + 31 + 8
  });
});

describe("planBars(forecast)", () => {
  it("draws each task's ranges where they lie", () => {
    const task = sampleTask("2027-02-01", "a", "Dig", undefined, 28, 59, 20);
    const forecast = sampleForecast({ tasks: [task], finishAt: skewed(120, 4, 0.1), asked: {} });
    const { svg } = planBars(forecast, { document, width: 720 });
    const x = dayScale(svg, ["Mar", 28], ["May", 89]);
    const finish = svg.querySelector(`rect[fill="${colours.rangeCore}"]`) ?? undefined;
    expect(at(finish, "x")).toBeCloseTo(x(task.finish.p10), 1);
    expect(at(finish, "width")).toBeCloseTo(x(task.finish.p90) - x(task.finish.p10), 1);
    const written = svg.querySelector(`line[stroke="${colours.asWritten}"]`) ?? undefined;
    expect(at(written, "x1")).toBeCloseTo(x(28), 1);
    expect(at(written, "x2")).toBeCloseTo(x(59), 1);
    const middle = svg.querySelector('line[stroke-width="2.5"]') ?? undefined;
    expect(at(middle, "x1")).toBeCloseTo(x(task.finish.p50), 1);
  });
  it("puts phases and tasks in the order of the calendar, those without a phase last", () => {
    const task = (id: string, phase: string | undefined, from: number) =>
      sampleTask("2027-02-01", id, id, phase, from, from + 5, 2);
    const tasks = [
      task("d", "Late", 80),
      task("b", "Early", 20),
      task("e", undefined, 0),
      task("a", "Early", 10),
      task("c", "Late", 60),
    ];
    const rows = planBars(sampleForecast({ tasks }), { document }).table.rows;
    expect(rows.map((row) => row[0])).toEqual(["a", "b", "c", "d", "e"]);
  });
  it("draws eighty tasks under their phases", () => {
    const forecast = hardForecasts()["eighty tasks"] ?? sampleForecast();
    const { svg, table, title } = planBars(forecast, { document });
    expect(svg.querySelectorAll(`rect[fill="${colours.rangeCore}"]`)).toHaveLength(80);
    expect(table.rows).toHaveLength(80);
    expect(table.rows[79]?.[0]).toBe("Section 80 laid");
    expect(title).toBe("79 of 80 tasks finish later than written in more than half of the futures"); // the first is never late
  });
  it("leaves out where the plan as written does not take a task, and says how often it is needed", () => {
    const task = sampleTask("2027-02-01", "a", "Second coat", undefined, 10, 20, 4);
    const rare = { ...task, needed: 0.3, asWritten: { ...task.asWritten, needed: false } };
    const { svg, table } = planBars(sampleForecast({ tasks: [rare] }), { document });
    expect(svg.querySelectorAll(`line[stroke="${colours.asWritten}"]`)).toHaveLength(0);
    expect(byText(svg, "in 30 % of futures")?.textContent).toBe("in 30 % of futures");
    expect(table.rows[0]?.[2]).toBe("not taken");
  });
});

describe("driversBars(forecast)", () => {
  it("draws the five largest, bars in proportion", () => {
    const { svg, table, title } = driversBars(sampleForecast(), { document });
    expect(table.rows.map((row) => row[0])).toEqual([
      "Permit decided",
      "Quay wall needs pinning",
      "Roof and windows",
      "Heat pump delivered and set working",
      "The grid connection stays as it is",
    ]);
    const widths = Array.from(svg.querySelectorAll("rect"), (bar) => at(bar, "width"));
    expect(widths).toHaveLength(10);
    expect((widths[1] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(7.64 / 9.13, 2);
    expect((widths[5] ?? 0) / (widths[6] ?? 1)).toBeCloseTo(5020 / 14_260, 2);
    expect(title).toBe(
      "“Permit decided” adds most time, 9.1 working days on average; “Quay wall needs pinning” most money, EUR 14,000",
    );
  });
  it("keeps a driver of money alone, and draws a saving to the left", () => {
    const { svg, table } = driversBars(hardForecasts()["money only"] ?? sampleForecast(), { document });
    expect(table.rows.map((row) => row[3])).toEqual(["12,000,000", "−41,000,000"]);
    const [cost, saving] = Array.from(svg.querySelectorAll("rect"));
    expect(at(saving, "x") + at(saving, "width")).toBeCloseTo(at(cost, "x"), 1);
  });
});
