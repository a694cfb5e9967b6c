import { type Drift, driftOf, type HistoryFacts, linked } from "@leeway/core";

type Said = Partial<Pick<HistoryFacts, "currency" | "approvals" | "approvalSha256" | "change" | "asked">>;

/** A forecast of an invented project, set by hand: as of, committed, P10, P90, and the sums of the three. */
function kept(
  statusDate: string,
  [committed, p10, p90]: [string, string, string],
  [sum, low, high]: [number, number, number],
  said: Said = {},
): HistoryFacts {
  const finish = (date: string) => ({ date, workingDays: 100 });
  return {
    history: 1,
    date: statusDate,
    statusDate,
    start: "2027-02-01",
    sha256: "a".repeat(64),
    approvalSha256: "b".repeat(64),
    seed: "leeway",
    iterations: 10_000,
    design: "latin-hypercube",
    version: "0.1.0",
    confidence: 0.8,
    currency: "EUR",
    asWritten: { ...finish(p10), cost: low },
    finish: {
      p10: finish(p10),
      p50: finish(committed),
      p80: finish(committed),
      p90: finish(p90),
      committed: { ...finish(committed), lowDate: committed, highDate: committed },
    },
    cost: { p10: low, p50: sum, p80: sum, p90: high, committed: sum, low: sum - 900, high: sum + 900 },
    asked: { finishBy: "2027-11-05", budget: 640_000 },
    chance: { finishBy: 0.5, budget: 0.5, both: 0.4 },
    approvals: [],
    change: { what: "progress of 4 items" },
    ...said,
  };
}

function drift(list: readonly HistoryFacts[]): Drift {
  const entries: ReturnType<typeof linked>[] = [];
  for (const each of list) entries.push(linked(each, entries.at(-1)));
  const found = driftOf(entries);
  if (found === undefined) throw new Error("a drift needs a forecast");
  return found;
}

const first = kept("2027-02-05", ["2027-11-16", "2027-09-20", "2027-12-06"], [655_000, 598_000, 676_000], {
  approvals: [{ who: "board-chair", decision: "approve", date: "2027-02-04" }],
});
const second = kept("2027-03-05", ["2027-11-26", "2027-10-04", "2027-12-13"], [663_000, 610_000, 681_000]);
const third = kept("2027-04-09", ["2027-11-12", "2027-10-01", "2027-11-24"], [648_500, 611_000, 660_000], {
  approvalSha256: "c".repeat(64),
  change: { what: "progress of 3 items", why: "The dry run was taken out" },
  asked: { finishBy: "2027-11-19", budget: 640_000 },
});
const fourth = kept("2027-06-11", ["2027-11-16", "2027-10-20", "2027-11-25"], [651_000, 632_000, 657_000]);

/** Signed, later, changed, and as it was. */
export function sampleDrift(): Drift {
  return drift([first, second, third, fourth]);
}

const LONG =
  "The <lease> & “licence” of the municipal swimming-bath’s plant-room extension was argued over, again";

/** What is hardest to draw. */
export function hardDrifts(): Record<string, Drift> {
  const done = kept("2027-11-30", ["2027-11-26", "2027-11-26", "2027-11-26"], [650_000, 650_000, 650_000]);
  const weekly = Array.from({ length: 60 }, (_, i) => {
    const day = (n: number) => new Date(Date.UTC(2027, 1, 5 + n)).toISOString().slice(0, 10);
    const spread = 120 - 2 * i;
    return kept(
      day(7 * i),
      [day(430 + i), day(430 - spread), day(440 + spread)],
      [12_345_678 + 9999 * i, 1e7, 2e7],
    );
  });
  const { finishBy: _, ...noDate } = first.asked;
  return {
    "one forecast": drift([first]),
    "finished, without any spread": drift([done]),
    "the same day twice": drift([first, { ...second, statusDate: "2027-02-05" }]),
    "sixty weeks": drift(weekly),
    "nothing asked for": drift([first, second].map((each) => ({ ...each, asked: {}, chance: {} }))),
    "a date asked for later": drift([{ ...first, asked: noDate }, second]),
    "another currency": drift([first, { ...second, currency: "CHF" }]),
    "no money at all": drift(
      [first, second].map((each) => ({
        ...each,
        asked: {},
        cost: { p10: 0, p50: 0, p80: 0, p90: 0, committed: 0, low: 0, high: 0 },
      })),
    ),
    "long reasons": drift([first, { ...second, change: { what: LONG, why: LONG } }]),
    "asked for far away": drift([first, { ...second, asked: { finishBy: "2031-11-05", budget: 9e9 } }]),
  };
}
