import type { Estimate, Opinion } from "../../plan/types.ts";
import { impliedBy } from "./implied.ts";
import { oneInTen } from "./opinionFrom.ts";
import { INTERVIEW_ORDER, interviewQuestion } from "./questions.ts";
import { readNumber } from "./readNumber.ts";
import type { Interview, InterviewKey, InterviewSubject } from "./types.ts";

/** An interview at its first question. Dates and people are handed in; nothing here asks, prints or waits. */
export function beginInterview(subject: InterviewSubject): Interview {
  return { subject, answers: {}, order: [], question: interviewQuestion("basis", subject) };
}

/**
 * The interview after an answer: at its next question, or at the same one with the reason in `again`. Answers that are
 * out of order (low <= likely <= high) are explained and asked again; `back` goes to the question before; once all is
 * answered, what the answers imply is read back, and `yes` ends it. One that is done stays as it is.
 */
export function answerInterview(interview: Interview, answer: string): Interview {
  const { question } = interview;
  if (question === undefined) return interview;
  const text = answer.trim();
  if (question.key === "confirm") return confirmed(interview, text);
  if (/^back$/i.test(text)) {
    const before = INTERVIEW_ORDER[INTERVIEW_ORDER.indexOf(question.key) - 1] ?? "basis";
    return asking(interview, before);
  }
  const taken = take(interview, question.key, text);
  return "why" in taken ? asking(interview, question.key, taken.why) : next(taken);
}

function asking(interview: Interview, key: InterviewKey | "confirm", again?: string): Interview {
  const { again: _again, implied: _implied, ...rest } = interview;
  return {
    ...rest,
    question: interviewQuestion(key, interview.subject),
    ...(again === undefined ? {} : { again }),
  };
}

/** The next thing without an answer, or reading it all back. */
function next(interview: Interview): Interview {
  const { answers, order } = interview;
  const open = INTERVIEW_ORDER.find((key) => answers[key] === undefined && !order.includes(key));
  if (open !== undefined) return asking(interview, open);
  const estimate = estimateOf(interview);
  if (estimate === undefined) return asking(interview, "high"); // every value is there once its question is answered
  return { ...asking(interview, "confirm"), implied: impliedBy(estimate) };
}

function take(interview: Interview, key: InterviewKey, text: string): Interview | { why: string } {
  const order = [...interview.order, key];
  if (key === "basis" || key === "dissent") {
    if (key === "basis" && text === "") return { why: "Somebody will ask. One sentence is enough." };
    const { [key]: _before, ...answers } = interview.answers;
    return { ...interview, order, answers: text === "" ? answers : { ...answers, [key]: text } };
  }
  const read = readNumber(text, interview.subject.unit);
  if ("why" in read) return read;
  const answers = { ...interview.answers, [key]: read.value };
  const why = outOfOrder(answers, key);
  return why === undefined ? { ...interview, order, answers } : { why };
}

function outOfOrder({ low, likely, high }: Interview["answers"], key: InterviewKey): string | undefined {
  const back = "Answer again, or write back to correct the one before.";
  if (low !== undefined && high !== undefined && low > high) {
    return key === "low"
      ? `${low} is above ${high}, which it exceeds only one time in ten. ${back}`
      : `${high} is below ${low}, which it stays below only one time in ten. ${back}`;
  }
  if (likely === undefined) return undefined;
  if (low !== undefined && likely < low)
    return `${likely} is likely and ${low} is the low end: the likely value lies between the ends. ${back}`;
  if (high !== undefined && likely > high)
    return `${likely} is likely and ${high} is the high end: the likely value lies between the ends. ${back}`;
  return undefined;
}

function estimateOf({ answers, subject }: Interview): Estimate | undefined {
  const { low, likely, high } = answers;
  if (low === undefined || likely === undefined || high === undefined) return undefined;
  return oneInTen(low, likely, high, subject.unit);
}

function confirmed(interview: Interview, text: string): Interview {
  const key = INTERVIEW_ORDER.find((each) => each === text.toLowerCase());
  if (key !== undefined) return asking(interview, key);
  const estimate = estimateOf(interview);
  if (!/^(y|yes)$/i.test(text) || estimate === undefined) {
    const why = /^(n|no)$/i.test(text)
      ? "Which one is to be corrected?"
      : "That was neither yes nor one of them.";
    return { ...interview, again: why };
  }
  const { subject, answers, order } = interview;
  const opinion: Opinion = { by: subject.by, date: subject.date, of: subject.of, estimate };
  if (answers.basis !== undefined) opinion.basis = answers.basis;
  opinion.order = [...order];
  if (answers.dissent !== undefined) opinion.dissent = answers.dissent;
  const { question: _question, again: _again, ...rest } = interview;
  return { ...rest, opinion };
}
