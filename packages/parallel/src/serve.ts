import {
  type AsWritten,
  compile,
  type Model,
  measureVariants,
  newTrials,
  planAsWritten,
  runBlocks,
  summarise,
  type TrialSums,
  type Trials,
  taskRanks,
  tornadoBars,
  valuesOfPlans,
  warmUp,
} from "@leeway/core";
import { gaugesFor } from "./gaugesFor.ts";
import type { Answer, FromThread, RunOptions, ToThread } from "./messages.ts";
import { buffersOf, rowsOf } from "./rows.ts";
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
    } else if (message.kind === "warm") {
      warmUp();
    } else if (message.kind === "plan") {
      const model = compile(message.plan);
      subject = { model, asWritten: planAsWritten(model), options: message.options };
    } else {
      if (subject === undefined) throw new Error(`Asked for "${message.kind}" before any plan.`);
      const said = answer(subject, message, (done) => post({ kind: "progress", done }, []));
      post(said, said.kind === "stretch" ? buffersOf(said.rows) : []);
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
    // `plan` has no answer of its own: its failure is the answer to the request after it.
    if (
      broken !== undefined &&
      message.kind !== "plan" &&
      message.kind !== "warm" &&
      message.kind !== "forget"
    )
      post(broken, []);
  };
}

function answer(
  subject: Subject,
  message: Exclude<ToThread, { kind: "plan" | "warm" | "forget" }>,
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
      return { kind: "ranks", values: taskRanks(subject.joined, confidence, from, to) };
    }
    case "stretch":
      return stretch({ model, asWritten, options }, message, progress);
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
  { model, asWritten, options }: Subject,
  { fromBlock, iterations }: { fromBlock: number; iterations: number },
  progress: Progress,
): Answer {
  const into = newTrials(model, asWritten, { ...options, iterations });
  const sums: TrialSums[] = [];
  const tell = sparingly(progress);
  let done = 0;
  const beyond = runBlocks(model, asWritten, into, fromBlock, (blockSums, blockIterations) => {
    sums.push(blockSums);
    done += blockIterations;
    tell(done, iterations);
  });
  return { kind: "stretch", rows: beyond >= 0 ? [] : rowsOf(into), sums, beyond };
}

function failure(thrown: unknown): FromThread {
  const error = thrown instanceof Error ? thrown : new Error(String(thrown));
  return { kind: "failed", name: error.name, message: error.message, stack: error.stack ?? "" };
}
