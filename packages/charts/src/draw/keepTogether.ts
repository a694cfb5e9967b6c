/** Spaces that a line never breaks at: "80 %", "EUR 655,000", "16 Nov 2027", "9 days". */
const together =
  / (?=%)|(?<=working) (?=day)|(?<=\b[A-Z]{3}) (?=[\d−])|(?<=\d) (?=(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|days?|working|billion|trillion)\b)|(?<=\b(?:[A-Z][a-z]{2})) (?=\d)/g;

/** The text with no-break spaces where a line should not end: within dates, sums, shares and spans. */
export function keepTogether(text: string): string {
  return text.replace(together, "\u00a0");
}
