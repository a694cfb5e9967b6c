import { readFileSync } from "node:fs";
import { describeProblem, forecast, readPlan } from "@leeway/core";

const { plan, problems } = readPlan(readFileSync(new URL("minimal.plan.yaml", import.meta.url), "utf8"));
if (plan === undefined) throw new Error(problems.map((problem) => describeProblem(problem)).join("\n"));

const { forecast: answer } = forecast(plan);
if (answer === undefined) throw new Error("The plan could not be forecast.");
const { confidence, date, cost } = answer.committed;
console.log(`As written: ${answer.asWritten.finish} and ${answer.asWritten.cost} ${plan.currency}`);
console.log(`At ${confidence * 100} %: ${date} and ${Math.round(cost / 100) * 100} ${plan.currency}`);

// Prints
// As written: 2027-04-26 and 29100 EUR
// At 80 %: 2027-05-18 and 33500 EUR
