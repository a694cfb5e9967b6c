import type { Estimate, Opinion } from "../../plan/types.ts";
import type { AnswerUnit } from "../askable.ts";
import { readNumber } from "./readNumber.ts";
import type { InterviewKey, InterviewSubject } from "./types.ts";

/** Answers as they were written down, all at once. */
export type WrittenAnswers = { [K in InterviewKey]?: string };

/** What is wrong with one answer. */
export interface AnswerFault {
  key: InterviewKey;
  /** What came. */
  received: string;
  why: string;
}

/**
 * The opinion in answers that were written down elsewhere, by the rules of the interview; or everything that is wrong
 * with them. In which order they were given is not known, so the opinion does not say.
 */
export function opinionFrom(
  subject: InterviewSubject,
  answers: WrittenAnswers,
): { opinion?: Opinion; faults: AnswerFault[] } {
  const faults: AnswerFault[] = [];
  const said = (key: InterviewKey) => answers[key]?.trim() ?? "";
  const number = (key: InterviewKey): number => {
    const read = readNumber(said(key), subject.unit);
    if ("value" in read) return read.value;
    faults.push({ key, received: said(key), why: read.why });
    return Number.NaN;
  };
  const [high, low, likely] = [number("high"), number("low"), number("likely")];
  const outside = (key: InterviewKey, why: string) => faults.push({ key, received: said(key), why });
  if (low > high) outside("low", `${low} is above ${high}, the value exceeded one time in ten.`);
  else if (likely < low) outside("likely", `${likely} is below ${low}, the value of the low end.`);
  else if (likely > high) outside("likely", `${likely} is above ${high}, the value of the high end.`);
  const basis = said("basis");
  if (basis === "") outside("basis", "Somebody will ask why they would know. One sentence is enough.");
  if (faults.length > 0) return { faults };
  const opinion: Opinion = {
    by: subject.by,
    date: subject.date,
    of: subject.of,
    estimate: oneInTen(low, likely, high, subject.unit),
    basis,
  };
  const dissent = said("dissent");
  if (dissent !== "") opinion.dissent = dissent;
  return { opinion, faults };
}

/** The estimate of one-in-ten values and a likely one, low <= likely <= high. */
export function oneInTen(low: number, likely: number, high: number, counted: AnswerUnit): Estimate {
  const unit = counted === "weeks" ? "weeks" : "days";
  if (low === high) return { kind: "fixed", value: low, unit };
  return { kind: "range", low, likely, high, shape: "pert", bounds: "p10-p90", unit };
}
