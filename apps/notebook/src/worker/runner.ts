import type { Reply, Request } from "./messages.ts";

/** One line of work: the newest request wins, an older one still running is stopped by ending its worker. */
export interface Runner {
  run(request: Request): void;
  stop(): void;
}

/** A worker as far as the runner needs it; tests hand in their own. */
export interface WorkerLike {
  postMessage(request: Request): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/**
 * A simulation cannot be interrupted from outside, so stopping means ending the worker; the next request
 * starts a fresh one. An idle worker is kept: its start costs more than a small plan's answer.
 *
 * @param start  Starts a worker.
 * @param reply  Called with every message of the current request; never with one of an older request.
 */
export function createRunner(start: () => WorkerLike, reply: (message: Reply) => void): Runner {
  let worker: WorkerLike | undefined;
  let current: number | undefined;

  const end = (): void => {
    worker?.terminate();
    worker = undefined;
    current = undefined;
  };

  const begin = (): WorkerLike => {
    const fresh = start();
    fresh.onmessage = (event) => {
      if (fresh !== worker || event.data.run !== current) return;
      if (event.data.kind === "done" || event.data.kind === "failed") current = undefined;
      reply(event.data);
    };
    fresh.onerror = (event) => {
      if (fresh !== worker) return;
      const run = current;
      end();
      if (run !== undefined)
        reply({ kind: "failed", run, words: event.message || "The computation could not start." });
    };
    return fresh;
  };

  return {
    run(request) {
      if (current !== undefined) end();
      worker ??= begin();
      current = request.run;
      worker.postMessage(request);
    },
    stop: () => {
      if (current !== undefined) end();
    },
  };
}
