import type { InterviewKey, InterviewQuestion, InterviewSubject } from "./types.ts";

/**
 * The order in which an estimate is asked for. The extremes come before the middle: who names a likely value first
 * adjusts away from it too little (Tversky & Kahneman 1974, Science 185, 1124-1131, recalled). The basis comes first,
 * so that a figure is given by somebody who has just thought of where it would come from (common practice, no source).
 */
export const INTERVIEW_ORDER = ["basis", "high", "low", "likely", "dissent"] as const;

/**
 * The words of one question.
 *
 * High and low are two one-sided questions about one chance in ten each and never "between what and what, surely":
 * ranges asked for as a whole are much too narrow for the certainty claimed, separate "more than" and "less than"
 * questions give wider ones. Source: Teigen & Jorgensen 2005, "When 90 % confidence intervals are 50 % certain: on the
 * credibility of credible intervals", Applied Cognitive Psychology 19, 455-475, doi 10.1002/acp.1085 (abstract).
 * "One time in ten" rather than "at the most": a maximum has no chance that could be checked later.
 */
export function interviewQuestion(
  key: InterviewKey | "confirm",
  { name, of, unitWords, events, holds }: InterviewSubject,
): InterviewQuestion {
  const what = of === "cost" ? `What would “${name}” cost` : `How long would “${name}” take`;
  const number = `A number of ${unitWords}.`;
  switch (key) {
    case "basis":
      return {
        key,
        text: `Why would you know about “${name}”? What have you seen or done that is like it?`,
        help: "A sentence: who reads it later should see what the figures rest on.",
      };
    case "high":
      return {
        key,
        text:
          `Think of ten pieces of work like “${name}”.${setAside(events, holds)} ` +
          `Which ${unitOf(unitWords)} would only one of the ten exceed?`,
        help: `${number} Not the worst that could ever happen: one time in ten it would be more.`,
      };
    case "low":
      return {
        key,
        text: `Now the other end. Which ${unitOf(unitWords)} would only one of the ten stay below?`,
        help: `${number} One time in ten it would be less.`,
      };
    case "likely":
      return {
        key,
        text: `${what}, most likely?`,
        help: `${number} The value you would see more often than any other.`,
      };
    case "dissent":
      return {
        key,
        text: "Is there anything about this work, or how it is planned, that you do not agree with?",
        help: "A sentence, or nothing.",
      };
    case "confirm":
      return {
        key,
        text: "Is that what you mean?",
        help: "yes, or what to correct: basis, high, low, likely, dissent.",
      };
  }
}

function unitOf(unitWords: string): string {
  return /^[A-Z]{3}$/.test(unitWords) ? `sum in ${unitWords}` : `number of ${unitWords}`;
}

/** What the register counts on its own has its own chance and its own days: it is not to be counted a second time. */
function setAside(events: readonly string[], holds: readonly string[]): string {
  const list = (names: readonly string[]) =>
    names.map((name) => `“${name.replace(/[.\s]+$/, "")}”`).join(", ");
  const happens = events.length === 0 ? "" : ` none of this happens: ${list(events)}`;
  const kept = holds.length === 0 ? "" : ` this holds: ${list(holds)}`;
  const both = [happens, kept].filter((part) => part !== "").join(", and that");
  return both === "" ? "" : ` Suppose that${both}; the register counts that on its own.`;
}
