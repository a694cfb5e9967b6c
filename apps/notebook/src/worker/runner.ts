import type { Leave, Reply, Request, Unasked } from "./messages.ts";

/** One line of work: the newest request wins, an older one still running is left. */
export interface Runner {
  run(request: Request): void;
  stop(): void;
}

/** A worker as far as the runner needs it; tests hand in their own. */
export interface WorkerLike {
  postMessage(request: Request | Leave): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<Reply | Unasked>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/**
 * Leaving a run means ending its worker, or, with `patience`, telling it: a worker that listens while it works
 * stays warm for the next request. An idle worker is always kept.
 *
 * @param start  Starts a worker.
 * @param reply  Called with every message of the current request, and with what comes unasked; never with one of an older
 *               request.
 * @param patience  Ms that a busy worker has to take up a newer request before it is ended after all; 0: it does
 *                  not listen.
 * @param early  Its start takes longer than most answers: it is started before it is asked.
 */
export function createRunner(
  start: () => WorkerLike,
  reply: (message: Reply | Unasked) => void,
  patience = 0,
  early = patience > 0,
): Runner {
  let worker: WorkerLike | undefined;
  let current: number | undefined;
  /** `new`: it has said nothing yet, and may still be loading. */
  let worked: "new" | "idle" | "busy" = "new";
  let watch: ReturnType<typeof setTimeout> | undefined;

  const end = (): void => {
    clearTimeout(watch);
    worker?.terminate();
    worker = undefined;
    current = undefined;
  };

  const begin = (): WorkerLike => {
    const fresh = start();
    worked = "new";
    fresh.onmessage = (event) => {
      if (fresh !== worker) return;
      if (event.data.kind === "unasked") {
        reply(event.data);
        return;
      }
      if (event.data.run !== current) return;
      clearTimeout(watch);
      const over = event.data.kind === "done" || event.data.kind === "failed";
      worked = over ? "idle" : "busy";
      if (over) current = undefined;
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

  const send = (request: Request): void => {
    worker ??= begin();
    current = request.run;
    worker.postMessage(request);
  };

  if (early) worker = begin();

  return {
    run(request) {
      if (patience === 0 && current !== undefined) end();
      clearTimeout(watch);
      const busy = worker !== undefined && worked === "busy";
      send(request);
      if (!busy || patience === 0) return;
      watch = setTimeout(() => {
        end();
        send(request);
      }, patience);
    },
    stop() {
      if (current === undefined) return;
      if (patience === 0) {
        end();
        return;
      }
      clearTimeout(watch);
      current = undefined;
      worker?.postMessage({ kind: "leave" });
    },
  };
}
