import { readFileSync } from "node:fs";
import { type Plan, readPlan } from "@leeway/core";

/** A fixture beside this file, as text. */
export function fixture(name: string): string {
  return readFileSync(new URL(`./fixtures/${name}`, import.meta.url), "utf8");
}

/** Reads a plan that must be free of errors. */
export function mustRead(text: string): Plan {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems, null, 1));
  return plan;
}

/** The least that is a plan: what every rule is tried against. */
export const HEAD = "format: 1\ntitle: T\nstart: 2027-01-04\n";
export const TASK = "tasks: [{ id: a, name: A, duration: 3 }]\n";
