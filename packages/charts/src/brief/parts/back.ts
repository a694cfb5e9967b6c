import type { Brief, BriefTrigger } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { stated, supported } from "../says.ts";
import { first, named, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section } from "../sheet/types.ts";

/** What brings the plan back to its approvers: agreed on, or proposed here and marked so. */
export function backSection(brief: Brief, room: Room): Section {
  const { triggers } = brief;
  const met = triggers.filter(({ already }) => already === true);
  const proposed = triggers.length > 0 && triggers.every((trigger) => trigger.proposed);
  return {
    key: "back",
    title: proposed ? "We come back to you when (proposed)" : "We come back to you when",
    blocks: [
      triggers.length === 0
        ? text("Nothing is agreed on.")
        : {
            kind: "list",
            // What is met already is not to be among those left out.
            items: first(
              [...met, ...triggers.filter((each) => !met.includes(each))],
              room.triggers,
              (trigger) => triggerLine(brief, trigger, room),
            ),
          },
    ],
  };
}

/** The condition under its name, and whether it is met as things stand. In short: without the name. */
export function triggerLine(
  brief: Brief,
  trigger: BriefTrigger,
  room: Pick<Room, "name" | "text" | "unnamed">,
): Line {
  const condition = conditionWords(brief, trigger, room);
  const words =
    trigger.name === undefined || room.unnamed === true
      ? condition
      : `${named(trigger.name, room.name).replace(/\.$/, "")}: ${condition}`;
  if (trigger.already !== true) return [words];
  const since = trigger.signpost === undefined ? "already so at this forecast" : "already so";
  return [`${words} (`, strong(since), ")"];
}

function conditionWords(brief: Brief, trigger: BriefTrigger, room: Pick<Room, "name" | "text">): string {
  const { committed } = brief.commitment;
  if (trigger.chanceOfDateBelow !== undefined)
    return `the chance of finishing by ${formatDate(committed.date, "short")}, the date you sign, falls below ${formatPercent(trigger.chanceOfDateBelow)}`;
  if (trigger.chanceOfBudgetBelow !== undefined)
    return `the chance of keeping within ${supported(brief, committed.cost)}, the sum you sign, falls below ${formatPercent(trigger.chanceOfBudgetBelow)}`;
  if (trigger.contingencyCoverBelow !== undefined)
    return trigger.contingencyCoverBelow === 1
      ? "the contingency left no longer covers what is still uncertain"
      : `the contingency left covers less than ${formatPercent(trigger.contingencyCoverBelow)} of what is still uncertain`;
  if (trigger.finishLaterThan !== undefined)
    return `the committed date is later than ${formatDate(trigger.finishLaterThan, "short")}`;
  if (trigger.costAbove !== undefined)
    return `the committed sum is above ${stated(brief, trigger.costAbove)}`;
  const { signpost } = trigger;
  if (signpost === undefined) return "its condition is met";
  return signpost.text === undefined
    ? `“${named(signpost.statement, room.name)}” no longer holds`
    : `this is seen: ${sentence(signpost.text, room.text)}`.replace(/\.$/, "");
}
