import type { Brief } from "@leeway/core";
import { holdsWords } from "../../sentences/holdsWords.ts";
import { formatDate } from "../../words/formatDate.ts";
import { chanceWords, supported } from "../says.ts";
import { named, quiet, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section, Span } from "../sheet/types.ts";

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
      made ? text(commitLine(brief, room)) : text(strong(sentence(decision.ask ?? "", most))),
      text(made ? holdsLine(brief) : answerLine(brief)),
      ...(brief.scenario === undefined ? [] : [text(strong(scenarioWords(brief.scenario)))]),
      quiet(
        `${deadline(brief)}${made ? " The plan states no decision: this one is made from its commitment." : ""}`,
      ),
    ],
  };
}

/** The commitment as a request; date and sum lead to where they are explained. */
export function commitLine(brief: Brief, room: Room): Line {
  const { finishOf, date, cost } = brief.decision;
  const what = finishOf === undefined ? "finishing" : `“${named(finishOf.name, room.name)}”`;
  return [
    strong(`Approve committing to ${what} by `),
    explained(formatDate(date, "long")),
    ...(brief.spends ? [strong(", for "), explained(supported(brief, cost))] : []),
    strong("."),
  ];
}

/** A figure that stands in the commitment beside its limits, its chance and the futures it is read from. */
function explained(figure: string): Span {
  return strong(figure, "commitment");
}

/** By when it has to be decided. */
export function deadline({ decision, plan, today }: Brief): string {
  return decision.by === undefined
    ? `No day for the decision is stated; the plan starts ${formatDate(plan.start, "weekday")}.`
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
  const date = explained(formatDate(committed.date, "long"));
  if (!brief.spends) return [date, `: ${holds(brief)}.`];
  return [date, " and ", explained(supported(brief, committed.cost)), `: ${holds(brief)}.`];
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
