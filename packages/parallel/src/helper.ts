import type { Answer, FromThread, ToThread } from "./messages.ts";
import type { StartThread, Thread } from "./thread.ts";

/** A thread as something to ask: one request at a time, each with one answer. */
export interface Helper {
  /** Whether the thread could be started at all; settles when that is known. */
  readonly ready: Promise<boolean>;
  /** False once it could not be started, broke or was ended. */
  readonly alive: boolean;
  /** For messages without an answer. */
  tell(message: ToThread): void;
  /** Rejects with the thread's own error, message and stack, or with the reason it was lost. */
  ask(message: ToThread, transfer?: ArrayBuffer[], onProgress?: (done: number) => void): Promise<Answer>;
  /** Ends the thread at once; requests under way reject. Resolves when it is gone. */
  end(): Promise<void>;
  rest(resting: boolean): void;
}

/** An error that happened in a thread, as it was there. */
function asError({ name, message, stack }: { name: string; message: string; stack: string }): Error {
  const error = new Error(message);
  error.name = name;
  if (stack !== "") error.stack = stack;
  return error;
}

interface Asked {
  answer: (answer: Answer) => void;
  fail: (error: Error) => void;
  progress: ((done: number) => void) | undefined;
}

/** Starts a thread. Never throws: one that cannot be started says so through `ready`. */
export function startHelper(start: StartThread): Helper {
  let asked: Asked | undefined;
  let lost: Error | undefined;
  let settle: (ready: boolean) => void = () => {};
  const ready = new Promise<boolean>((resolve) => {
    settle = resolve;
  });

  const fail = (error: Error): void => {
    lost ??= error;
    settle(false);
    const waiting = asked;
    asked = undefined;
    waiting?.fail(error);
  };
  const message = (said: FromThread): void => {
    if (lost !== undefined) return;
    if (said.kind === "ready") settle(true);
    else if (said.kind === "progress") {
      try {
        asked?.progress?.(said.done);
      } catch (error) {
        // The listener is the caller's own: what it throws is the caller's answer, not the program's end.
        fail(error instanceof Error ? error : new Error(String(error)));
      }
    } else {
      const waiting = asked;
      asked = undefined;
      if (said.kind === "failed") waiting?.fail(asError(said));
      else waiting?.answer(said);
    }
  };

  let thread: Thread | undefined;
  try {
    thread = start({ message, lost: fail });
  } catch (error) {
    fail(error instanceof Error ? error : new Error(String(error)));
  }

  return {
    ready,
    get alive() {
      return lost === undefined;
    },
    tell: (request) => thread?.post(request, []),
    ask(request, transfer = [], onProgress = undefined) {
      return new Promise((answer, reject) => {
        if (lost !== undefined || thread === undefined) {
          reject(lost);
          return;
        }
        asked = { answer, fail: reject, progress: onProgress };
        thread.post(request, transfer);
      });
    },
    async end() {
      fail(new Error("The thread was ended."));
      await thread?.end();
    },
    rest: (resting) => thread?.rest(resting),
  };
}
