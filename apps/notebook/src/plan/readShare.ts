import type { Person, Plan } from "@leeway/core";
import { readNumber } from "./readNumber.ts";

/** A share of somebody's time in per cent, as a part of a day; empty: their own share holds. */
export function readShare(
  text: string,
  person: Person | undefined,
  { respectCapacity }: Pick<Plan, "respectCapacity">,
): { value: number | undefined } | { words: string } {
  if (text.trim() === "") return { value: undefined };
  const entry = readNumber(text.replace(/\s*%$/, ""), "a percentage of their time", "50");
  if ("words" in entry) return entry;
  if (entry.value < 0)
    return { words: "A share of somebody's time is not less than 0 %. Write 50 for half of it." };
  const most = (person?.capacity ?? 1) * 100;
  // The plan's own rule says it in parts of a day, which are not what is typed here.
  if (person !== undefined && respectCapacity && entry.value > most + 1e-7)
    return {
      words: `${entry.value} % is more than there is of ${person.name}. Write at most ${Number(most.toPrecision(6))}, or raise “How many” of them under People.`,
    };
  return { value: Number((entry.value / 100).toPrecision(12)) };
}
