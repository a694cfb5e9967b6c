import { everybody, interestRules } from "./interests.ts";
import type { PreBriefQuestion, QuestionKey } from "./types.ts";

/** What of an approver and of the plan decides which questions are likely. */
export interface Asker {
  role?: string;
  interest?: string;
  looksFor?: string;
}

/**
 * The questions of one approver, likeliest first: what is asked of them, what changed since they last saw it, then what
 * their interest, their note and their role bring forward, then what everybody asks, and at last what brings the plan
 * back to them. Each question once.
 *
 * @param answerable  Whether the plan and its results hold an answer; others are left out.
 */
export function questionsFor(asker: Asker, answerable: (key: QuestionKey) => boolean): PreBriefQuestion[] {
  const found = new Map<QuestionKey, PreBriefQuestion>();
  const add = (key: QuestionKey, because?: string) => {
    if (found.has(key) || !answerable(key)) return;
    found.set(key, because === undefined ? { key } : { key, because });
  };
  add("ask");
  add("changed");
  for (const text of [asker.interest, asker.looksFor, asker.role]) {
    for (const { word, questions } of rulesOf(text)) for (const key of questions) add(key, word);
  }
  for (const key of everybody) add(key);
  const back = found.get("back") ?? { key: "back" as const };
  found.delete("back");
  return [...found.values(), back];
}

/** Rules that a text brings up, in the order of the words that do, each with its word as written. */
function rulesOf(text: string | undefined): { word: string; questions: readonly QuestionKey[] }[] {
  if (text === undefined) return [];
  const words = text.slice(0, 2000).match(/\p{L}+/gu) ?? [];
  const taken = new Set<number>();
  return words.flatMap((word) => {
    const at = interestRules.findIndex((rule, i) => !taken.has(i) && begins(rule.words, word));
    if (at < 0) return [];
    taken.add(at);
    return [{ word, questions: interestRules[at]?.questions ?? [] }];
  });
}

function begins(beginnings: readonly string[], word: string): boolean {
  const small = word.toLowerCase();
  return beginnings.some((beginning) => small.startsWith(beginning));
}
