import { formatDate, plainName } from "@leeway/charts";
import type { Finding, Forecast, Plan, Signature } from "@leeway/core";
import { askedSentence, commitSentence } from "./answer.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { findingWords } from "./findingWords.ts";
import { nextLines } from "./nextLines.ts";
import { type Page, wrap } from "./page.ts";
import { nameOf } from "./signNames.ts";

export const caution =
  "This is a record in a file, bound to the plan by its hash. It is no legal signature: your own rules of approval, " +
  "procurement and law come first.";

const DECISIONS: Record<Signature["decision"], string> = {
  approve: "approves",
  "approve-subject-to": "approves, on a condition,",
  rework: "sends back",
};

interface SignAnswer {
  plan: Plan;
  signature: Signature;
  forecast: Forecast;
  /** Findings of severity error that it was signed despite. */
  errors: readonly Finding[];
  dry: boolean;
}

/** What was signed, by whom, and what it says. */
export function signText(
  { plan, signature, forecast, errors, dry }: SignAnswer,
  page: Page,
  planWord: string,
): string {
  const { width, strong } = page;
  const { who, by, decision, conditions, date, accepts } = signature;
  const stamp = { ...forecast, sha256: forecast.plan.sha256 };
  const place = by === undefined || by === who ? "" : `, ${nameOf(plan, by)} in their place,`;
  const said = `${nameOf(plan, who)}${place} ${DECISIONS[decision]} this plan on ${formatDate(date, "long")}.`;
  const blocks = [
    [explanationHead(plainName(plan.title), stamp, page)],
    [
      ...(dry ? ["Nothing was written; this is what would be signed."] : []),
      ...wrap(said, width).map(strong),
      ...(conditions === undefined
        ? []
        : wrap(`Condition${untilWords(signature.conditionsBy)}: ${plainName(conditions)}`, width)),
      ...accepts.flatMap((id) => wrap(`Accepted as it stands: ${objectionText(plan, id)}`, width)),
      ...(decision === "rework" ? [] : errors).flatMap((error) =>
        wrap(`Despite an error that the check finds: ${findingWords(error)}`, width),
      ),
    ],
    [commitSentence(forecast), askedSentence(forecast)].flatMap((text) =>
      text === undefined ? [] : wrap(text, width),
    ),
    wrap(`Bound to plan ${plan.approvalSha256.slice(0, 12)}, progress apart. ${caution}`, width),
    nextLines(
      [[`leeway approvals ${planWord}`, "who has signed, and whether it still covers the plan"]],
      width,
    ),
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}

function objectionText(plan: Plan, id: string): string {
  return `“${plainName(plan.objections.find((one) => one.id === id)?.text ?? id)}”`;
}

function untilWords(day: string | undefined): string {
  return day === undefined ? "" : `, to be met by ${formatDate(day, "weekday")}`;
}
