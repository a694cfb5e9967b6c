import type { Problem } from "@leeway/core";

/** A problem with the call itself: the word that came stands where a plan's place would. */
export function callProblem(code: string, word: string, rule: string, remedy: string): Problem {
  return { code, severity: "error", path: word, received: "", rule, remedy };
}
