import { main as answerCall } from "./main.ts";
import type { Ahead } from "./start/helpAhead.ts";
import { leave } from "./start/takeUp.ts";

/** @param ahead  A thread that was started already. */
export function main(words: readonly string[], ahead?: Ahead): Promise<number> {
  leave(ahead);
  return answerCall(words);
}

/** What a thread does that was started with a question (`answerAside`). */
export async function answerInThread(): Promise<void> {
  (await import("./compute/answerAside.ts")).answerInThread();
}

export const rehearsal = () => import("./rehearse.ts");
