import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Plan, readPlan } from "@leeway/core";
import { writeWhole } from "../files/writeWhole.ts";
import { besidePlan } from "./besidePlan.ts";

/** Keeps a copy of a version of a plan; a copy that is there already stands. */
export function keepPlan(path: string, text: string): void {
  const { plan } = readPlan(text);
  if (plan === undefined) return;
  const copy = join(besidePlan(path).versions, `${plan.sha256.slice(0, 12)}.plan.yaml`);
  if (!existsSync(copy)) writeWhole(copy, text, false);
}

/**
 * A kept version by its hash, or the beginning of it. A hash that approvals are bound to belongs to many versions, since
 * it leaves out progress: then it is the one with the least, which is nearest to what was signed.
 */
export function findKept(path: string, hash: string): Plan | undefined {
  const folder = besidePlan(path).versions;
  if (hash === "" || !existsSync(folder)) return undefined;
  const named = `${hash.slice(0, 12)}.plan.yaml`;
  const first = existsSync(join(folder, named)) ? versionIn(join(folder, named)) : undefined;
  if (first?.sha256.startsWith(hash)) return first;
  let found: Plan | undefined;
  for (const name of readdirSync(folder).sort()) {
    if (!name.endsWith(".plan.yaml")) continue;
    const plan = versionIn(join(folder, name));
    if (plan?.sha256.startsWith(hash)) return plan;
    if (plan?.approvalSha256.startsWith(hash) && earlier(plan, found)) found = plan;
  }
  return found;
}

/** A copy by its content, whatever its name says; one that does not read, or is no plan, is none. */
function versionIn(file: string): Plan | undefined {
  try {
    return readPlan(readFileSync(file, "utf8")).plan;
  } catch {
    return undefined;
  }
}

function earlier(plan: Plan, found: Plan | undefined): boolean {
  return found === undefined || (plan.statusDate ?? "") < (found.statusDate ?? "");
}

/** The version of a plan that was approved last, where it was kept. */
export function signedVersion(path: string, { approvals }: Plan): Plan | undefined {
  const signed = approvals
    .filter(({ decision, plan }) => decision.startsWith("approve") && plan !== undefined && plan !== "")
    .sort((a, b) => ((a.date ?? "") < (b.date ?? "") ? 1 : -1));
  for (const { plan } of signed) {
    const found = findKept(path, plan ?? "");
    if (found !== undefined) return found;
  }
  return undefined;
}
