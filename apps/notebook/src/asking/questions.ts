import type {
  Brief,
  BriefAnswers,
  Budget,
  Comparison,
  Confidence,
  Explanation,
  Forecast,
  Future,
  Plan,
  Problem,
  Reach,
  Responses,
  WhichFuture,
} from "@leeway/core";
import type { ToldFinding } from "./tellFindings.ts";

/** What is asked about the plan beyond its forecast, and what is answered. Plain objects only. */
export interface Questions {
  explain: { ask: object; answer: Explanation };
  responses: { ask: object; answer: Responses };
  reach: { ask: { finishBy?: string; sum?: number }; answer: Reach };
  /** `old`: the text of the plan compared with. */
  compare: { ask: { old: string }; answer: Comparison };
  /** Which future is replayed: by its level, or by its number. */
  future: { ask: WhichFuture; answer: Future };
  /** Why this level: the levels side by side, date and money together. */
  confidence: { ask: object; answer: Confidence };
  budget: { ask: object; answer: Budget };
  /** What is to be said about the plan before anybody promises by it. `today`: ISO 8601. */
  findings: { ask: { today: string }; answer: ToldFinding[] };
  /** What is handed to those who decide, and all that it was put together from. */
  brief: { ask: { today: string }; answer: { brief: Brief; answers: BriefAnswers } };
}
export type Kind = keyof Questions;
export type Question = { [K in Kind]: { kind: K } & Questions[K]["ask"] }[Kind];

export interface AskRequest {
  run: number;
  plan: Plan;
  /** The answer to this plan: what is said of chances needs it. */
  forecast: Forecast | undefined;
  question: Question;
}
export type AskReply =
  | { kind: "progress"; run: number; done: number; total: number }
  | { kind: "answer"; run: number; answer: Questions[Kind]["answer"] | undefined; problems: Problem[] }
  | { kind: "failed"; run: number; words: string };
