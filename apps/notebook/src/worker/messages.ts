import type { Forecast, Problem } from "@leeway/core";

/** What the page asks of the worker. Plain objects only; nothing is transferred, nothing is shared. */
export type Request =
  /** A first answer from few futures, then the full one. */
  | { kind: "forecast"; run: number; text: string; first: number }
  /** The full answer once more, with the tornado. */
  | { kind: "tornado"; run: number; text: string };

/** `first`: the early answer from few futures; `full`: the plan's own number of futures. */
export type Stage = "first" | "full" | "tornado";

/** What the worker answers. `run` is the request's, so that an answer nobody waits for can be told apart. */
export type Reply =
  | { kind: "progress"; run: number; stage: Stage; done: number; total: number }
  | { kind: "forecast"; run: number; stage: Stage; forecast: Forecast }
  | { kind: "done"; run: number; problems: Problem[] }
  /** Something broke that is not the plan's fault; `words` says what, for a person. */
  | { kind: "failed"; run: number; words: string };
