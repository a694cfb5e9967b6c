import type { Brief, BriefResponse } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatDays } from "../../words/formatDays.ts";
import { rough, stated } from "../says.ts";
import { first, named, strong, text } from "../sheet/build.ts";
import type { Block, Line, Room, Section, Span } from "../sheet/types.ts";

/** What was bought against risks and what it buys, and what is worth buying next. */
export function responsesSection(brief: Brief, room: Room): Section {
  const { adopted, worthBuying, others } = brief.responses;
  const tell = (response: BriefResponse) => responseLine(brief, response, room);
  const none = adopted.length + worthBuying.length + others.length === 0;
  const list = (all: readonly BriefResponse[]): Block => ({
    kind: "list",
    items: first(all, room.responses, tell, restWords(brief, all.slice(room.responses))),
  });
  const heading = (title: string, all: readonly BriefResponse[]): Block[] =>
    all.length === 0 ? [] : [text(strong(title)), list(all)];
  return {
    key: "responses",
    title: "Responses",
    blocks: none
      ? [text("The plan states no response to a risk or an assumption.")]
      : [
          ...heading("Bought", adopted),
          ...(worthBuying.length === 0
            ? [text(...unbought(adopted), strong("Worth buying: "), nothingPays(brief))]
            : [
                text(...unbought(adopted), strong("Worth buying"), ", saving more than they cost:"),
                list(worthBuying),
              ]),
          ...(others.length === 0 || worthBuying.length === 0
            ? []
            : [
                text(
                  `${others.length} more ${others.length === 1 ? "costs as much as it saves" : "cost as much as they save"}, or more.`,
                ),
              ]),
        ],
  };
}

/** "more, EUR 2,900 together": what each of them buys cannot be added up. */
function restWords(brief: Brief, left: readonly BriefResponse[]): string {
  const sum = left.reduce((total, { cost }) => total + cost, 0);
  if (sum === 0 && !brief.spends) return "more";
  return `more, ${stated(brief, sum)}${left.length === 1 ? "" : " together"}`;
}

function unbought(adopted: readonly BriefResponse[]): Span[] {
  return adopted.length === 0 ? [strong("Bought: "), "none yet. "] : [];
}

function nothingPays(brief: Brief): string {
  const { responses } = brief;
  const { others } = responses;
  return others.length === 0
    ? "every response stated is bought."
    : !brief.spends && others.every(free)
      ? `the plan has no costs, so none of ${others.length} left can be weighed by what it saves.`
      : `none of ${others.length} left saves more than it costs${responses.latenessCounted ? "" : "; what being late costs is not stated and not counted"}.`;
}

/** "Hire an inspector: EUR 1,500 buys 3.9 working days; net +EUR 4,200. Ines Calloway, by 5 Mar 2027." */
export function responseLine(brief: Brief, response: BriefResponse, room: Pick<Room, "name">): Line {
  const { action, cost, given, owner, due } = response;
  const days = -given.workingDays;
  const buys =
    Math.abs(days) < 0.05
      ? "moves the committed date by less than a tenth of a day"
      : `${days > 0 ? "buys" : "costs"} ${formatDays(Math.abs(days))}`;
  const by = [
    owner === undefined ? undefined : named(owner.name, room.name),
    due === undefined ? undefined : `by ${formatDate(due, "short")}`,
  ].filter((each) => each !== undefined);
  return [
    strong(named(action, room.name).replace(/\.$/, "")),
    !brief.spends && free(response)
      ? `: ${buys}.`
      : `: ${stated(brief, cost)} ${buys}, net ${rough(brief, given.netWorth, true)}.`,
    by.length === 0 ? " No owner is stated." : ` ${by.join(", ")}.`,
  ];
}

/** It costs nothing, and nothing is saved by it. */
function free({ cost, given }: BriefResponse): boolean {
  return cost === 0 && given.netWorth === 0;
}
