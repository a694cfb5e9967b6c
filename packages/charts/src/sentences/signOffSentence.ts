import type { ApprovalsState, ApproverState } from "@leeway/core";
import { plainName } from "../words/plainName.ts";
import { enumerated } from "./enumerated.ts";

/** Where the sign-off stands, in one sentence. */
export function signOffSentence({ overall, approvers }: ApprovalsState): string {
  const names = (...states: ApproverState["state"][]) =>
    enumerated(approvers.filter(({ state }) => states.includes(state)).map(({ name }) => plainName(name)));
  switch (overall) {
    case "not-asked":
      return "Nobody has been asked to approve this plan.";
    case "waiting":
      return [waitingSentence(names("pending")), missingSentence(approvers)]
        .filter((one) => one !== "")
        .join(" ");
    case "approved":
      return "Approved by all, as the plan is now.";
    case "on-conditions":
      return "Approved by all as the plan is now, on conditions.";
    case "outdated":
      return [outdatedSentence(names("stale"), approvers), waitingSentence(names("pending"))]
        .filter((one) => one !== "")
        .join(" ");
    case "lapsed": {
      const who = enumerated(approvers.filter(({ lapsed }) => lapsed).map(({ name }) => plainName(name)));
      return `Not approved any more: the day by which the condition of ${who} was to be met has passed.`;
    }
    case "rework":
      return `Sent back by ${names("rework")}.`;
  }
}

function outdatedSentence(names: string, approvers: readonly ApproverState[]): string {
  const one = approvers.filter(({ state }) => state === "stale").length === 1;
  return `The plan has changed since ${names} approved it: ${one ? "this approval no longer covers" : "these approvals no longer cover"} it.`;
}

function waitingSentence(names: string): string {
  return names === "" ? "" : `Waiting for ${names}.`;
}

/** Nobody who was asked may approve the sum: all who may, of whom one will do. */
function missingSentence(approvers: readonly ApproverState[]): string {
  const able = approvers.filter(({ state }) => state === "missing").map(({ name }) => plainName(name));
  if (able.length === 0) return "";
  const who =
    able.length === 1
      ? `${able[0]} may`
      : `${able.slice(0, -1).join(", ")} or ${able.at(-1)} may, one of them`;
  return `Nobody who was asked may approve this sum: ${who}.`;
}

const STANDS: Record<ApproverState["state"], string> = {
  covers: "signed this plan",
  stale: "signed another version",
  pending: "has not decided",
  missing: "may approve the sum, not asked",
  rework: "sent it back",
};

/** Where one approver stands, as it follows their name. */
export function approverStands({ state }: Pick<ApproverState, "state">): string {
  return STANDS[state];
}
