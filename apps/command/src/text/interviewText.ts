import { formatPercent, quoteName } from "@leeway/charts";
import type { Implied, Interview, Opinion } from "@leeway/core";
import { amount, amountIn } from "./amountWords.ts";
import { wrap } from "./page.ts";
import { plainText } from "./plainText.ts";

/** What stands before a question: why it is asked again, the read-back, the words, what may be answered. */
export function questionText(interview: Interview, width: number): string {
  const { question, again, implied } = interview;
  if (question === undefined) return "";
  const lines = [
    ...(again === undefined ? [] : wrap(plainText(again), width)),
    ...(implied === undefined || again !== undefined
      ? []
      : wrap(impliedSentences(interview, implied), width)),
    ...wrap(plainText(question.text), width),
    ...wrap(question.help, width - 2).map((line) => `  ${line}`),
  ];
  return `${lines.join("\n")}\n`;
}

/** What the answers say of the work, read back in other words than they were asked for. */
export function impliedSentences({ subject }: Interview, implied: Implied): string {
  const { name, unitWords } = subject;
  const { p10, p50, p90, mean, belowZero } = implied;
  if (p10 === p90) return `Then ${quoteName(name)} is certain: ${amountIn(p50, unitWords)}.`;
  const zero =
    belowZero > 0.0005
      ? ` The curve reaches below nought; a forecast counts that ${formatPercent(belowZero)} as nought.`
      : "";
  return (
    `So of ten pieces of work like ${quoteName(name)} eight take from ${amount(p10)} to ${amountIn(p90, unitWords)}, ` +
    `five of the ten more than ${amount(p50)}, and they average ${amount(mean)}.${zero}`
  );
}

/** An opinion in a line: `3, 5, 9 working days (one in ten, likely, one in ten)`. */
export function opinionSentence(opinion: Opinion, unitWords: string): string {
  const { estimate } = opinion;
  if (estimate.kind !== "range") {
    return estimate.kind === "fixed" ? `${amountIn(estimate.value, unitWords)}, certain` : "by outcomes";
  }
  const { low, likely, high } = estimate;
  const three = [low, ...(likely === undefined ? [] : [likely]), high].map(amount).join(", ");
  return `${three} ${unitWords} (one in ten below, likely, one in ten above)`;
}
