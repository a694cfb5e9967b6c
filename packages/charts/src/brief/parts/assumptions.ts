import type { Brief, BriefAssumption } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { effectWords } from "../says.ts";
import { first, named, sentence, strong, text } from "../sheet/build.ts";
import type { Line, Room, Section } from "../sheet/types.ts";

/** What the commitment rests on, the most load-bearing first, and how it would be noticed that it fails. */
export function assumptionsSection(brief: Brief, room: Room): Section {
  const { assumptions } = brief;
  return {
    key: "assumptions",
    title: "What it rests on",
    blocks:
      assumptions.length === 0
        ? [text("The plan states no assumption.")]
        : [
            {
              kind: "list",
              items: first(assumptions, room.assumptions, (one) => assumptionLine(brief, one, room)),
            },
          ],
  };
}

export function assumptionLine(brief: Brief, one: BriefAssumption, room: Pick<Room, "name" | "text">): Line {
  const { statement, owner, reviewBy, signpost, ifWrong, chanceWrong, tripped } = one;
  const wrong =
    ifWrong === undefined
      ? "It proved wrong; every figure here counts it."
      : `${formatPercent(chanceWrong)} likely to be wrong: ${effectWords(brief, ifWrong)}.`;
  const watch = [
    owner === undefined ? "no owner is stated" : named(owner.name, room.name),
    reviewBy === undefined ? "no review date" : `review ${formatDate(reviewBy, "short")}`,
  ].join(", ");
  return [
    strong(sentence(statement, room.name + 30)),
    ` ${wrong} `,
    ...(tripped === undefined ? [] : [strong(`Signpost seen on ${formatDate(tripped, "short")}. `)]),
    signpost === undefined ? "No signpost is stated" : `Signpost: ${sentence(signpost, room.text)}`,
    signpost === undefined ? `; ${watch}.` : ` ${watch.charAt(0).toUpperCase()}${watch.slice(1)}.`,
  ];
}
