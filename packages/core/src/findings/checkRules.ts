import { commitmentRules } from "./rules/commitment.ts";
import { estimateRules } from "./rules/estimates.ts";
import { logicRules } from "./rules/logic.ts";
import { moneyRules } from "./rules/money.ts";
import { peopleRules } from "./rules/people.ts";
import { purposeRules } from "./rules/purpose.ts";
import { registerRules } from "./rules/register.ts";
import { signOffRules } from "./rules/signOff.ts";
import type { CheckRule } from "./types.ts";

const rows = [
  ...purposeRules,
  ...logicRules,
  ...estimateRules,
  ...registerRules,
  ...peopleRules,
  ...moneyRules,
  ...commitmentRules,
  ...signOffRules,
];
/** The code of a finding of the check, as in FINDINGS.md. */
export type FindingCode = (typeof rows)[number]["code"];

/** The table of all checks, family by family: what the checks, the page and the tests read. */
export const checkRules: readonly (CheckRule & { code: FindingCode })[] = rows;

/** Families in the order in which they are read. */
export const findingFamilies = [...new Set(checkRules.map(({ family }) => family))];
