import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";
import { checkBenefits } from "./benefits.ts";
import { checkCalendars } from "./calendars.ts";
import { checkCorrelations } from "./correlations.ts";
import { checkEstimates } from "./estimates.ts";
import { checkFacts } from "./facts.ts";
import { checkLinks } from "./links.ts";
import { checkPeople } from "./people.ts";
import { checkProgress } from "./progress.ts";
import { checkReferences } from "./references.ts";
import { checkRegister } from "./register.ts";
import { checkReturnTriggers } from "./returnTriggers.ts";
import { checkTasks } from "./tasks.ts";

/** Checks everything that holds between keys; each problem is reported into `reading`. */
export function checkDraft(plan: PlanDraft, reading: Reading): void {
  checkReferences(plan, reading);
  checkEstimates(plan, reading);
  checkCalendars(plan, reading);
  checkTasks(plan, reading);
  checkLinks(plan, reading);
  checkPeople(plan, reading);
  checkProgress(plan, reading);
  checkRegister(plan, reading);
  checkFacts(plan, reading);
  checkReturnTriggers(plan, reading);
  checkCorrelations(plan, reading);
  checkBenefits(plan, reading);
}
