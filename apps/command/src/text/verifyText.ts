import type { VerifyAnswer } from "@leeway/core";
import { type Page, wrap } from "./page.ts";
import { plainText } from "./plainText.ts";

const number = new Intl.NumberFormat("en-GB");

/** Whether a saved forecast came out the same again, and where it first did not. */
export function verifyText(answer: VerifyAnswer, name: string, { width, strong }: Page): string {
  const { same, first, seed, iterations, version, savedVersion, compared, differing } = answer;
  const values = (count: number) => `${number.format(count)} ${count === 1 ? "value" : "values"}`;
  const run = `seed ${plainText(seed)} and ${number.format(iterations)} futures`;
  const lines: string[] = [];
  if (same) {
    lines.push(strong("Confirmed."), "");
    lines.push(...wrap(`Run again with ${run}, all ${values(compared)} of ${name} are the same.`, width));
  } else {
    lines.push(strong("Not confirmed."), "");
    const [saved, now] = [first?.saved ?? "not there", first?.now ?? "not there"].map(plainText);
    lines.push(
      ...wrap(`First ${plainText(first?.path ?? "")} differs: saved ${saved}, run again ${now}.`, width),
      ...wrap(`Run with ${run}, ${values(differing)} of ${number.format(compared)} differ.`, width),
    );
  }
  if (savedVersion !== version) {
    const said = `It was saved by leeway ${plainText(savedVersion)}; this is ${version}. Changes of results are listed in CHANGELOG.md.`;
    lines.push("", ...wrap(said, width));
  }
  return `${lines.join("\n")}\n`;
}
