// What a response is worth stands in the same figures in the command's words and in the chart it draws of them. No
// outside source: the page tells them by the same rule.
import { readFileSync } from "node:fs";
import { groupDigits, responseWorth, worthRounding } from "@leeway/charts";
import { readPlan, responses } from "@leeway/core";
import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { responsesText } from "../../../apps/command/src/text/responsesText.ts";
import { examplePlan } from "./leeway.ts";

const { plan } = readPlan(readFileSync(examplePlan, "utf8"));
if (plan === undefined) throw new Error("no plan");
const { responses: answer } = responses(plan, { iterations: 1024, sum: 20_000 });
if (answer === undefined) throw new Error("no answer");
const text = responsesText(answer, { width: 400, strong: (words) => words }, "plan.yaml");

it("tells the net worth of each response as the chart does", () => {
  const { document } = new JSDOM("").window;
  const { table } = responseWorth(answer, { document, width: 760, theme: "light" });
  const at = table.columns.findIndex(({ name }) => name === "Net worth");
  expect(table.rows.length).toBe(8);
  for (const row of table.rows) {
    const line = text.split("\n").find((one) => one.trim().startsWith(`${row[0]} `));
    expect(line?.split(/ {2,}/)).toContain(row[at]);
  }
});

it("tells the net worth of the best set to the same place", () => {
  const worth = worthRounding(answer)(answer.best?.effect.netWorth ?? 0);
  expect(worth).toBeGreaterThan(0);
  expect(text).toContain(`It saves EUR ${groupDigits(worth)} more than it costs on average.`);
});
