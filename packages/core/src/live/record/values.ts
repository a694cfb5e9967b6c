import { isCalendarDate, likelyDate } from "../../plan/definition/dates.ts";

/** A value, or what is wrong with it. */
export type Read<T> = { value: T } | { rule: string; remedy: string };

const LARGEST = 1e15;

/** A calendar date that exists, years 1900 to 2999, as in a plan. */
export function readDay(text: string): Read<string> {
  const written = text.trim();
  if (/^(19|2\d)\d{2}-\d{2}-\d{2}$/.test(written)) {
    if (isCalendarDate(written)) return { value: written };
    return { rule: "The calendar has no such day.", remedy: "Write a day that exists." };
  }
  const meant = likelyDate(written);
  const remedy = meant === undefined ? "Write it like 2027-02-01." : `Write ${meant}.`;
  return { rule: "A date is written year-month-day.", remedy };
}

/** What remains, in working days: a number, low and high, or low, likely and high. In order, none below zero. */
export function readRemaining(text: string): Read<number | number[] | { low: number; high: number }> {
  const parts = text
    .trim()
    .split(/\s*[,;/]\s*|\s+/)
    .map(plainNumber);
  const wrong = {
    rule: "Working days that remain are a number, or low, likely and high.",
    remedy: "Write e.g. 6 or 5,7,14.",
  };
  if (parts.length > 3) return wrong;
  const numbers: number[] = [];
  for (const part of parts) {
    if (part === undefined) return wrong;
    if (part > LARGEST) return { rule: "That is too large.", remedy: "Write working days." };
    numbers.push(part);
  }
  const sorted = [...numbers].sort((a, b) => a - b);
  if (numbers.some((value, i) => value !== sorted[i])) {
    return { rule: "Low, likely and high stand in that order.", remedy: `Write ${sorted.join(",")}.` };
  }
  const [low = 0, high = 0] = numbers;
  if (numbers.length === 1) return { value: low };
  return { value: numbers.length === 2 ? { low, high } : numbers };
}

/** Working days that something took: one number; below zero where it saved some. */
export function readDays(text: string): Read<number> {
  const written = text.trim();
  const value = plainNumber(written.replace(/^-/, ""));
  if (value === undefined || value > LARGEST)
    return { rule: "Working days it took are one number.", remedy: "Write e.g. 6." };
  return { value: written.startsWith("-") ? -value : value };
}

/** Money as a plain number; refunds may make it negative. Digits in groups are refused: a point is a decimal point. */
export function readSum(text: string): Read<number> {
  const written = text.trim();
  if (/^-?\d{1,3}([.,_' ]\d{3})+$/.test(written)) {
    const plain = written.replace(/[^\d-]/g, "");
    return { rule: "Digits in groups can be misread.", remedy: `Write ${plain} if that is meant.` };
  }
  const value = plainNumber(written.replace(/^-/, ""));
  if (value === undefined || value > LARGEST) {
    return { rule: "Money is a plain number in the plan's currency.", remedy: "Write e.g. 4200." };
  }
  return { value: written.startsWith("-") ? -value : value };
}

function plainNumber(text: string): number | undefined {
  return /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : undefined;
}
