/**
 * Kolisch & Sprecher (1997), PSPLIB, EJOR 96, 205-216: generated networks of 30 to 120 jobs, each with its
 * published length with resources ignored ("MPM-Time"). Whole numbers, so the lengths have to be equal.
 */
import { describe, expect, it } from "vitest";
import { forecastOf } from "../integrated/runPlan.ts";
import { folder, instanceDocument, readInstances } from "./psplib.ts";

describe.runIf(folder !== undefined)("PSPLIB networks (skipped where LEEWAY_PSPLIB names no folder)", () => {
  const instances = folder === undefined ? [] : readInstances(folder);

  it("finds instances in the folder", () => {
    expect(instances.length).toBeGreaterThan(0);
  });

  it.each(instances.map((instance) => [instance.name, instance] as const))(
    "%s is as long as published",
    (_, instance) => {
      const result = forecastOf(instanceDocument(instance), { iterations: 1 });
      expect(result.asWritten.day).toBe(instance.mpmTime);
      expect(result.tasks.find((task) => task.id === `job-${instance.durations.length}`)?.critical).toBe(1);
    },
  );
});
