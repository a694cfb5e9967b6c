import { readFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";

const file = new URL("quillmarsh-clinic.plan.yaml", import.meta.url);
const { plan } = readPlan(readFileSync(file, "utf8"));
if (plan === undefined) throw new Error("The plan has problems.");

// The same dice twice: the difference is the response and nothing else.
const before = forecast(plan).forecast?.committed;
const after = forecast(plan, { with: ["pre-application-meeting"] }).forecast?.committed;
if (before === undefined || after === undefined) throw new Error("The plan could not be forecast.");
const days = (before.workingDays - after.workingDays).toFixed(1);
console.log(`${before.date} without the meeting, ${after.date} with it: ${days} working days`);

// Prints
// 2027-11-19 without the meeting, 2027-11-16 with it: 2.9 working days
