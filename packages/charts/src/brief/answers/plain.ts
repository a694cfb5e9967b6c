import type { PreBrief } from "@leeway/core";
import { formatDays } from "../../words/formatDays.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { plainName } from "../../words/plainName.ts";
import { rough, stated, supported } from "../says.ts";
import { sentence, text } from "../sheet/build.ts";
import type { Block } from "../sheet/types.ts";

/** Who said so, and why they would know. */
export function estimatesAnswer({ figures }: PreBrief): Block[] {
  const { uncertain, withEstimator, withBasis, largest } = figures.estimates;
  if (uncertain === 0) return [text("No duration in the plan is uncertain.")];
  return [
    text(
      `Of ${groupDigits(uncertain)} uncertain ${uncertain === 1 ? "estimate" : "estimates"} ${withEstimator} say who made them and ${withBasis} why that person would know.`,
    ),
    ...(largest.length === 0
      ? []
      : [
          text("Those that weigh most:"),
          {
            kind: "list" as const,
            items: largest.map(({ name, by, basis }) => [
              `${plainName(name, 80)}: `,
              `${by.length === 0 ? "nobody is named" : by.map((one) => plainName(one.name, 60)).join(", ")}; `,
              basis === undefined ? "no basis is stated." : sentence(basis, 160),
            ]),
          },
        ]),
  ];
}

/** Experience: only what the plan holds of it. */
export function beforeAnswer({ figures }: PreBrief): Block[] {
  const done =
    figures.finished === 0
      ? "No task is finished yet, so no estimate has been tested by what happened."
      : `${figures.finished} ${figures.finished === 1 ? "task is" : "tasks are"} finished and counted as they went.`;
  return [text(`The plan names no comparable past project: nothing here is checked against one. ${done}`)];
}

/** What limited people do to the commitment. */
export function peopleAnswer({ brief }: PreBrief): Block[] {
  const { people } = brief.commitment;
  if (people === undefined) return [text("People are not limited in this plan.")];
  const sum = brief.spends ? ` and ${rough(brief, people.money)}` : "";
  return [
    text(
      `People are kept within what there is of them. Waiting for each other accounts for ${formatDays(people.workingDays)}${sum} of the commitment.`,
    ),
  ];
}

/** What may not be changed. */
export function conditionsAnswer({ brief }: PreBrief): Block[] {
  const { constraints } = brief.scope;
  if (constraints.length === 0) return [text("The plan states no constraint.")];
  return [
    text("The plan states these, and they bind every figure only where a task, a date or a sum holds them:"),
    { kind: "list", items: constraints.map((each) => [sentence(each, 240)]) },
  ];
}

/** The sum against what this person may approve. */
export function limitWords({ brief, approver }: PreBrief): string {
  const { approvesUpTo, covers } = approver;
  if (approvesUpTo === undefined) return "The plan states no limit to what you may approve.";
  const sum = supported(brief, brief.commitment.committed.cost);
  return covers === true
    ? `You may approve up to ${stated(brief, approvesUpTo)}; ${sum} is within it.`
    : `You may approve up to ${stated(brief, approvesUpTo)}; ${sum} is above it, so somebody with a higher limit has to approve as well.`;
}
