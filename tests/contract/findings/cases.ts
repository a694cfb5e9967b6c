import type { FindingCode } from "@leeway/core";
import type { Case } from "./cases/case.ts";
import { commitmentCases } from "./cases/commitment.ts";
import { estimateCases } from "./cases/estimates.ts";
import { logicCases } from "./cases/logic.ts";
import { moneyCases } from "./cases/money.ts";
import { peopleCases } from "./cases/people.ts";
import { purposeCases } from "./cases/purpose.ts";
import { registerCases } from "./cases/register.ts";
import { signOffCases } from "./cases/signOff.ts";

/** One row for each code of the table, a file for each family. Sources of the rules are in the table itself. */
export const cases: Record<FindingCode, Case> = {
  ...purposeCases,
  ...logicCases,
  ...estimateCases,
  ...registerCases,
  ...peopleCases,
  ...moneyCases,
  ...commitmentCases,
  ...signOffCases,
};
