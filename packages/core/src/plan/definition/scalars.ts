import type { Place } from "../source/place.ts";
import { isCalendarDate, likelyDate } from "./dates.ts";
import { advice } from "./numberAdvice.ts";
import type { Reading } from "./reading.ts";
import type { Type } from "./type.ts";

/** Beyond this a double no longer holds every whole number and cent that could be meant. */
export const LARGEST = 1e15;

function wrong(place: Place, reading: Reading, rule: string, remedy: string): undefined {
  const { node } = place;
  if (node.kind === "scalar" && node.value === null) {
    const name = typeof place.key === "string" ? ` \`${place.key}\`` : " this";
    reading.report(place, "wrong-type", "Nothing is written here.", `Give it a value, or leave${name} out.`, {
      received: "",
    });
  } else {
    reading.report(place, "wrong-type", rule, remedy);
  }
  return undefined;
}

/**
 * Text. A number standing for text is taken as written (`seed: 7`, `phase: 2`) where it can be written only
 * that way; `1.0` or `0x10` would become other text in JSON and needs quotes.
 */
export function text(what: string): Type<string> {
  return {
    what,
    read(place, reading) {
      const { node } = place;
      const value = node.kind === "scalar" ? node.value : undefined;
      if (typeof value === "string") {
        checkCharacters(value, place, reading);
        if (value.trim() !== "") return value;
        reading.report(place, "bad-format", "The text is empty.", "Write some text, or leave it out.");
        return undefined;
      }
      if (typeof value === "number" && Number.isFinite(value)) {
        const written = reading.source(place);
        if (written === String(value)) return written;
        reading.report(
          place,
          "number-as-text",
          "This reads as a number.",
          `Put it between quotes: "${written}".`,
        );
        return undefined;
      }
      const quoted =
        typeof value === "boolean" ? `Put it between quotes: "${reading.source(place)}".` : `Write ${what}.`;
      return wrong(place, reading, "Text belongs here.", quoted);
    },
    schema: () => ({ type: ["string", "number"], pattern: "\\S" }),
  };
}

/** Text must survive being written as UTF-8; a replacement character shows that it already did not. */
export function checkCharacters(value: string, place: Place, reading: Reading): void {
  if (/\p{Surrogate}/u.test(value)) {
    reading.report(place, "encoding", "Half a character stands in this text.", "Type the text again.");
  } else if (value.includes("\uFFFD")) {
    const rule = "A character was lost when this text was saved or read in the wrong encoding.";
    reading.report(place, "lost-character", rule, "Save the file as UTF-8 and type it again.", {
      severity: "warning",
    });
  }
}

/** An ISO 8601 calendar date that exists, years 1900 to 2999. */
export function date(): Type<string> {
  return {
    what: "a date like 2027-02-01",
    read(place, reading) {
      const { node } = place;
      const value = node.kind === "scalar" ? node.value : undefined;
      const meant = value === null || value === undefined ? undefined : likelyDate(reading.source(place));
      const remedy = meant === undefined ? "Write year-month-day, like 2027-02-01." : `Write ${meant}.`;
      if (typeof value !== "string") return wrong(place, reading, "A date belongs here.", remedy);
      if (!new RegExp(DATE_PATTERN).test(value)) {
        const outside = meant === value;
        const rule = outside
          ? "A plan's dates lie in the years 1900 to 2999."
          : "A date is written year-month-day.";
        reading.report(place, "bad-format", rule, outside ? "Write a date in those years." : remedy);
        return undefined;
      }
      if (isCalendarDate(value)) return value;
      reading.report(place, "no-such-date", "The calendar has no such day.", "Write a day that exists.");
      return undefined;
    },
    schema: () => ({ type: "string", format: "date", pattern: DATE_PATTERN }),
  };
}
const DATE_PATTERN = "^(19|2[0-9])[0-9]{2}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";

