import type { Edit } from "../plan/edit.ts";
import type { PlanRead, PlanReply, PlanRequest } from "./planMessages.ts";

/** Reads and edits plans away from the page's own thread, in the order asked. */
export interface Reader {
  /** The text after the edits, read. Rejects when the reading itself breaks, with words for a person. */
  read(text: string, edits: readonly Edit[]): Promise<PlanRead>;
}

/** A worker as far as the reader needs it; tests hand in their own. */
export interface PlanWorkerLike {
  postMessage(request: PlanRequest): void;
  onmessage: ((event: MessageEvent<PlanReply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** @param worker  Kept for good: reading is short, and its start is not. */
export function createReader(worker: PlanWorkerLike): Reader {
  const waiting = new Map<number, { done: (read: PlanRead) => void; failed: (error: Error) => void }>();
  let last = 0;
  worker.onmessage = ({ data }) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if ("failed" in data) asked?.failed(new Error(data.failed));
    else asked?.done(data.read);
  };
  worker.onerror = (event) => {
    for (const { failed } of waiting.values())
      failed(new Error(event.message || "The plan could not be read."));
    waiting.clear();
  };
  return {
    read(text, edits) {
      const id = ++last;
      return new Promise((done, failed) => {
        waiting.set(id, { done, failed });
        worker.postMessage({ id, text, edits });
      });
    },
  };
}
