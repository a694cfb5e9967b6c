/**
 * The random documents are valid and the oracle's own small reading of a document is the library's: two
 * programs, written apart from plan format 1, have to make the same plan of it.
 */
import { describe, expect, it } from "vitest";
import { planFromData } from "../../../packages/core/src/index.ts";
import type { Plan } from "../../../packages/core/src/plan/types.ts";
import { planOf } from "../../oracle/planOf.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** What the plan commits to; that a confidence is the usual one and not a stated one changes no date and no sum. */
const commitmentOf = ({ confidenceByDefault: _, ...commitment }: Plan["commitment"]) => commitment;

/** What takes part in time and money. */
const partsOf = (plan: Plan) => ({
  start: plan.start,
  statusDate: plan.statusDate,
  commitment: commitmentOf(plan.commitment),
  calendars: new Map([...plan.calendars].sort()),
  calendar: plan.calendar,
  people: plan.people,
  respectCapacity: plan.respectCapacity,
  tasks: plan.tasks,
  assumptions: plan.assumptions,
  risks: plan.risks,
  overheads: plan.overheads,
});

describe("planOf(random document)", () => {
  it("reads what the library reads, and the library finds nothing wrong with it", () => {
    for (let seed = 1; seed <= 300; seed++) {
      const document = randomPlanDocument(seededRng(seed));
      const { plan, problems } = planFromData(document);
      expect(problems, `seed ${seed}`).toEqual([]);
      if (plan === undefined) throw new Error(`seed ${seed} is not read`);
      expect(partsOf(planOf(document)), `seed ${seed}`).toEqual(partsOf(plan));
    }
  });
});
