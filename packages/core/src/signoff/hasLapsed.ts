import type { Approval, IsoDate } from "../plan/types.ts";

/** Approved on conditions whose day has passed, and nobody says that they were met. */
export function hasLapsed(
  { decision, conditionsBy, conditionsMet }: Pick<Approval, "decision" | "conditionsBy" | "conditionsMet">,
  now: IsoDate,
): boolean {
  return (
    decision === "approve-subject-to" &&
    conditionsBy !== undefined &&
    conditionsMet === undefined &&
    now > conditionsBy
  );
}
