/** A number as a person types it, or the reason why it is none. */
export type NumberEntry = { value: number } | { words: string };

/**
 * Reads a number from a cell: digits, a decimal point, commas or spaces between thousands, a sign.
 *
 * @param what  What the cell holds, with its unit, for the message: "a number of working days".
 * @param example  Something that would be right.
 */
export function readNumber(text: string, what: string, example: string): NumberEntry {
  const trimmed = text
    .trim()
    .replace(/^[−–]/, "-")
    .replace(/^\+(?=[\d.])/, "");
  if (/^-?\d+,\d{1,2}$/.test(trimmed)) {
    return { words: `Write decimals with a point: ${trimmed.replace(",", ".")} rather than ${trimmed}.` };
  }
  const plain = trimmed.replace(/(?<=\d)[,\s](?=\d{3}(?!\d))/g, "");
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(plain)) {
    const came = trimmed === "" ? "This is empty." : `“${shorten(trimmed)}” is not a number.`;
    return { words: `${came} Write ${what}, such as ${example}.` };
  }
  return { value: Number(plain) };
}

function shorten(text: string): string {
  return text.length > 24 ? `${text.slice(0, 23)}…` : text;
}
