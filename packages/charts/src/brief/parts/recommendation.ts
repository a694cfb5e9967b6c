import type { Brief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { roundSignificant } from "../../words/roundSignificant.ts";
import { rough, stated, supported } from "../says.ts";
import { first, inLine, named, sentence, strong, text } from "../sheet/build.ts";
import type { Block, Room, Section } from "../sheet/types.ts";

/** Characters of a recommendation that there is always room for. */
const least = 160;

/** What is recommended, what doing nothing costs, and what else there is. */
export function recommendationSection(brief: Brief, room: Room): Section {
  const { recommend, alternatives, levels } = brief.recommendation;
  const others = levels.map(({ p, date, cost }) => {
    const sum = brief.spends ? ` and ${supported(brief, cost)}` : "";
    return `at ${formatPercent(p)}, ${formatDate(date, "short")}${sum}`;
  });
  return {
    key: "recommendation",
    title: "Recommendation and alternatives",
    blocks: [
      text(
        strong("Recommended: "),
        recommend === undefined
          ? "the plan states no recommendation."
          : sentence(recommend, Math.max(room.text, least)),
      ),
      doNothingBlock(brief, room),
      ...(alternatives.length === 0
        ? []
        : [
            {
              kind: "list" as const,
              items: first(alternatives, room.alternatives, ({ name, text: said }) =>
                said === undefined
                  ? [strong(sentence(name, room.name))]
                  : [strong(`${named(name, room.name)}: `), sentence(said, room.text)],
              ),
            },
          ]),
      text(
        strong("Alternatives: "),
        alternatives.length === 0 ? "the plan states no others. " : "",
        others.length === 0 ? "" : `The same plan held ${others.join("; ")}.`,
      ),
    ],
  };
}

function doNothingBlock(brief: Brief, room: Room): Block {
  const { text: said, perMonth, benefits } = brief.recommendation.doNothing;
  const forgone = benefits
    .filter(({ money }) => !money)
    .map(({ amount, unit, per }) => {
      const units = `${groupDigits(roundSignificant(amount, 4))} ${named(unit ?? "units", room.name)}`;
      return per === "once" ? `${units} once` : `${units} a ${per}`;
    });
  const sums = benefits.filter(({ money, per }) => money && per === "once");
  const parts = [
    ...(perMonth === undefined ? [] : [`${rough(brief, perMonth)} a month`]),
    ...sums.map(({ amount }) => `${stated(brief, amount)} once`),
    ...forgone,
  ];
  const costs =
    benefits.length === 0
      ? "no benefit is stated, so the plan cannot say what that forgoes."
      : `forgoes, as written and in full, ${inLine(parts, room.benefits, room.name + 30)}`;
  return text(strong("Doing nothing: "), said === undefined ? "" : `${sentence(said, room.text)} It `, costs);
}
