import type { PreBrief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { plainName } from "../../words/plainName.ts";
import { chanceWords, stated, supported } from "../says.ts";
import { first, strong, text } from "../sheet/build.ts";
import type { Block } from "../sheet/types.ts";

/** Steps that are told; the rest add less than any of them. */
const most = 5;

/** What would make the asked date and sum an even chance; and the date at an even chance. */
export function evenAnswer({ brief, figures }: PreBrief): Block[] {
  const half = figures.steps.find(({ p }) => p === 0.5);
  const at =
    half === undefined
      ? []
      : [
          text(
            `Half of the futures finish by ${formatDate(half.date, "weekday")}${
              brief.spends ? `, and half cost no more than ${supported(brief, half.cost)}` : ""
            }.`,
          ),
        ];
  const { even } = figures;
  if (even === undefined)
    return [...at, text("The plan asks for no date and no sum, so there is nothing earlier to reach for.")];
  const { finishBy, sum } = even.asked;
  const asked = [
    ...(finishBy === undefined ? [] : [formatDate(finishBy, "short")]),
    ...(sum === undefined ? [] : [stated(brief, sum)]),
  ].join(" and ");
  if (even.answer === "already")
    return [...at, text(`${asked} already holds ${chanceWords(even.chance)}: nothing more is needed.`)];
  const way = even.ways[0] ?? even.best;
  if (way === undefined || way.steps.length === 0)
    return [
      ...at,
      text(
        `Nothing that can be decided in this plan moves ${asked}, which holds ${chanceWords(even.chance)}.`,
      ),
    ];
  const opening =
    even.answer === "ways"
      ? `${asked} becomes an even chance with these, the first adding most:`
      : `Nothing makes ${asked} an even chance. All that can be decided brings it from ${chanceWords(even.chance)} to ${chanceWords(way.chance)}:`;
  return [
    ...at,
    text(opening),
    {
      kind: "list",
      items: first(
        way.steps,
        most,
        ({ name, cost, chance, lost, kind }) => [
          strong(plainName(name, 90).replace(/\.$/, "")),
          `${kind === "scope" ? " (left out)" : ""}${cost > 0 ? `, ${stated(brief, cost)}` : ""}: then ${chanceWords(chance)}.`,
          ...(lost === undefined ? [] : [` Lost: ${plainName(lost, 160)}`]),
        ],
        "more, each adding less",
      ),
    },
  ];
}
