// The example plans are plans: they read without a word, they validate, and they are complete the way an approver
// expects. Rules: the plan format (docs of this project) and common practice in project work (no source).
import { readFileSync } from "node:fs";
import { type Estimate, forecast, planFromData, planJsonSchema, readPlan } from "@leeway/core";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { forwardPass } from "./forwardPass.ts";
import { examples, examplesEnding } from "./places.ts";

const names = examplesEnding(".plan.yaml");
const textOf = (name: string) => readFileSync(examples + name, "utf8");

function planOf(name: string) {
  const { plan, problems } = readPlan(textOf(name));
  expect(problems).toEqual([]);
  if (plan === undefined) throw new Error(`${name} has no plan`);
  return plan;
}

it("are the four plans there should be", () => {
  expect(names).toEqual([
    "brackenford-food-bank.plan.yaml",
    "minimal.plan.yaml",
    "ostrel-ferry-ticketing.plan.yaml",
    "quillmarsh-clinic.plan.yaml",
  ]);
});

describe.each(names)("examples/%s", (name) => {
  it("reads without problems, and says that it is invented", () => {
    expect(planOf(name).title.length).toBeGreaterThan(5);
    expect(textOf(name)).toContain("Figures invented for demonstration; no real organisation.");
  });

  // RFC 8785 (read): the hash is of the data, so the same plan as JSON has the same hash.
  it("is the same plan as JSON", () => {
    const data: unknown = JSON.parse(JSON.stringify(parse(textOf(name))));
    expect(planFromData(data).plan?.sha256).toBe(planOf(name).sha256);
  });

  // JSON Schema, draft 2020-12, judged by Ajv and not by us.
  it("validates against the published schema", () => {
    const validate = new Ajv2020({
      allErrors: true,
      strict: false,
      formats: { date: /^\d{4}-\d{2}-\d{2}$/ },
    }).compile(planJsonSchema());
    validate(parse(textOf(name)));
    expect(validate.errors ?? []).toEqual([]);
  });

  it("has every scope item delivered by a task, every goal carried by a benefit, every task in scope", () => {
    const { purpose, tasks, benefits } = planOf(name);
    const delivered = new Set(tasks.map(({ scope }) => scope));
    const carried = new Set(benefits.map(({ goal }) => goal));
    expect(purpose.scopeIn.filter(({ id }) => !delivered.has(id))).toEqual([]);
    expect(purpose.goals.filter(({ id }) => !carried.has(id))).toEqual([]);
    if (purpose.scopeIn.length > 0) expect(tasks.filter(({ scope }) => scope === undefined)).toEqual([]);
  });

  it("leaves every response for someone to decide", () => {
    const { risks } = planOf(name);
    expect(risks.length).toBeGreaterThan(0);
    expect(risks.flatMap(({ responses }) => responses).filter(({ adopted }) => adopted)).toEqual([]);
  });
});

/** The value as written of an estimate in these plans: fixed, or with a likely value. */
function likely(estimate: Estimate | undefined): number {
  if (estimate === undefined) return 0;
  if (estimate.kind === "fixed") return estimate.value;
  if (estimate.kind === "range" && estimate.likely !== undefined) return estimate.likely;
  throw new Error("not an estimate of these plans");
}

// Without limits of people and on one calendar the plan as written is the textbook's forward pass, worked apart
// from the engine. People in these plans are present enough not to move it; the ferry's season has a calendar of
// its own and is left to the oracle's tests.
describe("the plan as written", () => {
  it.each(["brackenford-food-bank.plan.yaml", "minimal.plan.yaml", "quillmarsh-clinic.plan.yaml"])(
    "of %s finishes where the forward pass finishes",
    (name) => {
      const plan = planOf(name);
      const expected = forwardPass({
        start: plan.start,
        holidays: plan.calendars.get(plan.calendar)?.holidays ?? [],
        tasks: plan.tasks.map(({ id, duration, after }) => ({
          id,
          days: likely(duration),
          after: after.map(({ task }) => task),
        })),
      });
      const answer = forecast(plan, { iterations: 200 }).forecast;
      expect(answer?.asWritten.finish).toBe(expected.finish);
      expect(answer?.asWritten.workingDays).toBeCloseTo(expected.workingDays, 9);
    },
  );
});

describe("the forecasts", () => {
  // Common practice, no source: where waiting for people is what decides the date, the plan needs people, not a forecast.
  it.each(names)("of %s is not one of people waiting for people", (name) => {
    const answer = forecast(planOf(name), { iterations: 2000 }).forecast;
    if (answer === undefined) throw new Error("There is no forecast.");
    // A plan without people who hold a task up says nothing of them.
    expect(answer.people?.workingDays ?? 0).toBeLessThan(10);
  });

  // By the plan itself nothing goes live from 15 May to 11 September, so both humps are met and nothing between.
  it("of the ferry has a hump before the season, one after it, and nothing between", () => {
    const percentiles =
      forecast(planOf("ostrel-ferry-ticketing.plan.yaml")).forecast?.finish.percentiles ?? [];
    const dates = percentiles.map(({ date }) => date);
    expect(dates.filter((date) => date < "2028-05-15").length).toBeGreaterThan(0);
    expect(dates.filter((date) => date > "2028-09-11").length).toBeGreaterThan(0);
    expect(dates.filter((date) => "2028-05-15" <= date && date <= "2028-09-11")).toEqual([]);
  });
});
