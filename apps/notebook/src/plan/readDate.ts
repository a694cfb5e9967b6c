import { formatDate } from "@leeway/charts";

const months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/**
 * Reads a date as a person writes it: `2027-10-01`, `1 Oct 2027`, `1 October 2027`. Forms whose order of day and
 * month depends on the country are refused.
 */
export function readDate(text: string): { value: string } | { words: string } {
  const trimmed = text.trim();
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(trimmed);
  if (iso !== null) return checked(trimmed, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const spoken = /^(\d{1,2})\.?\s+([a-z]{3,9})\.?,?\s+(\d{4})$/i.exec(trimmed);
  const month = months.indexOf(spoken?.[2]?.slice(0, 3).toLowerCase() ?? "") + 1;
  if (spoken === null || month === 0) {
    return {
      words: `“${trimmed.slice(0, 24)}” is not a date read here. Write it as 1 Oct 2027 or 2027-10-01.`,
    };
  }
  return checked(trimmed, Number(spoken[3]), month, Number(spoken[1]));
}

function checked(
  text: string,
  year: number,
  month: number,
  day: number,
): { value: string } | { words: string } {
  const value = [
    String(year).padStart(4, "0"),
    String(month).padStart(2, "0"),
    String(day).padStart(2, "0"),
  ].join("-");
  // `formatDate` gives back what is not an existing date.
  if (formatDate(value) === value) return { words: `There is no ${text}. Write a day that exists.` };
  return { value };
}
