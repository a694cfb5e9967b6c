import { describeProblem, readPlan } from "@leeway/core";
import { stringify } from "yaml";
import { readDate } from "../plan/readDate.ts";

/** A strand of work, or what could go wrong: days as they were typed. */
export interface Strand {
  name: string;
  low: string;
  likely: string;
  high: string;
}
export interface Worry extends Strand {
  /** In per cent, as it was typed. */
  chance: string;
}
export interface OwnAnswers {
  title: string;
  /** As it was typed. */
  start: string;
  finish: string;
  strands: readonly Strand[];
  worries: readonly Worry[];
}

/**
 * The text of a plan from the five answers: strands side by side, all of which lead to what has to be finished, and
 * what could go wrong delaying each of them. Low and high are readings of one in ten, as the form says.
 *
 * @returns what is to be put right, in words, where it does not make a plan.
 */
export function ownPlan(answers: OwnAnswers): { text: string } | { problems: string[] } {
  const strands = answers.strands.filter(({ name }) => name.trim() !== "");
  const worries = answers.worries.filter(({ name }) => name.trim() !== "");
  const start = readDate(answers.start);
  const missing = [
    ...(answers.title.trim() === "" ? ["Name the plan."] : []),
    ...(answers.start.trim() === ""
      ? ["Give the first day on which work may happen."]
      : "words" in start
        ? [`First day: ${start.words}`]
        : []),
    ...(strands.length === 0 ? ["Name at least one strand of work."] : []),
    ...strands.flatMap((strand) => daysProblem(strand)),
    ...worries.flatMap((worry) => [
      ...daysProblem(worry),
      ...(within(worry.chance)
        ? []
        : [`${worry.name}: its chance is a number of per cent between 0 and 100.`]),
    ]),
  ];
  if (missing.length > 0 || "words" in start) return { problems: missing };
  const ids = strands.map((_, k) => `strand-${k + 1}`);
  const document = {
    format: 1,
    title: answers.title.trim(),
    start: start.value,
    estimates: { bounds: "p10-p90" },
    commitment: { confidence: 0.8 },
    ...(worries.length === 0
      ? {}
      : {
          risks: worries.map((worry, k) => ({
            id: `risk-${k + 1}`,
            name: worry.name.trim(),
            probability: numberOf(worry.chance) / 100,
            impacts: [{ tasks: ids, delay: daysOf(worry) }],
          })),
        }),
    tasks: [
      ...strands.map((strand, k) => ({ id: ids[k], name: strand.name.trim(), duration: daysOf(strand) })),
      { id: "finished", name: answers.finish.trim() || "Finished", milestone: true, after: ids },
    ],
  };
  const says =
    "# Change anything. Estimates are [low, likely, high] in working days: one time in ten it takes less than low, one time in ten more than high.";
  const text = `${says}\n${stringify(document, { lineWidth: 0 })}`;
  const { plan, problems } = readPlan(text);
  return plan === undefined ? { problems: problems.map((problem) => describeProblem(problem)) } : { text };
}

function daysOf({ low, likely, high }: Strand): number[] {
  return [low, likely, high].map(numberOf);
}

function daysProblem(strand: Strand): string[] {
  const [low = Number.NaN, likely = Number.NaN, high = Number.NaN] = daysOf(strand);
  if (0 <= low && low <= likely && likely <= high && Number.isFinite(high)) return [];
  return [`${strand.name}: give low, likely and high in working days, the lowest first.`];
}

function within(chance: string): boolean {
  const value = numberOf(chance);
  return 0 <= value && value <= 100;
}

function numberOf(text: string): number {
  return text.trim() === "" ? Number.NaN : Number(text.trim().replace(",", "."));
}
