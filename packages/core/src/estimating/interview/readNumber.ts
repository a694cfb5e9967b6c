import { advice } from "../../plan/definition/numberAdvice.ts";
import { LARGEST } from "../../plan/definition/scalars.ts";
import type { AnswerUnit } from "../askable.ts";

const UNIT_WORD = /^(.*\d)\s*(d|days?|working days?|person-days?|w|wks?|weeks?|person-weeks?)$/i;

/** The number in an answer, or why it is none: a dot is the decimal point, digits in groups are not guessed at. */
export function readNumber(written: string, unit: AnswerUnit): { value: number } | { why: string } {
  let text = written.trim();
  const [, digits, word] = UNIT_WORD.exec(text) ?? [];
  if (digits !== undefined && word !== undefined && unit !== "money") {
    const said = /w(k|eek|$)/i.test(word.replace(/^working/i, "")) ? "weeks" : "days";
    if (said !== unit) return { why: `“${text}” is in ${said}; this is counted in ${unit}.` };
    text = digits.trim();
  }
  if (text === "") return { why: "A number is needed here." };
  if (!/^[-+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d+)?$/i.test(text)) {
    const meant = advice(text, {});
    return { why: `“${text.slice(0, 60)}” is not a plain number. ${meant ?? "Write one like 7.5."}` };
  }
  const value = Number(text);
  if (Math.abs(value) > LARGEST) return { why: "That is more than a plan can hold." };
  if (value < 0 && unit !== "money") return { why: "Time is not less than nothing. Write 0 or more." };
  return { value };
}
