import { describe, expect, it } from "vitest";
import { differences } from "./differences.ts";
import { richDocument } from "./richDocument.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * What a draw depends on (plan format 1, "Same plan, seed and iterations: same numbers, to the bit"): seed, item,
 * purpose and number of the iteration, nothing else. Exact comparisons of random plans from printed seeds.
 */
const seeds = Array.from({ length: 25 }, (_, k) => 300 + k);

function runsOf(document: object, options: object = {}) {
  return runOf(document, { iterations: 1500, ...options });
}

/** First place where two rows differ in their common part, or -1. */
function firstDifference(a: Float64Array, b: Float64Array): number {
  for (let k = 0; k < Math.min(a.length, b.length); k++) if (!Object.is(a[k], b[k])) return k;
  return -1;
}

describe("the draws of a plan", () => {
  it("are the same twice: the forecasts are the same text", () => {
    for (const seed of seeds.slice(0, 8)) {
      const document = richDocument(seed);
      if (runsOf(document) === undefined) continue;
      const text = () => JSON.stringify(forecastOf(document, { iterations: 1500, tornado: true }));
      expect(text()).toBe(text());
    }
  });

  it("are others for another seed, the first and the last character counting", () => {
    const document = {
      format: 1,
      title: "Seeds",
      start: "2027-02-01",
      tasks: { id: "a", name: "A", duration: [2, 5, 20] },
    };
    const texts = ["leeway", "Leeway", "leeway1", "1leeway", "11", "1", ""].map((seed) =>
      JSON.stringify(forecastOf(document, { iterations: 100, seed }).finish),
    );
    expect(new Set(texts).size).toBe(texts.length);
    expect(JSON.stringify(forecastOf({ ...document, seed: "11" }, { iterations: 100 }).finish)).toBe(
      texts[4],
    );
  });

  it("of a longer run begin with those of a shorter one", () => {
    let compared = 0;
    for (const seed of seeds) {
      const document = richDocument(seed);
      for (const design of ["plain", "latin-hypercube"]) {
        const short = runsOf(document, { iterations: 700, design });
        const long = runsOf(document, { iterations: 2300, design });
        if (short === undefined || long === undefined) continue;
        compared++;
        expect(firstDifference(short.trials.finish, long.trials.finish)).toBe(-1);
        expect(firstDifference(short.trials.cost, long.trials.cost)).toBe(-1);
        expect([short.trials.finish.length, long.trials.finish.length]).toEqual([700, 2300]);
      }
    }
    expect(compared).toBeGreaterThan(40);
  });

  it("are not disturbed by an unrelated task, risk, person and overhead", () => {
    let compared = 0;
    for (const seed of seeds) {
      const document = richDocument(seed);
      const list = <T>(value: T | T[] | undefined): T[] =>
        value === undefined ? [] : Array.isArray(value) ? value : [value];
      const more = {
        ...document,
        people: [...list(document.people), { id: "new-person", name: "N" }],
        tasks: [
          { id: "a-new-one", name: "N", duration: [1, 2, 3], cost: [1, 2, 3], people: "new-person" },
          ...list(document.tasks),
        ],
        risks: [
          ...list(document.risks),
          { id: "new-risk", name: "N", probability: 0.5, impacts: { tasks: "a-new-one", delay: [1, 2, 3] } },
        ],
        overheads: [...list(document.overheads), { id: "new-money", name: "N", perDay: [1, 2, 3] }],
      };
      const before = runsOf(document);
      const after = runsOf(more);
      if (before === undefined || after === undefined) continue;
      before.model.tasks.forEach(({ id }, j) => {
        const at = after.model.tasks.findIndex((task) => task.id === id);
        const [a, b] = [before.trials.starts[j], after.trials.starts[at]];
        const [c, d] = [before.trials.finishes[j], after.trials.finishes[at]];
        if (!a || !b || !c || !d) throw new Error(`${id} is missing`);
        expect(firstDifference(a, b), `seed ${seed} ${id} start`).toBe(-1);
        expect(firstDifference(c, d), `seed ${seed} ${id} finish`).toBe(-1);
        compared++;
      });
    }
    expect(compared).toBeGreaterThan(100);
  });
});

describe("a scenario", () => {
  const list = <T>(value: T | T[] | undefined): T[] =>
    value === undefined ? [] : Array.isArray(value) ? value : [value];
  const numbers = (document: object, options: object = {}) => {
    const { plan, ...rest } = forecastOf(document, { iterations: 300, ...options });
    return { ...rest, plan: { ...plan, sha256: "" } };
  };
  /** The document with one entry or response changed. */
  const edited = (document: ReturnType<typeof richDocument>, id: string, keys: object) => {
    const change = <T extends { id: string }>(item: T): T => (item.id === id ? { ...item, ...keys } : item);
    const entries = <T extends { id: string; responses?: unknown }>(value: T | T[] | undefined) =>
      list(value).map((entry) => {
        const responses = list(entry.responses as { id: string } | { id: string }[] | undefined);
        return change(responses.length === 0 ? entry : { ...entry, responses: responses.map(change) });
      });
    return { ...document, risks: entries(document.risks), assumptions: entries(document.assumptions) };
  };

  it("with or without a response is the plan that says so itself, and without a risk the plan that closes it", () => {
    let compared = 0;
    for (let seed = 400; seed < 430; seed++) {
      const document = richDocument(seed);
      if (runsOf(document) === undefined) continue;
      for (const entry of [...list(document.risks), ...list(document.assumptions)]) {
        for (const response of list(entry.responses)) {
          const taken = response.adopted !== true;
          const option = taken ? { with: [response.id] } : { without: [response.id] };
          const written = edited(document, response.id, { adopted: taken });
          expect(
            differences(numbers(document, option), numbers(written)),
            `seed ${seed} ${response.id}`,
          ).toEqual([]);
          compared++;
        }
        const closed = edited(document, entry.id, { status: "closed" });
        expect(
          differences(numbers(document, { without: [entry.id] }), numbers(closed)),
          `seed ${seed} ${entry.id}`,
        ).toEqual([]);
        if (entry.group === undefined && (entry.status ?? "open") === "open") {
          const never = "probability" in entry ? { probability: 0 } : { chanceWrong: 0 };
          expect(differences(numbers(edited(document, entry.id, never)), numbers(closed))).toEqual([]);
        }
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(50);
  });

  it("keeps the hash of the document, which closing a risk in it changes", () => {
    const document = {
      format: 1,
      title: "Hash",
      start: "2027-02-01",
      tasks: { id: "a", name: "A", duration: 2 },
      risks: { id: "r", name: "R", probability: 0.5, impacts: { tasks: "a", delay: 2 } },
    };
    const hash = (of: object, options: object = {}) =>
      forecastOf(of, { iterations: 10, ...options }).plan.sha256;
    expect(hash(document, { without: ["r"] })).toBe(hash(document));
    expect(hash({ ...document, risks: { ...document.risks, status: "closed" } })).not.toBe(hash(document));
  });
});
