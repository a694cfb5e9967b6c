import {
  type Opinion,
  type Pooling,
  planFromData,
  poolOpinions,
  type Scorecard,
  scorecard,
} from "@leeway/core";

const LONG =
  "Drainage and ventilation of the northern annex, second storey, signed off by everybody concerned";
const says = (by: string, low: number, likely: number, high: number): Opinion => ({
  by,
  of: "duration",
  estimate:
    low === high
      ? { kind: "fixed", value: low, unit: "days" }
      : { kind: "range", low, likely, high, shape: "pert", bounds: "p10-p90", unit: "days" },
});
const pooled = (...opinions: Opinion[]): Pooling => {
  const pooling = poolOpinions(opinions);
  if (pooling === undefined) throw new Error("nothing pooled");
  return pooling;
};

export const sampleAbout = {
  task: "Dig",
  unitWords: "working days",
  name: (id: string) => id.replace(/^./, (letter) => letter.toUpperCase()),
};
const longAbout = { ...sampleAbout, task: LONG, name: (id: string) => `${LONG} ${id}` };

/** Two who can speak of the same work, and one who cannot. */
export const samplePooling = () =>
  pooled(says("ana", 3, 5, 9), says("ben", 5, 7, 13), says("cid", 20, 25, 30));

export const hardPoolings = (): Record<string, [Pooling, typeof sampleAbout]> => ({
  "one voice": [pooled(says("ana", 3, 5, 9)), sampleAbout],
  "all certain": [pooled(says("ana", 5, 5, 5), says("ben", 5, 5, 5)), sampleAbout],
  "long names, large values": [
    pooled(says("ana", 300_000, 512_345.678, 999_999), says("ben", 5, 7, 13)),
    { ...longAbout, unitWords: "EUR" },
  ],
  "nothing at all": [pooled(says("ana", 0, 0, 0), says("ben", 0, 0, 0)), sampleAbout],
  "a saving": [
    pooled(says("ana", -900, -500, -100), says("ben", -300, 0, 200)),
    { ...sampleAbout, unitWords: "EUR" },
  ],
  "twelve people": [
    pooled(...Array.from({ length: 12 }, (_, k) => says(`p${k}`, k, k + 2, k + 9))),
    longAbout,
  ],
});

const day = (n: number) => new Date(Date.UTC(2027, 0, 4 + n)).toISOString().slice(0, 10);
function card(tasks: { name: string; range: [number, number, number]; days: number }[]): Scorecard {
  const { plan, problems } = planFromData({
    format: 1,
    title: "T",
    start: day(0),
    statusDate: day(3000),
    calendar: "every-day",
    estimates: { bounds: "p10-p90" },
    tasks:
      tasks.length === 0
        ? [{ id: "a", name: "A", duration: 1 }]
        : tasks.map(({ name, range, days }, k) => ({
            id: `t${k}`,
            name,
            duration: range,
            started: day(0),
            finished: day(days - 1),
          })),
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return scorecard(plan);
}

export const sampleScorecard = () =>
  card([4, 7, 12].map((days, k) => ({ name: `Task ${k}`, range: [3, 5, 9], days })));

export const hardScorecards = (): Record<string, Scorecard> => ({
  nothing: card([]),
  "one, far over": card([{ name: LONG, range: [1, 2, 3], days: 2500 }]),
  "likely nought": card([
    { name: "Zero", range: [0, 0, 3], days: 2 },
    { name: "Other", range: [1, 2, 3], days: 2 },
  ]),
  many: card(
    Array.from({ length: 60 }, (_, k) => ({ name: `${LONG} ${k}`, range: [2, 5, 9], days: 1 + (k % 14) })),
  ),
});
