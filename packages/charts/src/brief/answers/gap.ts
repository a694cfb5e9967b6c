import type { PreBrief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { plainName } from "../../words/plainName.ts";
import { dayColumn, moneyColumn } from "../parts/drivers.ts";
import { chanceWords } from "../says.ts";
import { text } from "../sheet/build.ts";
import type { Block } from "../sheet/types.ts";

/** From the plan as written to the commitment, step by step. */
export function gapAnswer({ brief, figures }: PreBrief): Block[] {
  const { asWritten, committed } = brief.commitment;
  const opening = `Everything would have to go its written way for ${formatDate(asWritten.finish, "short")}: it holds ${chanceWords(asWritten.finishChance)}.`;
  const { walk } = figures;
  if (walk.length === 0) return [text(opening)];
  const days = dayColumn(walk.map(({ workingDays }) => workingDays));
  const sums = moneyColumn(
    brief,
    walk.map(({ money }) => money),
  );
  const end = (name: string) => ({ text: name, align: "end" as const });
  const cells = (at: number) => [days[at] ?? "", ...(brief.spends ? [sums[at] ?? ""] : [])];
  return [
    text(opening),
    {
      kind: "table",
      caption: `From the plan as written to ${formatDate(committed.date, "short")}; each step is added to those above it`,
      head: [
        { text: "Step", align: "start" },
        end("working days"),
        ...(brief.spends ? [end(brief.plan.currency)] : []),
      ],
      rows: [
        ...walk.map(({ step }, at) => ({ cells: [plainName(step, 90), ...cells(at)] })),
        {
          cells: [`To what holds ${formatPercent(brief.confidence)}`, ...cells(walk.length)],
          whole: true,
        },
      ],
    },
  ];
}

/** Against the version seen before: from, to, and the largest moves. */
export function changedAnswer({ brief, figures }: PreBrief): Block[] {
  const { comparison } = figures;
  if (comparison === undefined) return [text("No earlier version was given to compare with.")];
  const { from, to, moves, alsoChanged } = comparison;
  const money = brief.spends;
  const days = dayColumn(moves.map(({ workingDays }) => workingDays));
  const sums = moneyColumn(
    brief,
    moves.map(({ money: sum }) => sum),
  );
  const end = (name: string) => ({ text: name, align: "end" as const });
  const shown = 6;
  const told = moves.slice(0, shown);
  return [
    text(
      `At ${formatPercent(comparison.confidence)} the date went from ${formatDate(from.date, "weekday")} to ${formatDate(to.date, "weekday")}.`,
    ),
    ...(moves.length === 0
      ? [text("Nothing that moves date or sum was changed.")]
      : [
          {
            kind: "table" as const,
            caption: "What moved it; all moves add up to the difference",
            head: [
              { text: "Change", align: "start" as const },
              end("working days"),
              ...(money ? [end(brief.plan.currency)] : []),
            ],
            rows: [
              ...told.map(({ what }, at) => ({
                cells: [plainName(what, 120), days[at] ?? "", ...(money ? [sums[at] ?? ""] : [])],
              })),
              {
                cells: [
                  moves.length > shown
                    ? `The whole, with ${moves.length - shown} smaller moves`
                    : "The whole",
                  days[moves.length] ?? "",
                  ...(money ? [sums[moves.length] ?? ""] : []),
                ],
                whole: true,
              },
            ],
          },
        ]),
    ...(alsoChanged.length === 0
      ? []
      : [text(`Changed besides, moving neither date nor sum: ${alsoChanged.length}.`)]),
  ];
}
