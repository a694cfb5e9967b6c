import type { VerbRule } from "./verbRule.ts";

const planWords = { 0: "", 1: " PLAN", 2: " OLD NEW" } as const;

/** What stands after a verb, as help writes it. */
export function wordsAfter({ plans, word }: VerbRule): string {
  if (word === undefined) return planWords[plans];
  const open = word.optional === true || word.many === true;
  return `${planWords[plans]} ${open ? `[${word.name}${word.many === true ? " ..." : ""}]` : word.name}`;
}
