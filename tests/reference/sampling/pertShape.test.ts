import { describe, expect, it } from "vitest";
import { estimateMean, lawOf } from "../../../packages/core/src/sampling/index.ts";
import { type Expected, expectLaw } from "./expectLaw.ts";
import { range } from "./range.ts";

// Anderson, Sweeney, Williams, Camm, Cochran, Fry & Ohlmann, An Introduction to Management Science, table 9.4
// (read: the three-point estimates in weeks, and activity A's mean 6); the mean is (a + 4m + b) / 6 of Malcolm,
// Roseboom, Clark & Fazar (1959), Operations Research 7(5), 646-669 (recalled). The beta law with these two shape
// parameters has that mean exactly; its standard deviation is not (b - a) / 6, see the next test.
describe("pert, the mean of 1959", () => {
  it.each([
    ["A", 4, 5, 12, 6],
    ["B", 1, 1.5, 5, 2],
    ["C", 2, 3, 4, 3],
    ["D", 3, 4, 11, 5],
    ["E", 2, 3, 4, 3],
    ["F", 1.5, 2, 2.5, 2],
    ["G", 1.5, 3, 4.5, 3],
    ["H", 2.5, 3.5, 7.5, 4],
    ["I", 1.5, 2, 2.5, 2],
    ["J", 1, 2, 3, 2],
  ])("activity %s: [%d, %d, %d] has mean %d", (_, low, likely, high, mean) => {
    expect(lawOf(range(low, likely, high)).mean).toBeCloseTo(mean, 12);
    expect(estimateMean(range(low, likely, high))).toBeCloseTo(mean, 12);
  });
});

// The beta law with alpha = 1 + 4 (m - a)/(b - a), beta = 1 + 4 (b - m)/(b - a): formula recalled; values computed
// with scipy.stats.beta (SciPy 1.17), printed to 10 decimals.
describe("pert, standard deviation and quantiles", () => {
  it.each<[number, number, number, Expected]>([
    [
      1,
      3,
      8,
      {
        mean: 3.5,
        sd: 1.2677313821,
        P5: 1.6301586534,
        P10: 1.9043534593,
        P50: 3.3825886014,
        P70: 4.1494549294,
        P80: 4.6258796408,
        P90: 5.2727027463,
        P95: 5.7739214935,
      },
    ],
    [
      4,
      5,
      12,
      {
        mean: 6,
        sd: 1.3093073414,
        P5: 4.2915781444,
        P10: 4.4784692548,
        P50: 5.7689591594,
        P70: 6.5690173826,
        P80: 7.102761497,
        P90: 7.8712255886,
        P95: 8.5027568843,
      },
    ],
    [
      2,
      3,
      4,
      {
        mean: 3,
        sd: 0.377964473,
        P5: 2.3785107549,
        P10: 2.4932729066,
        P50: 3,
        P70: 3.2203632989,
        P80: 3.3468041243,
        P90: 3.5067270934,
        P95: 3.6214892451,
      },
    ],
    [
      3,
      4,
      11,
      {
        mean: 5,
        sd: 1.3093073414,
        P5: 3.2915781444,
        P10: 3.4784692548,
        P50: 4.7689591594,
        P70: 5.5690173826,
        P80: 6.102761497,
        P90: 6.8712255886,
        P95: 7.5027568843,
      },
    ],
    [
      6,
      9,
      18,
      {
        mean: 10,
        sd: 2.1380899353,
        P5: 6.9172846969,
        P10: 7.3468195026,
        P50: 9.7657220455,
        P70: 11.0640984889,
        P80: 11.8823081157,
        P90: 13.0066844954,
        P95: 13.888899816,
      },
    ],
    [
      10,
      10,
      20,
      {
        mean: 11.6666666667,
        sd: 1.4085904245,
        P5: 10.1020621831,
        P10: 10.2085163764,
        P50: 11.294494367,
        P70: 12.139969144,
        P80: 12.7522033632,
        P90: 13.6904265552,
        P95: 14.5071972835,
      },
    ],
    [
      10,
      20,
      20,
      {
        mean: 18.3333333333,
        sd: 1.4085904245,
        P5: 15.4928027165,
        P10: 16.3095734448,
        P50: 18.705505633,
        P70: 19.3114991509,
        P80: 19.5635249979,
        P90: 19.7914836236,
        P95: 19.8979378169,
      },
    ],
    [
      10,
      12,
      30,
      {
        P1: 10.1841827355,
        P5: 10.5999636465,
        P10: 11.0158555133,
        P25: 12.1281064956,
        P50: 14.0532970072,
        P75: 16.620079212,
        P80: 17.3255825459,
        P90: 19.2465949992,
        P95: 20.8414819477,
        P99: 23.6407803499,
      },
    ],
  ])("[%d, %d, %d]", (low, likely, high, expected) => {
    expectLaw(lawOf(range(low, likely, high)), expected, 2e-10);
  });
});
