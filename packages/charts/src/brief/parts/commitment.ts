import type { Brief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatDays } from "../../words/formatDays.ts";
import { formatMoney } from "../../words/formatMoney.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { roundToLimits } from "../../words/roundToLimits.ts";
import { chanceWords, monthWords, stated, supported, who } from "../says.ts";
import { sentence, strong, text } from "../sheet/build.ts";
import type { Block, Room, Row, Section } from "../sheet/types.ts";

/** Committed, asked for and as written side by side; contingency with its holder; the reserve apart. */
export function commitmentSection(brief: Brief, room: Room): Section {
  return {
    key: "commitment",
    title: "The commitment, what was asked for, and the plan as written",
    blocks: [standings(brief), ...jointBlocks(brief), contingencyBlock(brief, room), ...fundsBlocks(brief)],
  };
}

/** Of a date or a sum that somebody named: it was not worked out, so sampling puts no limits to it. */
const given = "as given";

function standings(brief: Brief): Block {
  const { committed, asWritten, asked, chance } = brief.commitment;
  const money = brief.spends;
  const row = (name: string, date: readonly string[], sum: readonly string[]): Row => ({
    cells: [name, ...date, ...(money ? sum : [])],
  });
  const rows = [
    row(
      "Commit to",
      [
        formatDate(committed.date, "weekday"),
        chanceWords(committed.confidence),
        span(formatDate(committed.lowDate, "shortest"), formatDate(committed.highDate, "shortest")),
      ],
      [
        supported(brief, committed.cost),
        chanceWords(committed.confidence),
        span(limit(brief, committed.costLow), limit(brief, committed.costHigh)),
      ],
    ),
    ...(asked.finishBy === undefined && asked.budget === undefined
      ? []
      : [
          row(
            "Asked for",
            asked.finishBy === undefined || chance.finishBy === undefined
              ? ["no date", "", ""]
              : [formatDate(asked.finishBy, "weekday"), chanceWords(chance.finishBy), given],
            asked.budget === undefined || chance.budget === undefined
              ? ["no sum", "", ""]
              : [stated(brief, asked.budget), chanceWords(chance.budget), given],
          ),
        ]),
    row(
      "As written",
      [formatDate(asWritten.finish, "weekday"), chanceWords(asWritten.finishChance), ""],
      [stated(brief, asWritten.cost), chanceWords(asWritten.costChance), ""],
    ),
  ];
  const end = (name: string) => ({ text: name, align: "end" as const });
  const start = (name: string) => ({ text: name, align: "start" as const });
  return {
    kind: "table",
    caption: `Dates${money ? " and sums" : ""} with their chances`,
    head: [
      start("What"),
      start("Finish by"),
      start("Holds"),
      start("95 % limits"),
      ...(money ? [end("Sum"), start("Holds"), start("95 % limits")] : []),
    ],
    rows,
  };
}

function limit(brief: Brief, value: number): string {
  const { costLow, costHigh } = brief.commitment.committed;
  return formatMoney(roundToLimits(value, costLow, costHigh), "");
}

function span(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`;
}

function jointBlocks(brief: Brief): Block[] {
  const { chance, together } = brief.commitment;
  const none = "The plan asks for no date and no sum. ";
  const askedFor =
    chance.both !== undefined
      ? `Asked date and sum both hold ${chanceWords(chance.both)}. `
      : chance.finishBy === undefined && chance.budget === undefined
        ? none
        : "";
  if (!brief.spends) return askedFor === "" ? [] : [text(askedFor)];
  return [
    text(
      askedFor,
      `For both to hold ${chanceWords(together.joint)}: ${formatDate(together.date, "weekday")} and ${supported(brief, together.cost)}.`,
    ),
  ];
}

function contingencyBlock(brief: Brief, room: Room): Block {
  const { contingency, holder, releaseRule, reserve } = brief.commitment;
  const sum = brief.spends ? ` and ${supported(brief, contingency.money)}` : "";
  const days = `${formatDays(contingency.workingDays)} (${formatDays(contingency.calendarDays, "calendar day")})${sum}`;
  const held = holder === undefined ? "; no holder is stated" : `, held by ${who(holder, room.name)}`;
  const rule = releaseRule === undefined ? "" : ` Release: ${sentence(releaseRule, room.text)}`;
  return text(
    strong("Contingency: "),
    `${days} above the plan as written${held}.${rule} `,
    ...(brief.spends
      ? [
          strong("Reserve: "),
          reserve === undefined
            ? "none is stated."
            : `${stated(brief, reserve)}, apart; no figure here spends it.`,
        ]
      : []),
  );
}

function fundsBlocks(brief: Brief): Block[] {
  const { firstShortfall } = brief.commitment;
  if (firstShortfall === undefined) return [];
  const { month, chanceCovered } = firstShortfall;
  return [
    text(
      strong("Money released "),
      `first falls short of ${formatPercent(brief.confidence)} in ${monthWords(month)}: it covers the cost to then ${chanceWords(chanceCovered)}.`,
    ),
  ];
}
