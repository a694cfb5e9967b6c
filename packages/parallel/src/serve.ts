import {
  type AsWritten,
  type BlockRunner,
  blockRunner,
  blockSize,
  compile,
  joinRun,
  type Model,
  measureVariants,
  newTrials,
  planAsWritten,
  practise,
  summarise,
  type TrialSums,
  type Trials,
  taskRanks,
  tornadoBars,
  touchMemory,
  valuesOfPlans,
} from "@leeway/core";
import { gaugesFor } from "./gaugesFor.ts";
import type { Answer, FromThread, RunOptions, ToThread } from "./messages.ts";
import { buffersOf, momentRowsOf, rowsOf } from "./rows.ts";
import { sparingly } from "./sparingly.ts";
import { takeBlocks } from "./takeBlocks.ts";

type Post = (message: FromThread, transfer: ArrayBuffer[]) => void;
type Progress = (done: number) => void;

interface Subject {
  model: Model;
  asWritten: AsWritten;
  options: RunOptions;
  /** What was computed together with others last. */
  joined?: Trials;
  /** Computes the stretches, one set of rows for all. */
  runner?: BlockRunner;
}

/**
 * A thread's side: says that it runs and returns what to do with each message. It compiles the plan itself,
 * which gives the same model everywhere. What goes wrong is answered whole instead of thrown, and nothing
 * else is until the next plan.
 */
export function serve(post: Post): (message: ToThread) => void {
  let subject: Subject | undefined;
  let broken: FromThread | undefined;

  const take = (message: ToThread): void => {
    if (message.kind === "forget") {
      subject = undefined;
    } else if (message.kind === "practise") {
      practise();
    } else if (message.kind === "touch") {
      touchMemory(message.memory);
    } else if (message.kind === "plan") {
      const model = compile(message.plan);
      subject = { model, asWritten: planAsWritten(model), options: message.options };
    } else if (message.kind === "assist") {
      joinRun(message.entry);
      post({ kind: "assisted" }, []);
    } else {
      if (subject === undefined) throw new Error(`Asked for "${message.kind}" before any plan.`);
      const said = answer(subject, message, (done) => post({ kind: "progress", done }, []));
      post(said, handedOver(said));
    }
  };

  post({ kind: "ready" }, []);
  return (message) => {
    if (message.kind === "plan") broken = undefined;
    try {
      if (broken === undefined) return take(message);
    } catch (thrown) {
      broken = failure(thrown);
    }
    // What has no answer of its own fails with the request after it.
    const { kind } = message;
    const answered = kind !== "plan" && kind !== "practise" && kind !== "touch" && kind !== "forget";
    if (broken !== undefined && answered) post(broken, []);
  };
}

/** Memory that goes with an answer instead of being copied. */
function handedOver(said: Answer): ArrayBuffer[] {
  if (said.kind === "stretch") return buffersOf(said.rows);
  if (said.kind === "moments") return buffersOf(momentRowsOf(said.parts));
  return said.kind === "joined" ? buffersOf(momentRowsOf(said.moments)) : [];
}

function answer(
  subject: Subject,
  message: Exclude<ToThread, { kind: "plan" | "practise" | "touch" | "forget" | "assist" }>,
  progress: Progress,
): Answer {
  const { model, asWritten, options } = subject;
  switch (message.kind) {
    case "join": {
      const { rows, iterations } = message;
      subject.joined = newTrials(model, asWritten, { ...options, iterations }, rows);
      return { kind: "joined", ...takeBlocks(model, asWritten, subject.joined, message.counter) };
    }
    case "ranks": {
      const { confidence, from, to } = message;
      if (subject.joined === undefined) throw new Error("Asked for ranks before any blocks.");
      return {
        kind: "ranks",
        values: taskRanks({ model, asWritten, trials: subject.joined }, confidence, from, to),
      };
    }
    case "stretch":
      return stretch(subject, message, progress);
    case "moments": {
      const into = newTrials(model, asWritten, { ...options, iterations: 0, total: message.total });
      subject.runner?.settle(into, message.from, message.to);
      return { kind: "moments", parts: into.moments?.parts ?? [] };
    }
    case "summarise": {
      const { trials, confidence } = message;
      const forecast = summarise(model, trials, asWritten, confidence === undefined ? {} : { confidence });
      return { kind: "summary", forecast };
    }
    case "measure": {
      const { draw, confidence, settings } = message;
      const measures = measureVariants(model, draw, confidence, settings, sparingly(progress));
      return { kind: "measures", measures };
    }
    case "values": {
      const terms = { ...message.terms, newer: model.plan };
      return { kind: "values", values: valuesOfPlans(terms, message.plans, sparingly(progress)) };
    }
    case "gauge":
      return gaugesFor(model, message, sparingly(progress));
    case "tornado": {
      const bars = tornadoBars(
        model,
        message.draw,
        asWritten,
        message.committed,
        message,
        sparingly(progress),
      );
      return { kind: "bars", bars };
    }
  }
}

function stretch(
  subject: Subject,
  { fromBlock, iterations, total }: { fromBlock: number; iterations: number; total: number },
  progress: Progress,
): Answer {
  const { model, asWritten, options } = subject;
  const into = newTrials(model, asWritten, { ...options, iterations, total });
  subject.runner ??= blockRunner(model, asWritten, into);
  const sums: TrialSums[] = [];
  const tell = sparingly(progress);
  for (let first = 0, b = fromBlock; first < iterations; first += blockSize, b++) {
    const n = Math.min(blockSize, iterations - first);
    const found = subject.runner.run(b, first, n, into);
    if (typeof found === "number") return { kind: "stretch", rows: [], sums, beyond: found };
    sums.push(found);
    tell(first + n, iterations);
  }
  return { kind: "stretch", rows: rowsOf(into), sums, beyond: -1 };
}

function failure(thrown: unknown): FromThread {
  const error = thrown instanceof Error ? thrown : new Error(String(thrown));
  return { kind: "failed", name: error.name, message: error.message, stack: error.stack ?? "" };
}
