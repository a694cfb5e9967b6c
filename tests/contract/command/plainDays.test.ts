import { readdirSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { plainPlan } from "../../browser/support/plainPlan.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, leeway } from "./leeway.ts";

const adopted = plainPlan.replace("Put up a cover,", "Put up a cover, adopted: true,");
const cwd = temporaryFolder({
  "plain.plan.yaml": plainPlan,
  "adopted.plan.yaml": adopted,
  "asked.plan.yaml": plainPlan.replace("phases:", "approvals: [{ who: ann, decision: pending }]\nphases:"),
  "later.plan.yaml": plainPlan.replace("[5, 7, 12]", "[9, 12, 20]"),
});

const ways: string[][] = [
  ["forecast", "plain.plan.yaml"],
  ["explain", "plain.plan.yaml"],
  ["confidence", "plain.plan.yaml"],
  ["responses", "plain.plan.yaml"],
  ["responses", "adopted.plan.yaml"],
  ["assumptions", "plain.plan.yaml"],
  ["reach", "plain.plan.yaml"],
  ["reach", "plain.plan.yaml", "--by", "2027-02-23"],
  ["reach", "later.plan.yaml", "--by", "2027-02-11"],
  ["people", "plain.plan.yaml"],
  ["future", "plain.plan.yaml", "--at", "0.9"],
  ["compare", "plain.plan.yaml", "later.plan.yaml"],
  ["money", "plain.plan.yaml"],
  ["approvals", "asked.plan.yaml"],
  ["brief", "plain.plan.yaml"],
  ["brief", "adopted.plan.yaml"],
  ["brief", "plain.plan.yaml", "--for", "ann"],
];

// That a plan without money is told of no sum, common practice, no source.
describe("a plan without money", () => {
  beforeAll(build, 120_000);

  it.each(ways.map((words) => [words.join(" "), words]))(
    "is told in dates and days: %s",
    async (_name, words) => {
      const { code, out, err } = await leeway(words, { cwd });
      expect({ code, err }).toEqual({ code: 0, err: "" });
      const lines = out.split("\n");
      expect(
        lines.filter((line) => /EUR|for the same|days and money|cost no more|net worth/.test(line)),
      ).toEqual([]);
    },
  );

  it.each([
    [
      ["forecast", "plain.plan.yaml"],
      ["finish-curve", "fifty-futures", "drivers"],
    ],
    [
      ["explain", "plain.plan.yaml"],
      ["shares-days", "walk-days"],
    ],
    [["compare", "plain.plan.yaml", "later.plan.yaml"], ["moves-days"]],
    [["confidence", "plain.plan.yaml"], ["confidence-steps"]],
    [["money", "plain.plan.yaml"], ["contingency-left-days"]],
  ])("has no chart of money: %j", async (words, names) => {
    const folder = temporaryFolder({});
    const { code } = await leeway([...words, "--iterations", "400", "--charts", folder], { cwd });
    expect(code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual(names.map((name) => `${name}.svg`).sort());
  });
});
