import type { KnownPercentile, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface AirVehicleAnswer {
  /** Every element at its most likely value. */
  asWritten: number;
  mean: number;
  sd: number;
  /** Without correlation only. */
  exact?: {
    /** Chance that the point estimate is enough. */
    asWrittenChance: number;
    percentiles: readonly KnownPercentile[];
    /** By element: P80 alone. They add up to more than the P80 of the total. */
    p80Alone: Readonly<Record<string, number>>;
    /** By element: how far its P10 and P90 are apart. */
    swing: Readonly<Record<string, number>>;
  };
  /** From a run of 4,000,000 draws, correlation 0.3 and 0.9 only: P10, P50, P80, P90 to within 12 / 32 thousand. */
  simulated?: { asWrittenChance: number; percentiles: readonly (readonly [p: number, value: number])[] };
}

const elements: Record<string, readonly [name: string, low: number, likely: number, high: number]> = {
  airframe: ["Airframe", 17955, 19645, 21785],
  communications: ["Communications", 4000, 4306, 5100],
  computer: ["Central computer", 550, 600, 650],
  integration: ["Integration, assembly, test and check-out", 1950, 2136, 2600],
  navigation: ["Navigation", 4100, 4305, 4650],
  propulsion: ["Propulsion", 8500, 10553, 13000],
  software: ["Software", 32300, 35547, 52500],
};

const exact: AirVehicleAnswer["exact"] = {
  asWrittenChance: 0.1258,
  percentiles: [
    [0.05, 75789.738716, 201.977201],
    [0.1, 76714.578241, 185.904356],
    [0.5, 81602.215122, 262.90023],
    [0.7, 84569.031031, 312.010863],
    [0.8, 86446.371316, 334.8347],
    [0.9, 88909.990691, 359.318027],
    [0.95, 90681.573484, 378.210471],
  ],
  p80Alone: {
    airframe: 20504.671917,
    communications: 4682.052634,
    computer: 618.377223,
    integration: 2354.398697,
    navigation: 4455.192402,
    propulsion: 11515.985175,
    software: 44224.124215,
  },
  swing: {
    airframe: 2120.140411,
    communications: 620.999965,
    computer: 55.27864,
    integration: 366.379117,
    navigation: 306.066423,
    propulsion: 2489.471893,
    software: 11787.029356,
  },
};

/** Programme figures in billions for 32 vehicles, turned into thousands for one. */
const perVehicle = (billions: number) => (billions * 1e6) / 32;
const simulated: Record<string, NonNullable<AirVehicleAnswer["simulated"]>> = {
  "0.3": {
    asWrittenChance: 0.1777,
    percentiles: [
      [0.1, perVehicle(2.4258)],
      [0.5, perVehicle(2.6109)],
      [0.8, perVehicle(2.7848)],
      [0.9, perVehicle(2.8738)],
    ],
  },
  "0.9": {
    asWrittenChance: 0.2469,
    percentiles: [
      [0.1, perVehicle(2.3786)],
      [0.5, perVehicle(2.607)],
      [0.8, perVehicle(2.821)],
      [0.9, perVehicle(2.9291)],
    ],
  },
};

/**
 * The cost of one air vehicle in thousands of dollars: seven elements with triangular costs, every pair of
 * them correlated alike. `only` keeps one element. No time is involved: each element is a milestone with a
 * cost.
 *
 * With a common correlation r the variance is sum s^2 + r ((sum s)^2 - sum s^2) and the mean does not move.
 */
export function airVehicle(
  options: { correlation?: number; only?: string } = {},
): TestModel<AirVehicleAnswer> {
  const { correlation = 0, only } = options;
  const chosen = Object.entries(elements).filter(([id]) => only === undefined || id === only);
  const variances = chosen.map(([, [, a, m, b]]) => (a * a + m * m + b * b - a * m - a * b - m * b) / 18);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const squares = sum(variances);
  const square = sum(variances.map(Math.sqrt)) ** 2;
  const long = only === undefined ? simulated[String(correlation)] : undefined;
  return {
    document: {
      format: 1,
      title: "Air vehicle",
      start: "2027-03-01",
      currency: "USD",
      calendar: "every-day",
      estimates: { shape: "triangular" },
      tasks: chosen.map(([id, [name, low, likely, high]]) => ({
        id,
        name,
        milestone: true,
        cost: [low, likely, high],
      })),
      ...(correlation === 0
        ? {}
        : {
            correlations: [
              { between: chosen.map(([id]) => `cost:${id}`), coefficient: correlation, cause: "Given." },
            ],
          }),
    },
    known: {
      asWritten: sum(chosen.map(([, [, , likely]]) => likely)),
      mean: sum(chosen.map(([, [, a, m, b]]) => (a + m + b) / 3)),
      sd: Math.sqrt(squares + correlation * (square - squares)),
      ...(correlation === 0 && only === undefined && exact !== undefined ? { exact } : {}),
      ...(long === undefined ? {} : { simulated: long }),
    },
    source:
      "US GAO, Cost Estimating and Assessment Guide, GAO-20-195G (2020), ch. 12, table 12: ranges and point estimate read. Sum of triangulars exact (rational arithmetic), P50 of 32 vehicles 2.6113 billion dollars against GAO's 2.611; correlated variance: Book, Why Correlation Matters in Cost Estimating (1999), recalled.",
  };
}
