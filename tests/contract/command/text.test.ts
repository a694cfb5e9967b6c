// What a person reads. Every figure of the text is one of the forecast that --json prints; the words are those of
// the project's own published command line.
import { beforeAll, describe, expect, it } from "vitest";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

const LONG = new Intl.DateTimeFormat("en-GB", {
  weekday: "long",
  day: "numeric",
  month: "long",
  year: "numeric",
  timeZone: "UTC",
});
/** The date as the runtime's own formatter writes it: `Tuesday 16 November 2027`. */
const longDate = (iso: string) => LONG.format(new Date(`${iso}T00:00:00Z`)).replace(",", "");

beforeAll(build);

describe("forecast, as text", () => {
  it("opens with the answer: weekday, date, sum and how often each holds", async () => {
    const { code, out, err } = await leeway(["forecast", examplePlan]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const forecast = JSON.parse((await leeway(["forecast", examplePlan, "--json"])).out);
    const text = out.replace(/\s+/g, " ");
    expect(out.startsWith(forecast.plan.title)).toBe(true);
    expect(text).toContain(`Commit to ${longDate(forecast.committed.date)} and ${forecast.plan.currency} `);
    const level = forecast.committed.confidence * 10;
    expect(text).toContain(`each holds ${level} times in 10, both together`);
    expect(text).toContain(`You asked for ${longDate(forecast.asked.finishBy)}`);
    expect(text).toContain(`The plan as written says ${longDate(forecast.asWritten.finish)}`);
    expect(text).toContain(forecast.plan.sha256.slice(0, 12));
    expect(text).toContain(`seed ${forecast.seed}`);
    for (const warning of forecast.warnings) expect(text).toContain(warning);
  });

  it("shows no more digits of the committed sum than its limits support", async () => {
    const { out } = await leeway(["forecast", "-"], { input: smallPlan });
    const forecast = JSON.parse((await leeway(["forecast", "-", "--json"], { input: smallPlan })).out);
    const shown = /and EUR ([\d,.]+): each/.exec(out.replace(/\s+/g, " "))?.[1]?.replaceAll(",", "");
    const { cost, costLow, costHigh } = forecast.committed;
    expect(Math.abs(Number(shown) - cost)).toBeLessThanOrEqual((costHigh - costLow) / 2);
    expect(shown?.replace(/0+$/, "").length).toBeLessThanOrEqual(4);
  });

  it.each([60, 72, 80, 100])("keeps to %i columns", async (width) => {
    const { out } = await leeway(["forecast", examplePlan, "--tornado", "--iterations", "400"], {
      env: { COLUMNS: String(width) },
    });
    const commands = out.split("\n").filter((line) => line.startsWith("  leeway "));
    const lines = out.split("\n").filter((line) => !commands.includes(line));
    expect(lines.filter((line) => [...line].length > width)).toEqual([]);
  });

  it("is 80 columns wide without a terminal and plain", async () => {
    const { out } = await leeway(["forecast", examplePlan]);
    expect([...(out.split("\n")[0] ?? "")]).toHaveLength(80);
    expect(out).not.toContain("\u001b");
  });

  it("points to why, to the responses where there are some, and to the check, in at most four lines", async () => {
    const block = (out: string) =>
      out.split("\n\n").find((lines) => lines.startsWith("What to look at next"));
    const verbsOf = (out: string) =>
      [...(block(out) ?? "").matchAll(/^ {2}leeway (\S+) PLAN/gm)].map(([, verb]) => verb);
    const some = await leeway(["forecast", "-"], { input: smallPlan });
    expect(verbsOf(some.out)).toEqual(["explain", "responses", "check"]);
    expect(block(some.out)).toMatch(/leeway explain PLAN +why this much contingency$/m);
    const none = await leeway(["forecast", "-"], { input: smallPlan.replace(/ {4}responses:\n.*\n/, "") });
    expect(verbsOf(none.out)).toEqual(["explain", "check"]);
    const what = await leeway(["forecast", "-", "--without", "rain"], { input: smallPlan });
    expect(block(what.out)).toMatch(/leeway explain PLAN --without rain +why/);
    for (const { out } of [some, none, what]) expect(block(out)?.split("\n").length).toBeLessThanOrEqual(4);
  });

  it("names only verbs that exist", async () => {
    const { out } = await leeway(["forecast", examplePlan]);
    const help = (await leeway(["help"])).out;
    const named = [...out.matchAll(/^ {2}leeway (\S+)/gm)].map((match) => match[1] ?? "");
    expect(named.length).toBeGreaterThan(0);
    for (const verb of named) expect(help).toMatch(new RegExp(`^ +${verb}\\b`, "m"));
  });

  it("speaks of days alone where the plan has no money", async () => {
    const input =
      "format: 1\ntitle: Walk\nstart: 2027-02-01\ntasks: [{ id: go, name: Go, duration: [2, 3, 6] }]\n";
    const { code, out } = await leeway(["forecast", "-"], { input });
    expect(code).toBe(0);
    expect(out).not.toContain("EUR");
    expect(out).toContain("it holds 8 times in 10");
  });

  it("shows a name with control characters without sending them", async () => {
    const input = smallPlan.replace("title: Shed roof", 'title: "Shed\\u001b[2J roof"');
    const { code, out } = await leeway(["forecast", "-"], { input });
    expect(code).toBe(0);
    expect(out).not.toContain("\u001b");
  });
});
