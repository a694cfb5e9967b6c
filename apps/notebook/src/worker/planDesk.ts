import { type Plan, planFromData, readPlan } from "@leeway/core";
import { parse } from "yaml";
import { applyEdits } from "../plan/applyEdits.ts";
import { saidOf } from "../plan/saidOf.ts";
import { withEdits } from "../plan/withEdits.ts";
import type { Hurry, PlanRead, PlanReply, PlanRequest } from "./planMessages.ts";

/** Texts kept as data: enough for undo and redo. */
const textsKept = 24;

/**
 * Reads and edits plans. The last texts are kept as data: what an edit of one makes of the plan is known at once and
 * said first (`ahead`), as editing and reading the text takes ten times as long. The text then has the last word.
 *
 * @param later  Runs a task when the plan said ahead has had time to be computed: the text can wait, and would take
 *               a processor from it. Left out: at once.
 * @param start  Has a plan computed while the page still hears of it.
 */
export function planDesk(
  post: (reply: PlanReply) => void,
  later: (task: () => void) => void = (task) => task(),
  start: (plan: Plan, first: number) => void = () => {},
): (request: PlanRequest | Hurry) => void {
  const known = new Map<string, unknown>();
  const keep = (text: string, stated: unknown): void => {
    known.delete(text);
    known.set(text, stated);
    const oldest = known.keys().next();
    if (known.size > textsKept && !oldest.done) known.delete(oldest.value);
  };
  let putOff: (() => void) | undefined;
  const catchUp = (): void => {
    const task = putOff;
    putOff = undefined;
    task?.();
  };

  /** Does a request's work, or a part of it; what breaks is its answer. */
  const guarded = (id: number, work: () => void): void => {
    try {
      work();
    } catch (error) {
      post({ id, failed: error instanceof Error ? error.message : String(error) });
    }
  };

  const answer = ({ id, text, edits: asked, stated, trial, first }: PlanRequest): void => {
    const edits = asked.map((edit) =>
      edit.names === undefined ? edit : saidOf(known.get(text) ?? plainData(text), edit),
    );
    const meant = edits.length > 0 ? withEdits(known.get(text), edits) : stated;
    const ahead = meant === undefined ? undefined : planFromData(meant).plan;
    if (ahead !== undefined) {
      if (first !== undefined) start(ahead, first);
      post({ id, ahead });
    }
    if (trial === true) {
      post({ id, tried: true });
      return;
    }
    const finish = (): void =>
      guarded(id, () => {
        const read = readAfter(text, edits, ahead, meant);
        if (read.plan !== undefined) keep(read.text, read.stated);
        post({ id, read });
      });
    if (ahead === undefined) finish();
    else {
      putOff = finish;
      later(() => {
        if (putOff === finish) catchUp();
      });
    }
  };

  return (request) => {
    catchUp();
    if ("hurry" in request) return;
    guarded(request.id, () => answer(request));
  };
}

function readAfter(
  text: string,
  edits: PlanRequest["edits"],
  ahead: Plan | undefined,
  meant: unknown,
): PlanRead {
  const edited = applyEdits(text, edits);
  if (edited.problems.length > 0) return { text, problems: edited.problems, stated: plainData(text) };
  const { plan, problems } = readPlan(edited.text);
  // The same hash: the text says what was meant, and need not be taken apart once more.
  const same = plan !== undefined && plan.sha256 === ahead?.sha256;
  const stated = same ? meant : plainData(edited.text);
  return { text: edited.text, problems, stated, ...(plan === undefined ? {} : { plan }) };
}

function plainData(text: string): unknown {
  try {
    return parse(text);
  } catch {
    return undefined; // the problems say why
  }
}
