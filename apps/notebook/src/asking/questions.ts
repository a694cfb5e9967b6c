import type { Comparison, Explanation, Future, Plan, Problem, Reach, Responses } from "@leeway/core";

/** What is asked about the plan beyond its forecast, and what is answered. Plain objects only. */
export interface Questions {
  explain: { ask: object; answer: Explanation };
  responses: { ask: object; answer: Responses };
  reach: { ask: { finishBy?: string; sum?: number }; answer: Reach };
  /** `old`: the text of the plan compared with. */
  compare: { ask: { old: string }; answer: Comparison };
  /** `at`: the level whose future is replayed. */
  future: { ask: { at: number }; answer: Future };
}
export type Kind = keyof Questions;
export type Question = { [K in Kind]: { kind: K } & Questions[K]["ask"] }[Kind];

export interface AskRequest {
  run: number;
  plan: Plan;
  question: Question;
}
export type AskReply =
  | { kind: "progress"; run: number; done: number; total: number }
  | { kind: "answer"; run: number; answer: Questions[Kind]["answer"] | undefined; problems: Problem[] }
  | { kind: "failed"; run: number; words: string };
