import {
  approverStands,
  formatDate,
  movedSentence,
  plainName,
  signOffSentence,
  standsSentences,
  statedSum,
} from "@leeway/charts";
import type { ApprovalsState, ApproverState, Comparison, Finding, Forecast, Plan } from "@leeway/core";
import { commitSentence } from "./answer.ts";
import { moveLines } from "./compareMoves.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { findingWords } from "./findingWords.ts";
import { inset } from "./inset.ts";
import { hasMoney } from "./moneyWords.ts";
import { nextLines } from "./nextLines.ts";
import { type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { nameOf } from "./signNames.ts";
import { caution } from "./signText.ts";

export interface ApprovalsAnswer {
  plan: Plan;
  state: ApprovalsState;
  /** Findings of severity error that nobody has accepted. */
  errors: readonly Finding[];
  forecast: Forecast;
  /** Since the version that was signed last; absent where nothing changed, or it was not found. */
  moved: Comparison | undefined;
  /** The signed version was found. */
  found: boolean;
}

/** Who has signed, whether it covers the plan as it is, what moved since, and what stands in the way. */
export function approvalsText(answer: ApprovalsAnswer, page: Page, planWord: string): string {
  const { plan, state, forecast, moved } = answer;
  const { width, strong } = page;
  const stamp = { ...forecast, sha256: forecast.plan.sha256 };
  const blocks = [
    [explanationHead(plainName(plan.title), stamp, page)],
    wrap(signOffSentence(state), width).map(strong),
    state.approvers.length === 0 ? [] : approverLines(state, hasMoney(forecast), width),
    inTheWay(answer, planWord, width),
    wrap(`The plan as it is now: ${commitSentence(forecast)}`, width),
    movedLines(answer, moved, width),
    wrap(caution, width),
    nextLines(nextOf(answer, planWord), width),
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}

function approverLines({ approvers, plan }: ApprovalsState, spends: boolean, width: number): string[] {
  // A limit on money says something only where there is money, or a limit.
  const money = spends || approvers.some(({ limit }) => limit !== undefined);
  const rows = approvers.map((one) => [
    plainName(one.name),
    approverStands(one),
    one.date === undefined ? "" : formatDate(one.date),
    ...(!money
      ? []
      : [
          one.limit === undefined
            ? "no limit named"
            : `${statedSum(one.limit, "").trim()}${one.aboveLimit ? " *" : ""}`,
        ]),
  ]);
  const conditions = approvers.flatMap((one) =>
    one.conditions === undefined
      ? []
      : [`${plainName(one.name)} on condition: ${plainName(one.conditions)}${untilWords(one)}`],
  );
  const starred = approvers.some(({ aboveLimit }) => aboveLimit)
    ? ["* The committed sum lies above what they may approve; somebody who may has to sign as well."]
    : [];
  return [
    ...table(
      [
        { heading: "", align: "left" },
        { heading: "", align: "left" },
        { heading: "on", align: "right" },
        ...(money ? [{ heading: `up to, ${plan.currency}`, align: "right" } as const] : []),
      ],
      rows,
      width,
    ),
    ...[...conditions, ...starred].flatMap((text) => inset(text, width)),
  ];
}

function untilWords({ conditionsBy, conditionsMet, lapsed }: ApproverState): string {
  if (conditionsMet !== undefined) return ` (met on ${formatDate(conditionsMet)})`;
  if (conditionsBy === undefined) return "";
  return lapsed
    ? ` (to be met by ${formatDate(conditionsBy)}: that day has passed)`
    : ` (to be met by ${formatDate(conditionsBy)})`;
}

function inTheWay({ plan, state, errors }: ApprovalsAnswer, planWord: string, width: number): string[] {
  const { open, unexplained } = state;
  const lines = errors.flatMap((error) =>
    wrap(`- An error that the check finds: ${findingWords(error)} [${error.code}]`, width, "  "),
  );
  lines.push(
    ...open.flatMap((id) => {
      const one = plan.objections.find((each) => each.id === id);
      const by = one?.who === undefined ? "" : ` (${nameOf(plan, one.who)})`;
      return wrap(`- Open objection ${id}${by}: “${plainName(one?.text ?? "")}”`, width, "  ");
    }),
  );
  if (unexplained === "no-entry") {
    const text = `- The plan differs from what was signed, and its change log does not say why: leeway change ${planWord} --what … --why … --as … --approved-by …`;
    lines.push(...wrap(text, width, "  "));
  }
  if (unexplained === "no-approver")
    lines.push(...wrap("- The change log says why the plan differs, and not who agreed to it.", width, "  "));
  return lines.length === 0 ? [] : ["What stands in the way", ...lines];
}

function movedLines(
  { state, found }: ApprovalsAnswer,
  moved: Comparison | undefined,
  width: number,
): string[] {
  const signed = state.approvers.some(({ signed: hash }) => hash !== undefined);
  if (!signed) return [];
  if (moved !== undefined) {
    const comparison = plainTexts(moved);
    return [
      "Since the version that was signed last",
      ...wrap(movedSentence(comparison), width),
      ...standsSentences(comparison).flatMap((sentence) => wrap(sentence, width)),
      ...moveLines(comparison, width),
    ];
  }
  if (found) return ["Nothing has changed since it was signed."];
  return wrap(
    "The version that was signed is not beside the plan, so what moved cannot be told; give it with --signed FILE.",
    width,
  );
}

function nextOf({ state, errors }: ApprovalsAnswer, planWord: string): [string, string][] {
  const { overall, open, approvers } = state;
  const next: [string, string][] = [];
  if (errors.length > 0) next.push([`leeway check ${planWord}`, "what is wrong, and what to do about it"]);
  if (open[0] !== undefined)
    next.push([`leeway object ${planWord} --answer ${open[0]} --text …`, "an answer to the objection"]);
  const waits = approvers.find(({ state }) => state !== "covers");
  if (waits !== undefined && overall !== "not-asked")
    next.push([`leeway brief ${planWord} --for ${waits.who}`, "what this approver will ask"]);
  next.push([`leeway brief ${planWord}`, "one page for all of them"]);
  return next;
}
