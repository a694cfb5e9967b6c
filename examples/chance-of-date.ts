import { readFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";

const file = new URL("brackenford-food-bank.plan.yaml", import.meta.url);
const { plan } = readPlan(readFileSync(file, "utf8"));
const answer = plan && forecast(plan).forecast;
if (answer === undefined) throw new Error("The plan has problems.");

const { finishBy = 0, budget = 0, both = 0 } = answer.chance;
console.log(`By ${answer.asked.finishBy}: ${Math.round(finishBy * 100)} in 100 futures`);
console.log(
  `Within ${answer.asked.budget}: ${Math.round(budget * 100)} in 100, both: ${Math.round(both * 100)}`,
);

// Prints
// By 2027-09-30: 47 in 100 futures
// Within 385000: 85 in 100, both: 45
