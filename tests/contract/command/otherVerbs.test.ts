// schema, new and check. Source: the project's own published command line and plan format; JSON Schema draft
// 2020-12 as Ajv implements it.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

describe("schema", () => {
  it("prints a JSON Schema that takes a right plan and refuses a wrong one", async () => {
    const { code, out } = await leeway(["schema"]);
    expect(code).toBe(0);
    const schema = JSON.parse(out);
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    const ajv = new Ajv2020({ strict: false, allErrors: true, formats: { date: /^\d{4}-\d{2}-\d{2}$/ } });
    const isPlan = ajv.compile(schema);
    isPlan(parse(smallPlan));
    expect(isPlan.errors ?? []).toEqual([]);
    isPlan(parse(readFileSync(examplePlan, "utf8")));
    expect(isPlan.errors ?? []).toEqual([]);
    expect(isPlan(parse(smallPlan.replace("title:", "titel:")))).toBe(false);
    expect(isPlan(parse(smallPlan.replace("probability: 0.3", "probability: 30%")))).toBe(false);
  });
});

describe("new", () => {
  it("--yes prints a commented plan that forecasts as it stands", async () => {
    const made = await leeway(["new", "--yes", "--title", "Reading room", "--start", "2027-03-01"]);
    expect(made).toMatchObject({ code: 0, err: "" });
    expect(made.out).toMatch(/^\s*#|\s#\s/m);
    expect(parse(made.out)).toMatchObject({ format: 1, title: "Reading room" });
    const { code, out, err } = await leeway(["forecast", "-"], { input: made.out });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("Commit to");
  });

  it("keeps titles YAML could mistake", async () => {
    for (const title of ["Roof: part 2", "# 4", "- none", "'quoted\" {x}", "007", "yes"]) {
      const { code, out } = await leeway(["new", "--yes", `--title=${title}`]);
      expect(code).toBe(0);
      expect(parse(out).title).toBe(title);
    }
  });

  it("does not overwrite without --force", async () => {
    const cwd = temporaryFolder({ "plan.yaml": "mine" });
    const refused = await leeway(["new", "--yes", "--out", "plan.yaml"], { cwd });
    expect(refused).toMatchObject({ code: 2, out: "", err: expect.stringContaining("--force") });
    expect(readFileSync(join(cwd, "plan.yaml"), "utf8")).toBe("mine");
    const forced = await leeway(["new", "--yes", "--out", "plan.yaml", "--force"], { cwd });
    expect(forced).toMatchObject({ code: 0, out: "" });
    expect(parse(readFileSync(join(cwd, "plan.yaml"), "utf8"))).toMatchObject({ format: 1 });
    expect(readdirSync(cwd)).toEqual(["plan.yaml"]);
  });

  it("refuses a date, a currency and questions without a terminal, all at once", async () => {
    const { code, out, err } = await leeway(["new", "--start", "2027-02-30", "--currency", "euro"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    for (const word of ["2027-02-30", "euro", "--yes"]) expect(err).toContain(word);
  });
});

describe("check", () => {
  it("--json prints the findings of a right plan with every promised key", async () => {
    const { code, out } = await leeway(["check", "-", "--json"], { input: smallPlan });
    expect(code).toBe(0);
    const { findings, ...rest } = JSON.parse(out);
    expect(Object.keys(rest).sort()).toEqual(["measures", "plan", "run", "today"]);
    expect(findings).toBeInstanceOf(Array);
    for (const finding of findings) {
      expect(Object.keys(finding).sort()).toEqual([
        "advice",
        "code",
        "ids",
        "message",
        "path",
        "severity",
        "source",
      ]);
      expect(["error", "warning", "note"]).toContain(finding.severity);
    }
  });

  it("--json lists the mistakes of a wrong plan as findings, and ends with code 2", async () => {
    const input = smallPlan.replace("probability: 0.3", "probability: 30%");
    const { code, out, err } = await leeway(["check", "-", "--json"], { input });
    expect(code).toBe(2);
    expect(JSON.parse(out).findings).toMatchObject([{ severity: "error", path: "risks[0].probability" }]);
    expect(err).toContain("risks[0].probability");
  });
});
