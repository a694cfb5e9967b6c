import type { Forecast, Plan, Problem, TornadoBar } from "@leeway/core";

/** What the page asks of the workers that compute. Plain objects only; nothing is shared. */
export type Request =
  /** A first answer from few futures, then the full one. */
  | { kind: "forecast"; run: number; plan: Plan; first: number }
  /** The bars of the tornado, measured from the full answer. */
  | { kind: "tornado"; run: number; plan: Plan; from: TornadoFrom };

/** Leave the run that is under way, if any. Only for workers that listen while they work. */
export interface Leave {
  kind: "leave";
}

/** A plan that the page is about to ask for, from who read it; its answer is kept until the page asks. */
export interface HeadStart {
  kind: "ahead";
  plan: Plan;
  first: number;
}

/** Where head starts come from. */
export interface Hear {
  kind: "hear";
  from: MessagePort;
}

/** What the re-runs need to know of the answer that they explain. */
export type TornadoFrom = Pick<Forecast, "seed" | "design" | "iterations" | "committed">;

/** `first`: the early answer from few futures; `full`: the plan's own number of futures. */
export type Stage = "first" | "full" | "tornado";

/** The early answer to a plan that came ahead, before the page asked for it: the page may not have known of it yet. */
export interface Unasked {
  kind: "unasked";
  forecast: Forecast;
}

/** What the workers answer. `run` is the request's, so that an answer nobody waits for can be told apart. */
export type Reply =
  /** The request has arrived: the worker listens. */
  | { kind: "begun"; run: number }
  | { kind: "progress"; run: number; stage: Stage; done: number; total: number }
  | { kind: "forecast"; run: number; stage: "first" | "full"; forecast: Forecast }
  | { kind: "tornado"; run: number; bars: TornadoBar[] }
  | { kind: "done"; run: number; problems: Problem[] }
  /** Something broke that is not the plan's fault; `words` says what, for a person. */
  | { kind: "failed"; run: number; words: string };
