import type { Brief } from "@leeway/core";
import { holdsWords } from "../../sentences/holdsWords.ts";
import { formatDate } from "../../words/formatDate.ts";
import { plainName } from "../../words/plainName.ts";
import { chanceWords, supported } from "../says.ts";
import { quiet, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section } from "../sheet/types.ts";

/** Characters of a request: it is never cut for want of room, only for being no sentence any more. */
const most = 240;

/** What is asked, in one sentence: decision, sum, date, by when; then the answer of the forecast. */
export function decisionSection(brief: Brief, room: Room): Section {
  const { decision } = brief;
  const made = decision.ask === undefined;
  return {
    key: "decision",
    title: "What you are asked to decide",
    blocks: [
      text(strong(made ? commitWords(brief, room) : sentence(decision.ask ?? "", most))),
      text(made ? holdsLine(brief) : answerLine(brief)),
      ...(brief.scenario === undefined ? [] : [text(strong(scenarioWords(brief.scenario)))]),
      quiet(
        `${deadline(brief)}${made ? " The plan states no decision: this one is made from its commitment." : ""}`,
      ),
    ],
  };
}

/** The commitment as a request. */
export function commitWords(brief: Brief, room: Room): string {
  const { finishOf, date, cost } = brief.decision;
  const what = finishOf === undefined ? "finishing" : `“${plainName(finishOf.name, room.name)}”`;
  const sum = brief.spends ? `, for ${supported(brief, cost)}` : "";
  return `Approve committing to ${what} by ${formatDate(date, "long")}${sum}.`;
}

/** By when it has to be decided. */
export function deadline({ decision, plan, today }: Brief): string {
  return decision.by === undefined
    ? `No day for the decision is stated; work begins ${formatDate(plan.start, "weekday")}.`
    : `Decide by ${formatDate(decision.by, "weekday")}.${today > decision.by ? " That day has passed." : ""}`;
}

/** A page on the table says when it is not about the plan as it stands. */
function scenarioWords({ with: taken, without: left }: NonNullable<Brief["scenario"]>): string {
  const parts = [
    ...(taken === undefined ? [] : [`with ${taken.join(", ")}`]),
    ...(left === undefined ? [] : [`without ${left.join(", ")}`]),
  ];
  return `What if: ${parts.join("; ")}.`;
}

/** How often what is asked holds, where the request itself says date and sum. */
function holdsLine(brief: Brief): Line {
  const words = holds(brief);
  return [`${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`];
}

/** Date and sum at the level, how often each holds, and both. */
export function answerLine(brief: Brief): Line {
  const { committed } = brief.commitment;
  const date = strong(formatDate(committed.date, "long"));
  if (!brief.spends) return [date, `: ${holds(brief)}.`];
  return [date, " and ", strong(supported(brief, committed.cost)), `: ${holds(brief)}.`];
}

function holds({ commitment, spends }: Brief): string {
  const { committed, certain } = commitment;
  return holdsWords({
    each: chanceWords(committed.confidence),
    both: chanceWords(committed.both),
    date: certain?.date === true,
    sum: certain?.sum === true,
    money: spends,
  });
}