/** true or false. */
export function flag(): Type<boolean> {
  return {
    what: "true or false",
    read(place, reading) {
      const value = place.node.kind === "scalar" ? place.node.value : undefined;
      if (typeof value === "boolean") return value;
      const word = reading.source(place).toLowerCase().replace(/["']/g, "");
      const meant = /^(y|yes|on|1|true)$/.test(word)
        ? "Write true."
        : /^(n|no|off|0|false)$/.test(word)
          ? "Write false."
          : "";
      return wrong(place, reading, "true or false belongs here.", meant || "Write true or false.");
    },
    schema: () => ({ type: "boolean" }),
  };
}

export interface NumberRange {
  min?: number;
  max?: number;
  /** The ends themselves are excluded. */
  open?: boolean;
  whole?: boolean;
  /** Money: `210.000` is suspicious. */
  money?: boolean;
}

/** A number within limits; never NaN, never infinite, at most 1e15 in size. */
export function number(what: string, range: NumberRange = {}): Type<number> {
  const low = range.min ?? -LARGEST;
  const high = range.max ?? LARGEST;
  const rule = sentence(what, range);
  return {
    what,
    read(place, reading) {
      const { node } = place;
      const value = node.kind === "scalar" ? node.value : undefined;
      if (typeof value !== "number" || !Number.isFinite(value)) {
        const meant = typeof value === "string" ? advice(value, range) : undefined;
        return wrong(place, reading, `${upper(what)} belongs here.`, meant ?? `Write ${what}.`);
      }
      const inside = range.open ? value > low && value < high : value >= low && value <= high;
      if (!inside || (range.whole && !Number.isInteger(value))) {
        const percent =
          range.max === 1 && value > 1 && value <= 100
            ? `Write ${Number((value / 100).toPrecision(12))}`
            : "";
        const remedy = percent ? `${percent} if ${value} % is meant.` : `Write ${what}.`;
        reading.report(place, "out-of-range", rule, remedy);
        return undefined;
      }
      if (range.money) warnOfGrouping(place, reading, value);
      return value;
    },
    schema: () => ({
      type: range.whole ? "integer" : "number",
      [range.open ? "exclusiveMinimum" : "minimum"]: low,
      [range.open ? "exclusiveMaximum" : "maximum"]: high,
    }),
  };
}

/** Says, without touching the number, that `210.000` is two hundred and ten. */
function warnOfGrouping(place: Place, reading: Reading, value: number): void {
  const written = reading.source(place);
  if (!/^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(written)) return;
  const rule = `This reads as ${value}; the dot is the decimal point.`;
  const remedy = `Write ${written.replace(/[.+]/g, "")} if that is meant, else ${value}.`;
  reading.report(place, "grouped-digits", rule, remedy, { severity: "warning" });
}

function sentence(what: string, { min, max, open, whole }: NumberRange): string {
  const kind = `${upper(what)} belongs here`;
  const between = open ? "strictly between" : "from";
  const and = open ? "and" : "to";
  if (min !== undefined && max !== undefined) {
    return `${whole ? "A whole number" : "A number"} ${between} ${min} ${and} ${max} belongs here.`;
  }
  if (min !== undefined) return `${kind}: ${open ? "above" : "at least"} ${min}, at most ${LARGEST}.`;
  return `${kind}, at most ${LARGEST} in size.`;
}

export const money = (): Type<number> => number("money as a plain number", { money: true });
export const moneyFromZero = (): Type<number> => number("money as a plain number", { min: 0, money: true });
export const probability = (): Type<number> => number("a chance from 0 to 1", { min: 0, max: 1 });

/** One of a few words (or numbers, or flags). */
export function choice<const C extends readonly (string | number | boolean)[]>(
  ...choices: C
): Type<C[number]> {
  const what = choices.length === 1 ? String(choices[0]) : `one of ${choices.join(", ")}`;
  return {
    what,
    read(place, reading) {
      const value = place.node.kind === "scalar" ? place.node.value : undefined;
      const found = choices.find((each) => each === value);
      if (found !== undefined) return found;
      if (value === null) return wrong(place, reading, "", "");
      const meant = typeof value === "string" ? reading.suggest(value, choices.map(String)) : undefined;
      const remedy = meant === undefined ? `Write ${what}.` : `Write ${meant}.`;
      reading.report(place, "not-a-choice", `This is not ${what}.`, remedy);
      return undefined;
    },
    schema: () => (choices.length === 1 ? { const: choices[0] ?? null } : { enum: [...choices] }),
  };
}

/** Text of a fixed form. */
export function pattern(what: string, form: RegExp): Type<string> {
  return {
    what,
    read(place, reading) {
      const value = place.node.kind === "scalar" ? place.node.value : undefined;
      if (typeof value === "string" && form.test(value)) return value;
      if (typeof value !== "string") return wrong(place, reading, "Text belongs here.", `Write ${what}.`);
      const upperCase = value.toUpperCase();
      const remedy = form.test(upperCase) ? `Write ${upperCase}.` : `Write ${what}.`;
      reading.report(place, "bad-format", `This is not ${what}.`, remedy);
      return undefined;
    },
    schema: () => ({ type: "string", pattern: form.source }),
  };
}

function upper(sentence: string): string {
  return sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
}
