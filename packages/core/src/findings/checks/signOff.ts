import type { Check, Found } from "../context.ts";
import { joined } from "../words.ts";

/** Changes after an approval, and objections nobody answered. */
export const checkSignOff: Check = ({ plan }) => {
  const approved = plan.approvals
    .filter(({ decision }) => decision === "approve" || decision === "approve-subject-to")
    .flatMap(({ date }) => (date === undefined ? [] : [date]))
    .sort()[0];
  return [
    ...plan.changes.flatMap((change, c): Found[] => {
      if (approved === undefined || (change.date !== undefined && change.date < approved)) return [];
      const missing = [
        ...(change.why === undefined ? ["reason"] : []),
        ...(change.who === undefined && change.approvedBy === undefined ? ["name of who decided it"] : []),
      ];
      if (missing.length === 0) return [];
      const says = `The change "${change.what ?? ""}"${change.date === undefined ? "" : ` of ${change.date}`}, after the first approval, has no ${joined(missing, "or")}.`;
      return [{ code: "change-unexplained", path: `changes[${c}]`, ids: [], says }];
    }),
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
