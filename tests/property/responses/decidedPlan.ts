import { type Plan, planFromData } from "@leeway/core";
import type { PersonDocument } from "../../oracle/document.ts";
import type { RandomPlanOptions } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { richDocument } from "../laws/richDocument.ts";

/** A random plan with decisions to take: responses, optional scope, capacity that could be added; or undefined. */
export function decidedPlan(seed: number, options: RandomPlanOptions = {}): Plan | undefined {
  const rng = seededRng(seed * 7 + 1);
  const document = richDocument(seed, options);
  const tasks = Array.isArray(document.tasks) ? document.tasks : [document.tasks];
  const people = document.people === undefined ? [] : [document.people].flat();
  const scope = ["attic", "cellar"];
  const data = {
    ...document,
    lateness: { after: "2028-01-01", perWeek: [50, 100, 300], once: 40 },
    purpose: { scope: { in: scope.map((id) => ({ id, name: id, optional: true, lost: `No ${id}.` })) } },
    tasks: tasks.map((task) => (rng() < 0.35 ? { ...task, scope: scope[Math.floor(2 * rng())] } : task)),
    people: people.map((person: PersonDocument) =>
      rng() < 0.6
        ? {
            ...person,
            couldAdd: {
              capacity: [0.25, 0.5, 1][Math.floor(3 * rng())],
              cost: 25 * Math.floor(8 * rng()),
              ...(rng() < 0.4 ? { from: "2028-03-01" } : {}),
            },
          }
        : person,
    ),
  };
  if (people.length === 0) Reflect.deleteProperty(data, "people");
  const { plan } = planFromData(data);
  return plan;
}

/** The ids a set of switches stands for, as a scenario names them. */
export function scenarioOf(
  switches: readonly { id: string; kind: string }[],
  set: bigint,
): { with: string[]; without: string[] } {
  const on = (i: number) => ((set >> BigInt(i)) & 1n) === 1n;
  const taken = switches.filter((one, i) => one.kind !== "scope" && on(i));
  const left = switches.filter((one, i) =>
    one.kind === "scope" ? on(i) : one.kind === "response" && !on(i),
  );
  return { with: taken.map(({ id }) => id), without: left.map(({ id }) => id) };
}
