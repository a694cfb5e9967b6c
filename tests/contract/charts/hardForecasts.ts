import type { Forecast } from "@leeway/core";
import { sampleForecast, sampleTask, skewed } from "./sampleForecast.ts";

/** Forecasts at the edges of what a plan can give, by name. Invented data. */
export function hardForecasts(): Record<string, Forecast> {
  const start = "2027-02-01";
  const rtl = "בדיקת קיר הרציף";
  const long =
    "Agreement in principle with every neighbour on both banks about working hours, deliveries and noise, signed";
  return {
    "asked date is the committed date": withAskedDate(sampleForecast()),
    "every level on one day": sampleForecast({
      finishAt: () => 193.5,
      costAt: () => 598_200,
      asked: { finishBy: "2027-08-13", budget: 598_200 },
    }),
    "three weeks": sampleForecast({
      finishAt: skewed(14.3, 1.1, 0.1),
      costAt: skewed(8_400, 310, 0.1),
      asWritten: { day: 11.5, cost: 7_900 },
      asked: { finishBy: "2027-02-16", budget: 8_500 },
      tasks: [
        sampleTask(start, "a", "Measure", undefined, 0, 2.5, 0.8),
        sampleTask(start, "b", "Build", undefined, 2.5, 11.5, 3),
      ],
    }),
    "ten years": sampleForecast({
      finishAt: skewed(3100, 190, 0.2),
      costAt: skewed(1.84e9, 9.6e7, 0.2),
      asWritten: { day: 2300, cost: 1.4e9 },
      asked: { finishBy: "2034-06-30", budget: 1.75e9 },
      tasks: [
        sampleTask(start, "a", "Route settled", "Plan", 0, 700, 300),
        sampleTask(start, "b", "Tunnel", "Build", 700, 2300, 900),
      ],
    }),
    "P50 is P80": sampleForecast({
      finishAt: (p) => (p < 0.3 ? 190 + 20 * p : p < 0.9 ? 196 : 196 + 40 * (p - 0.9)),
      costAt: (p) => (p < 0.3 ? 90_000 + 20_000 * p : p < 0.9 ? 96_000 : 96_000 + 90_000 * (p - 0.9)),
      asWritten: { day: 186, cost: 88_000 },
      asked: { finishBy: "2027-08-16", budget: 96_000 },
    }),
    "two humps": sampleForecast({
      finishAt: (p) => (p < 0.5 ? 240 + 60 * p : 400 + 60 * p),
      costAt: (p) => (p < 0.5 ? 600_000 + 40_000 * p : 900_000 + 40_000 * p),
    }),
    "negative cost": sampleForecast({
      costAt: skewed(-42_000, 6_100, 0.1),
      asWritten: { day: 193.5, cost: -55_000 },
      asked: { budget: -30_000 },
    }),
    "nothing asked": sampleForecast({ asked: {} }),
    "asked for far too early and far too late": sampleForecast({
      asked: { finishBy: "2039-10-01", budget: 90 },
      asWritten: { day: 10, cost: 9_000_000 },
    }),
    "one task": sampleForecast({
      tasks: [sampleTask(start, "a", "Paint the hall", undefined, 0, 20, 8)],
      drivers: [{ id: "a", name: "Paint the hall", kind: "task", days: 3.4, money: 0 }],
      tornado: [
        {
          id: "a",
          name: "Paint the hall",
          kind: "task",
          sides: "p10-p90",
          low: { workingDays: -2.2, money: 0 },
          high: { workingDays: 4.8, money: 0 },
          lowText: "4 days",
          highText: "11 days",
        },
      ],
    }),
    "no task, no driver, no bar": sampleForecast({ tasks: [], drivers: [], tornado: [] }),
    "very long names": renamed(long),
    "right to left": renamed(rtl),
    "markup for names": renamed(`</text><script>alert(1)</script>&amp;"'\u0000\u0008\ud800 ]]>`),
    "low level": sampleForecast({ confidence: 0.1 }),
    "high level": sampleForecast({ confidence: 0.99 }),
    "half is the level": sampleForecast({ confidence: 0.5 }),
    "money only": sampleForecast({
      drivers: [
        { id: "a", name: "Price of steel", kind: "task", days: 0, money: 12_300_000 },
        { id: "b", name: "Grant", kind: "risk", days: 0, money: -41_000_000 },
      ],
    }),
    "eighty tasks": sampleForecast({
      tasks: Array.from({ length: 80 }, (_, k) =>
        sampleTask(
          start,
          `t${k}`,
          `Section ${k + 1} laid`,
          `Stretch ${Math.floor(k / 16) + 1}`,
          k * 2,
          k * 2 + 14,
          k,
        ),
      ),
    }),
  };
}

/** The sample with every name replaced, numbered so that they differ. */
function renamed(name: string): Forecast {
  const forecast = sampleForecast();
  const rename = <T extends { name: string }>(items: T[]) =>
    items.map((item, k) => ({ ...item, name: `${name} ${k + 1}` }));
  forecast.tasks = rename(forecast.tasks).map((task) => ({ ...task, phase: name }));
  forecast.drivers = rename(forecast.drivers);
  forecast.tornado = rename(forecast.tornado ?? []).map((bar) => ({ ...bar, lowText: name, highText: name }));
  return forecast;
}

function withAskedDate(forecast: Forecast): Forecast {
  const { date, day, confidence, cost } = forecast.committed;
  return {
    ...forecast,
    asked: { finishBy: date, finishByDay: day, budget: cost },
    chance: { finishBy: confidence, budget: confidence },
  };
}
