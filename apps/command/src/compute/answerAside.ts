import { parentPort, Worker, workerData } from "node:worker_threads";
import { answer, type Kind, type OnProgress, type Question, type Questions } from "./answers.ts";

/** Tasks times futures from which on a thread pays: below, the answer is there before anybody could stop it. */
const LARGE = 3_000_000;

/** The built command is its own thread's program. */
const program = new URL("./leeway.mjs", import.meta.url);

type Said<K extends Kind> =
  | { kind: "progress"; done: number; total: number }
  | { kind: "answer"; answer: Questions[K]["answer"] };

/**
 * Answers a question; a large one on a thread of its own, so that a signal is heard meanwhile. The figures are the same
 * either way. Where no thread can be had, here.
 */
export function answerAside<K extends Kind>(
  question: Question<K>,
  onProgress: OnProgress,
): Promise<Questions[K]["answer"]> {
  const { plan, options } = question;
  const work = Math.max(1, plan.tasks.length) * (options.iterations ?? plan.iterations);
  if (work < LARGE) return Promise.resolve(answer(question, onProgress));
  return new Promise((resolve, reject) => {
    const thread = new Worker(program, { workerData: question });
    let heard = false;
    thread.on("message", (said: Said<K>) => {
      heard = true;
      if (said.kind === "progress") onProgress(said.done, said.total);
      else resolve(said.answer);
    });
    thread.on("error", (error) => {
      if (heard) reject(error);
      else resolve(answer(question, onProgress));
    });
  });
}

/** What the thread does: it answers the question it was started with. */
export function answerInThread(): void {
  const question = workerData as Question; // what `answerAside` started the thread with
  const post = (said: Said<Kind>) => parentPort?.postMessage(said);
  post({ kind: "progress", done: 0, total: 1 });
  const found = answer(question, (done, total) => post({ kind: "progress", done, total }));
  post({ kind: "answer", answer: found });
}
