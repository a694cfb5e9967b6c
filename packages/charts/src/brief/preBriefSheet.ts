import type { PreBrief } from "@leeway/core";
import { formatDate } from "../words/formatDate.ts";
import { plainName } from "../words/plainName.ts";
import { answerOf, questionWords } from "./answers/answerOf.ts";
import { expectedLines } from "./answers/expected.ts";
import { objectionLine } from "./parts/objections.ts";
import { standingWords } from "./parts/outcome.ts";
import { runSection } from "./parts/run.ts";
import { who } from "./says.ts";
import { sentence, strong, text } from "./sheet/build.ts";
import { roomy } from "./sheet/rooms.ts";
import type { Block, Section, Sheet } from "./sheet/types.ts";

/** Questions that are answered; the brief has the rest. */
const most = 12;

/** What one approver is told before the meeting, in words: who they are to the plan, their questions, their objections. */
export function preBriefSheet(pre: PreBrief): Sheet {
  const { brief, approver, questions } = pre;
  return {
    title: plainName(brief.plan.title, 120),
    head: `Pre-brief for ${who(approver, 80)} · ${formatDate(brief.today, "short")}`,
    sections: [
      { key: "approver", title: "Who it is for", blocks: [approverBlock(pre)] },
      ...kept(questions).map(
        ({ key }): Section => ({
          key: "questions",
          title: questionWords(pre, key),
          blocks: answerOf(pre, key),
        }),
      ),
      raisedSection(pre),
      {
        key: "expected",
        title: "What is said of nearly every such plan",
        blocks: [{ kind: "list", items: expectedLines(pre) }],
      },
      runSection(brief),
    ],
  };
}

/** The likeliest, and always the last, which is what brings the plan back. */
function kept(questions: PreBrief["questions"]): PreBrief["questions"] {
  return questions.length <= most ? questions : [...questions.slice(0, most - 1), ...questions.slice(-1)];
}

function approverBlock({ brief, approver, questions }: PreBrief): Block {
  const { interest, looksFor, stance } = approver;
  const because = [...new Set(questions.flatMap((question) => question.because ?? []))];
  const stands = { supports: "supports it", neutral: "is neutral", resists: "resists it" };
  const state = standingWords(brief, approver, roomy);
  return text(
    strong("Looks after: "),
    interest === undefined ? "no interest is stated. " : `${sentence(interest, 200)} `,
    ...(looksFor === undefined ? [] : [strong("Note: "), `${sentence(looksFor, 240)} `]),
    ...(stance === undefined ? [] : [strong("Stance: "), `${stands[stance]}. `]),
    strong("Decision: "),
    `${state}. `,
    because.length === 0
      ? "Their role and interest bring no question forward; these are the usual ones."
      : `The questions come in this order because of ${because.map((word) => `“${plainName(word, 40)}”`).join(", ")}.`,
  );
}

function raisedSection({ objections, approver }: PreBrief): Section {
  const name = plainName(approver.name, 60);
  return {
    key: "raised",
    title: `What ${name} has objected`,
    blocks:
      objections.length === 0
        ? [text("Nothing is recorded.")]
        : [{ kind: "list", items: objections.map((one) => objectionLine(one, { name: 80, text: 500 })) }],
  };
}
