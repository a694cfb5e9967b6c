import type { Plan } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";
import type { Hurry, PlanRead, PlanReply, PlanRequest } from "./planMessages.ts";

/** Reads and edits plans away from the page's own thread, in the order asked. */
export interface Reader {
  /**
   * The text after the edits, read. Rejects when the reading itself breaks, with words for a person.
   *
   * @param ahead  Called before, where it can be told early, with the plan that the text is going to say.
   * @param stated  The text as plain data, where that is known: a promise, and checked.
   * @param first  The plan is going to be asked for, a first answer from so many futures: it may be begun with.
   */
  read(
    text: string,
    edits: readonly Edit[],
    ahead?: (plan: Plan) => void,
    stated?: unknown,
    first?: number,
  ): Promise<PlanRead>;
  /** What the plan would be after the edits; undefined where that cannot be told early, or is no plan. */
  try(text: string, edits: readonly Edit[]): Promise<Plan | undefined>;
  /** What is being read is wanted now; a reading whose plan was said ahead lets that go first otherwise. */
  hurry(): void;
}

/** A worker as far as the reader needs it; tests hand in their own. */
export interface PlanWorkerLike {
  postMessage(request: PlanRequest | Hurry): void;
  onmessage: ((event: MessageEvent<PlanReply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

interface Waiting {
  ahead: (plan: Plan) => void;
  done: (read: PlanRead | undefined) => void;
  failed: (error: Error) => void;
}

/** @param worker  Kept for good: reading is short, and its start is not. */
export function createReader(worker: PlanWorkerLike): Reader {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  worker.onmessage = ({ data }) => {
    const asked = waiting.get(data.id);
    if ("ahead" in data) {
      asked?.ahead(data.ahead);
      return;
    }
    waiting.delete(data.id);
    if ("failed" in data) asked?.failed(new Error(data.failed));
    else asked?.done("read" in data ? data.read : undefined);
  };
  worker.onerror = (event) => {
    for (const { failed } of waiting.values())
      failed(new Error(event.message || "The plan could not be read."));
    waiting.clear();
  };
  const ask = (request: Omit<PlanRequest, "id">, ahead: (plan: Plan) => void) => {
    const id = ++last;
    return new Promise<PlanRead | undefined>((done, failed) => {
      waiting.set(id, { ahead, done, failed });
      worker.postMessage({ id, ...request });
    });
  };
  return {
    async read(text, edits, ahead = () => {}, stated = undefined, first = undefined) {
      const read = await ask({ text, edits, stated, ...(first === undefined ? {} : { first }) }, ahead);
      if (read === undefined) throw new Error("The reading was left without an answer.");
      return read;
    },
    async try(text, edits) {
      let found: Plan | undefined;
      await ask({ text, edits, trial: true }, (plan) => {
        found = plan;
      });
      return found;
    },
    hurry() {
      if (waiting.size > 0) worker.postMessage({ hurry: true });
    },
  };
}
