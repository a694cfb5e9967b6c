import type { Brief, BriefApprover } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { plainName } from "../../words/plainName.ts";
import { stated } from "../says.ts";
import { clause, quiet, text } from "../sheet/build.ts";
import type { BoxRow, Room, Section } from "../sheet/types.ts";

const choices = [
  ["approve", "approve"],
  ["approve-subject-to", "approve subject to"],
  ["rework", "rework"],
] as const;

/** Longer names would push where they stand onto a second line; as much is needed to know who signs as what. */
const [shortest, longest] = [34, 44];

/** One row for each approver with the three outcomes and where they stand. */
export function outcomeSection(brief: Brief, room: Room): Section {
  const { approvers } = brief.outcome;
  const more = approvers.length - room.approvers;
  const row = (one: BriefApprover): BoxRow => ({
    name: clause(
      one.role === undefined ? one.name : `${one.name}, ${one.role}`,
      Math.max(shortest, Math.min(room.name, longest)),
      0,
    ),
    boxes: choices.map(([decision, label]) => ({ label, ticked: one.decision === decision })),
    remark: standingWords(brief, one, room),
  });
  return {
    key: "outcome",
    title: "Outcome",
    blocks:
      approvers.length === 0
        ? [
            text("The plan names no approver."),
            {
              kind: "boxes",
              caption: "Outcome",
              rows: [
                {
                  name: "Name, date",
                  boxes: choices.map(([, label]) => ({ label, ticked: false })),
                  remark: "",
                },
              ],
            },
          ]
        : [
            {
              kind: "boxes",
              caption: "Outcome by approver",
              rows: approvers.slice(0, room.approvers).map(row),
            },
            ...(more > 0
              ? [
                  quiet(
                    `and ${more} more ${more === 1 ? "approver" : "approvers"}: \`leeway approvals\` lists all.`,
                  ),
                ]
              : []),
          ],
  };
}

/** "pending; may approve up to EUR 640,000, which is below the committed sum" */
export function standingWords(brief: Brief, one: BriefApprover, room: Pick<Room, "text">): string {
  const on = one.date === undefined ? "" : ` on ${formatDate(one.date, "short")}`;
  const state =
    one.decision === "pending"
      ? "pending"
      : `decided${on}${one.by === undefined ? "" : ` by ${plainName(one.by.name, 40)} in their place`}${one.current === undefined ? ", bound to no version" : one.current ? ", this plan" : ", another version of the plan"}`;
  const conditions =
    one.conditions === undefined
      ? ""
      : `; subject to: ${clause(one.conditions, room.text).replace(/\.$/, "")}${untilWords(one)}`;
  const limit =
    one.approvesUpTo === undefined
      ? ""
      : `; may approve up to ${stated(brief, one.approvesUpTo)}${one.covers === false ? ", not enough" : ""}`;
  return `${state}${conditions}${limit}`;
}

/** What became of a condition: cut words must not hide that it was met. */
function untilWords({ conditionsBy, conditionsMet }: BriefApprover): string {
  if (conditionsMet !== undefined) return ` (met on ${formatDate(conditionsMet, "short")})`;
  return conditionsBy === undefined ? "" : ` (to be met by ${formatDate(conditionsBy, "short")})`;
}
