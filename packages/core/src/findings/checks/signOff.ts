import type { Plan } from "../../plan/types.ts";
import { approvalsState, personOf } from "../../signoff/approvalsState.ts";
import { hasLapsed } from "../../signoff/hasLapsed.ts";
import type { Check, Found } from "../context.ts";
import { joined } from "../words.ts";

/** Changes after an approval, and objections nobody answered. */
export const checkSignOff: Check = ({ plan, now }) => {
  const approved = plan.approvals
    .filter(({ decision }) => decision === "approve" || decision === "approve-subject-to")
    .flatMap(({ date }) => (date === undefined ? [] : [date]))
    .sort()[0];
  return [
    ...plan.changes.flatMap((change, c): Found[] => {
      if (approved === undefined || (change.date !== undefined && change.date < approved)) return [];
      const missing = [
        ...(change.why === undefined ? ["reason"] : []),
        ...(change.approvedBy === undefined ? ["name of who agreed to it"] : []),
      ];
      if (missing.length === 0) return [];
      const says = `The change "${change.what ?? ""}"${change.date === undefined ? "" : ` of ${change.date}`}, after the first approval, has no ${joined(missing, "or")}.`;
      return [{ code: "change-unexplained", path: `changes[${c}]`, ids: [], says }];
    }),
    ...unlogged(plan),
    ...plan.approvals.flatMap((approval, a): Found[] =>
      now !== undefined && hasLapsed(approval, now)
        ? [
            {
              code: "conditions-lapsed",
              path: `approvals[${a}]`,
              ids: [approval.who],
              says: `${personOf(plan, approval.who).name} approved on a condition that was to be met by ${approval.conditionsBy}: "${approval.conditions}"`,
            },
          ]
        : [],
    ),
    ...plan.objections.flatMap(({ id, state, text }, o): Found[] =>
      state !== "open"
        ? []
        : [
            {
              code: "objection-open",
              path: `objections[${o}]`,
              ids: [id],
              says: text === undefined ? "An objection without a text is open." : `Open: "${text}"`,
            },
          ],
    ),
  ];
};

/** A signature is of another version, and no entry since says why. An entry that names nobody is told by itself. */
function unlogged(plan: Plan): Found[] {
  const stale = plan.approvals.flatMap(({ who, decision, plan: signed }, a) =>
    decision !== "pending" && decision !== "rework" && signed !== undefined && signed !== plan.approvalSha256
      ? [{ who, a }]
      : [],
  );
  if (stale.length === 0 || approvalsState(plan).unexplained !== "no-entry") return [];
  const says = `The plan differs from what ${joined(stale.map(({ who }) => personOf(plan, who).name))} approved, and its change log has no entry since.`;
  const [first] = stale;
  return [
    {
      code: "change-unlogged",
      path: `approvals[${first?.a ?? 0}]`,
      ids: [...new Set(stale.map(({ who }) => who))],
      says,
    },
  ];
}
