import type { Problem } from "@leeway/core";
import { callProblem } from "./callProblem.ts";
import type { OptionValues } from "./optionValues.ts";

/**
 * Money as a plain number, 0 or more. Digits in groups (`10,000`, `10.000`, `10 000`) are refused, since a point
 * is a decimal point here and nobody should have to guess.
 */
export function moneyOption(
  values: OptionValues,
  name: string,
): { value?: number; problems: readonly Problem[] } {
  const text = values.text(name);
  if (text === undefined || text === "") return { problems: [] };
  const refuse = (rule: string, remedy: string) => ({
    problems: [callProblem("option-value", `--${name} ${text}`, rule, remedy)],
  });
  const grouped = /^\d{1,3}([.,_' ]\d{3})+$/.test(text);
  if (grouped) {
    const plain = text.replace(/\D/g, "");
    return refuse("Digits in groups can be misread.", `Write --${name} ${plain} if that is meant.`);
  }
  const value = /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
  if (!(value <= 1e15)) {
    return refuse(
      "It must be money as a plain number, from 0 to 1000000000000000.",
      `Write e.g. --${name} 10000.`,
    );
  }
  return { value, problems: [] };
}
