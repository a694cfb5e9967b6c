import { advice } from "../../plan/definition/numberAdvice.ts";

export type NumberRead = { value: number; comma: boolean } | { remedy: string };

/**
 * A number in a cell. A comma is the decimal point only in a table whose cells are separated by semicolons; there
 * `1.500` is refused, because it may be 1.5 or one thousand five hundred.
 */
export function numberIn(cell: string, semicolons: boolean): NumberRead {
  const text = cell.trim();
  if (semicolons) {
    if (/^[-+]?\d+,\d+$/.test(text)) return { value: Number(text.replace(",", ".")), comma: true };
    if (/^[-+]?[1-9]\d{0,2}\.\d{3}$/.test(text)) {
      const plain = text.replace(".", "");
      return {
        remedy: `Write ${plain}, or ${text.replace(".", ",").replace(/0+$/, "").replace(/,$/, "")} if the dot is the decimal point.`,
      };
    }
  }
  if (/^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i.test(text)) {
    const value = Number(text);
    if (Number.isFinite(value)) return { value, comma: false };
  }
  return { remedy: advice(text, {}) ?? "Write a number, with a dot as the decimal point." };
}
