import type { PreBrief, QuestionKey } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { assumptionLine } from "../parts/assumptions.ts";
import { triggerLine } from "../parts/back.ts";
import { answerLine, commitLine, deadline } from "../parts/decision.ts";
import { driversTable } from "../parts/drivers.ts";
import { responsesSection } from "../parts/responses.ts";
import { scopeSection } from "../parts/scope.ts";
import { benefitBlock } from "../parts/worth.ts";
import { first, sentence, strong, text } from "../sheet/build.ts";
import { roomy } from "../sheet/rooms.ts";
import type { Block, Line } from "../sheet/types.ts";
import { evenAnswer } from "./even.ts";
import { changedAnswer, gapAnswer } from "./gap.ts";
import { cutAnswer, levelAnswer } from "./level.ts";
import { affordAnswer, slipAnswer } from "./money.ts";
import { beforeAnswer, conditionsAnswer, estimatesAnswer, limitWords, peopleAnswer } from "./plain.ts";

/** A question as it is asked, in the figures of this plan. */
export function questionWords({ brief }: PreBrief, key: QuestionKey): string {
  const { committed, asWritten, asked } = brief.commitment;
  const date = formatDate(committed.date, "short");
  switch (key) {
    case "ask":
      return "What are you asking me?";
    case "changed":
      return "What changed since I last saw it?";
    case "level":
      return `Why ${formatPercent(brief.confidence)}?`;
    case "gap":
      return asWritten.finish === committed.date
        ? "Why not earlier?"
        : `The plan says ${formatDate(asWritten.finish, "short")}; why ${date}?`;
    case "earlier":
      return asked.finishBy === undefined && asked.budget === undefined
        ? "What about an even chance?"
        : "What would make what was asked for an even chance?";
    case "cut":
      return "What if we cut the contingency?";
    case "drivers":
      return "What drives it, in working days?";
    case "responses":
      return "What do the responses buy?";
    case "slip":
      return "If it slips, so what?";
    case "afford":
      return "Is it affordable, and when?";
    case "estimates":
      return "Who stands behind the numbers?";
    case "before":
      return "Have you been here before?";
    case "benefit":
      return "What do we get for it?";
    case "scope":
      return "What do we get, and what not?";
    case "people":
      return "Are there people enough?";
    case "assumptions":
      return "What does it rest on?";
    case "conditions":
      return "Are the conditions kept?";
    case "back":
      return "What would make you come back?";
  }
}

/** A pre-brief has no section that a figure could lead to: its questions are answered where they stand. */
function leadingNowhere(line: Line): Line {
  return line.map((span) => (typeof span === "string" ? span : strong(span.strong)));
}

/** Its answer, from the figures of the pre-brief. */
export function answerOf(pre: PreBrief, key: QuestionKey): readonly Block[] {
  const { brief } = pre;
  switch (key) {
    case "ask":
      return [
        brief.decision.ask === undefined
          ? text(leadingNowhere(commitLine(brief, roomy)))
          : text(strong(sentence(brief.decision.ask, roomy.text))),
        text(leadingNowhere(answerLine(brief))),
        text(`${deadline(brief)}${brief.spends ? ` ${limitWords(pre)}` : ""}`),
      ];
    case "changed":
      return changedAnswer(pre);
    case "level":
      return levelAnswer(pre);
    case "gap":
      return gapAnswer(pre);
    case "earlier":
      return evenAnswer(pre);
    case "cut":
      return cutAnswer(pre);
    case "drivers":
      return [driversTable(brief, roomy)];
    case "responses":
      return responsesSection(brief, roomy).blocks;
    case "slip":
      return slipAnswer(pre);
    case "afford":
      return affordAnswer(pre);
    case "estimates":
      return estimatesAnswer(pre);
    case "before":
      return beforeAnswer(pre);
    case "benefit":
      return [benefitBlock(brief)];
    case "scope":
      return scopeSection(brief, roomy).blocks;
    case "people":
      return peopleAnswer(pre);
    case "assumptions":
      return [
        {
          kind: "list",
          items: first(brief.assumptions, roomy.assumptions, (one) => assumptionLine(brief, one, roomy)),
        },
      ];
    case "conditions":
      return conditionsAnswer(pre);
    case "back":
      return [
        {
          kind: "list",
          items: brief.triggers.map((trigger) => [
            ...(trigger.proposed ? ["Proposed: "] : []),
            ...triggerLine(brief, trigger, roomy),
          ]),
        },
      ];
  }
}
