import { networkDocument } from "./network.ts";
import type { NetworkAnswer, TestModel } from "./testModel.ts";

/**
 * All four kinds of link with lags and a lead. Work is not split: a task whose finish is bound starts later.
 */
export function allLinks(): TestModel<NetworkAnswer> {
  return {
    document: networkDocument({
      title: "All four links",
      durations: { s: 0, a: 10, b: 8, c: 12, d: 6, e: 9, f: 4, g: 7, z: 0 },
      after: {
        a: ["s"],
        b: [{ task: "a", link: "start-to-start", lag: 3 }],
        c: [
          { task: "a", link: "finish-to-start", lag: 2 },
          { task: "b", link: "finish-to-finish", lag: 4 },
        ],
        d: [{ task: "b", link: "finish-to-start", lag: -2 }],
        e: [
          { task: "c", link: "start-to-start", lag: 5 },
          { task: "d", link: "finish-to-start" },
        ],
        f: [
          { task: "e", link: "finish-to-finish", lag: 3 },
          { task: "c", link: "finish-to-start", lag: 1 },
        ],
        g: [{ task: "d", link: "start-to-finish", lag: 15 }],
        z: ["e", "f", "g", "c"],
      },
    }),
    known: {
      finish: 29,
      critical: ["a", "c", "e", "f", "s", "z"],
      tasks: {
        s: [0, 0, 0],
        a: [0, 10, 0],
        b: [3, 11, 2],
        c: [12, 24, 0],
        d: [9, 15, 2],
        e: [17, 26, 0],
        f: [25, 29, 0],
        g: [17, 24, 5],
        z: [29, 29, 0],
      },
    },
    source:
      "Own construction after the definitions of links, lags and leads in GAO-16-89G, best practice 2 (2015); dates and float by a topological pass and by linear programming, which agree.",
  };
}
