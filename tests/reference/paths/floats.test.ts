/**
 * Total float, driving paths and shares of published networks. Sources and what was read stand in each model, and in
 * `networks/dates.test.ts`; arithmetic only, so the tolerance is 1e-9. Simulated shares: an independent program with six
 * million iterations, within four standard errors of ours.
 */
import { compile, drivingPaths, future, type PlanData, planFromData, why } from "@leeway/core";
import { describe, expect, it } from "vitest";
import {
  allLinks,
  arrowsSeven,
  constructionFourteen,
  crewOfFour,
  type NetworkAnswer,
  productSix,
  threePathsNine,
  timingAnomaly,
  trainingFourteen,
  trainingLinks,
  vacuumTen,
} from "../../../packages/core/src/models/index.ts";
import { expectShare, expectWithin } from "../integrated/tolerances.ts";

function planOf(document: PlanData) {
  const { plan } = planFromData(document);
  if (plan === undefined) throw new Error("the model is no plan");
  return plan;
}

const expected = (build: typeof vacuumTen): [PlanData, NetworkAnswer] => {
  const model = build("expected");
  return [model.document, model.known.expected];
};
const plain = (build: typeof allLinks): [PlanData, NetworkAnswer] => {
  const model = build();
  return [model.document, model.known];
};
const networks: [string, [PlanData, NetworkAnswer]][] = [
  ["construction, 14 tasks", expected(constructionFourteen)],
  ["vacuum cleaner, 10 tasks", expected(vacuumTen)],
  ["product, 6 tasks", expected(productSix)],
  ["three paths, 9 tasks", expected(threePathsNine)],
  ["arrows, 7 tasks", plain(arrowsSeven)],
  ["training network, 14 tasks", plain(trainingFourteen)],
  ["training network with start-to-start links", plain(trainingLinks)],
  ["all four links, lags and a lead", plain(allLinks)],
];

describe.each(networks)("%s", (_, [document, known]) => {
  const plan = planOf(document);

  it("has the total float of the source as slack, task by task", () => {
    for (const [id, [start, finish, float]] of Object.entries(known.tasks)) {
      const { asWritten } = why(plan, id, { iterations: 4 }).why ?? {};
      expectWithin(asWritten?.slack ?? Number.NaN, float, 1e-9);
      expectWithin(asWritten?.start ?? Number.NaN, start, 1e-9);
      expectWithin(asWritten?.finish ?? Number.NaN, finish, 1e-9);
      expect([id, asWritten?.critical]).toEqual([id, known.critical.includes(id)]);
    }
  });

  it("has one driving path, over critical tasks of the source, that chains from the start to the finish", () => {
    const { paths } = drivingPaths(plan, { iterations: 4 });
    expect(paths?.paths.map(({ share }) => share)).toEqual([1]);
    const ids = paths?.paths[0]?.tasks ?? [];
    expect(ids.filter((id) => !known.critical.includes(id))).toEqual([]);
    const starts = ids.map((id) => known.tasks[id]?.[0] as number);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    expect(starts[0]).toBe(0);
    expectWithin(known.tasks[ids.at(-1) ?? ""]?.[1] ?? Number.NaN, known.finish, 1e-9);
  });
});

describe("three paths without a task in common", () => {
  it.each(["pert", "triangular"] as const)(
    "set the finish as often as their tasks are critical: %s",
    (shape) => {
      const model = threePathsNine(shape);
      const { paths } = drivingPaths(planOf(model.document), { iterations: 10_000 });
      const { critical } = model.known[shape];
      expect(paths?.different).toBe(3);
      for (const { tasks, share } of paths?.paths ?? []) {
        for (const id of tasks) expectShare(share, critical[id] ?? Number.NaN);
      }
      expect(paths?.paths.map(({ tasks }) => tasks.join())).toEqual(["d,f,g", "a,c,e", "b,h,i"]);
    },
  );
});

// Hartmann (1998), recalled: 13 periods in the order b, d, a, f, c, e, the crew of four always the limit.
describe("a crew of four", () => {
  const { document, known } = crewOfFour();
  const plan = planOf(document);
  const held = (id: string) =>
    (why(plan, id, { iterations: 2 }).why?.bounds ?? [])
      .filter(({ binds }) => binds)
      .map(({ kind, task }) => [kind, task?.id]);

  it("tells who waits for the crew behind whom", () => {
    // By hand from the published starts and the shares: a and f start on day 6, as d (all four) ends; c needs all four
    // and starts on day 10, when f lets go; e follows c by a link, and the crew is free for it at the same moment.
    expect(held("a")).toEqual([["person", "d"]]);
    expect(held("c")).toEqual([["person", "f"]]);
    expect(held("d")).toContainEqual(["link", "b"]);
    expect(held("f")).toContainEqual(["link", "d"]);
    expect(held("e")).toContainEqual(["link", "c"]);
    expect(held("b")).toEqual([["plan-start", undefined]]);
  });

  it("drives the finish over the crew", () => {
    const told = future(plan, { iteration: 1 }, { iterations: 2 }).future;
    expect(told?.finish.day).toBe(known.finish);
    expect(told?.path.map(({ task }) => task.id)).toEqual(["b", "d", "f", "c", "e"]);
    expect(told?.path.map(({ way }) => way.kind)).toEqual(["plan-start", "link", "link", "person", "link"]);
    expect(told?.path[3]?.way.person?.id).toBe("crew");
  });
});

// Own instance of Graham's anomaly (1966, 1969), recalled: with every task a day shorter, e no longer fits beside the
// others and waits until the team is free.
describe("shorter and later", () => {
  it("drives the finish by links at 12 days, and over the waiting team at 14", () => {
    const plan = planOf(timingAnomaly("either").document);
    const { paths } = drivingPaths(plan, { iterations: 2000 });
    // c and d end together: the first by id; e waits behind the first of them that ends, again the first by id.
    const byShare = Object.fromEntries((paths?.paths ?? []).map(({ tasks, share }) => [tasks.join(), share]));
    expectShare(byShare["a,b,d"] ?? byShare["a,b,c"] ?? Number.NaN, 0.5);
    expectShare(byShare["a,b,c,e"] ?? Number.NaN, 0.5);
    expect(paths?.different).toBe(2);
    const waits = why(plan, "e", { iterations: 2000 }).why;
    const team = waits?.bounds.find(({ person }) => person?.id === "team");
    expectShare(team?.share ?? Number.NaN, 0.5);
    expect(compile(plan).limitedPeople).toBe(true);
  });
});
