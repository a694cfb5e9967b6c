import type { Forecast, Plan, Problem } from "@leeway/core";
import type { AskReply, AskRequest, Kind, Question, Questions } from "./questions.ts";
import { talkOf, tellsOfTalk } from "./talkOf.ts";

/** Where one question stands. */
export interface Asked<K extends Kind = Kind> {
  answer?: Questions[K]["answer"];
  /** Hash of the plan that is answered. */
  plan?: string;
  /** 0 to 1, while it is worked on. */
  progress?: number;
  problems: readonly Problem[];
  /** What broke, in words. */
  failed?: string;
}

/** Works on one question after the other; the newest plan wins, an answer to an older one stays until then. */
export interface Asker {
  get<K extends Kind>(kind: K): Asked<K> | undefined;
  subscribe(listener: () => void): () => void;
  /** From now on this question is answered for every plan, until it is no longer wanted. */
  want(question: Question): void;
  unwant(kind: Kind): void;
  /** The plan as it stands, once its own answer is there; undefined while that is worked on, which goes first. */
  plan(plan: Plan | undefined, forecast?: Forecast): void;
}

/** A worker as far as the asker needs it; tests hand in their own. */
export interface AskWorker {
  postMessage(request: AskRequest): void;
  terminate(): void;
  onmessage: ((event: MessageEvent<AskReply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
}

/** What was asked, of which plan, and what came of it. */
type Known = Asked & { question?: string; talk?: string };

/** Ms without a new plan before questions take a processor. */
const restFirst = 600;

export function createAsker(start: () => AskWorker): Asker {
  const listeners = new Set<() => void>();
  const wanted = new Map<Kind, Question>();
  const asked = new Map<Kind, Known>();
  let plan: Plan | undefined;
  let talk = "";
  let forecast: Forecast | undefined;
  let worker: AskWorker | undefined;
  let working: Kind | undefined;
  let run = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const put = (kind: Kind, change: Known): void => {
    asked.set(kind, change);
    for (const listener of listeners) listener();
  };

  function leave(): void {
    clearTimeout(timer);
    if (working === undefined) return;
    worker?.terminate();
    worker = undefined;
    const kind = working;
    working = undefined;
    const { progress: _left, ...rest } = asked.get(kind) ?? { problems: [] };
    put(kind, rest);
  }

  function soon(wait: number): void {
    clearTimeout(timer);
    timer = setTimeout(next, wait);
  }

  function next(): void {
    if (plan === undefined || working !== undefined) return;
    const { sha256 } = plan;
    for (const [kind, question] of wanted) {
      const known = asked.get(kind);
      const text = JSON.stringify(question);
      const same = known?.talk === talk || !tellsOfTalk(kind);
      if (known?.plan === sha256 && known.question === text && same) continue;
      run++;
      working = kind;
      worker ??= begin();
      const { failed: _was, ...rest } = known ?? { problems: [] };
      put(kind, { ...rest, progress: 0 });
      worker.postMessage({
        run,
        plan,
        forecast: kind === "findings" ? forecast : undefined,
        question,
      });
      return;
    }
  }

  function begin(): AskWorker {
    const fresh = start();
    fresh.onmessage = ({ data }) => {
      if (fresh !== worker || data.run !== run || working === undefined) return;
      hear(working, data);
    };
    fresh.onerror = (event) => {
      if (fresh !== worker || working === undefined) return;
      worker = undefined;
      hear(working, { kind: "failed", run, words: event.message || "The computation could not start." });
    };
    return fresh;
  }

  function hear(kind: Kind, reply: AskReply): void {
    const known = asked.get(kind) ?? { problems: [] };
    if (reply.kind === "progress") {
      put(kind, { ...known, progress: reply.total === 0 ? 0 : reply.done / reply.total });
      return;
    }
    working = undefined;
    const of = { plan: plan?.sha256 ?? "", question: JSON.stringify(wanted.get(kind)), talk };
    if (reply.kind === "failed") {
      const { progress: _done, ...rest } = known;
      put(kind, { ...rest, ...of, failed: reply.words });
    } else {
      const { answer, problems } = reply;
      put(kind, { ...of, problems, ...(answer === undefined ? {} : { answer }) });
    }
    next();
  }

  return {
    get: <K extends Kind>(kind: K) => asked.get(kind) as Asked<K> | undefined,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    want(question) {
      const { kind } = question;
      const before = wanted.get(kind);
      if (before !== undefined && JSON.stringify(before) === JSON.stringify(question)) return;
      wanted.set(kind, question);
      if (working === kind) leave();
      if (plan !== undefined) soon(before === undefined ? 0 : restFirst / 2);
    },
    unwant(kind) {
      wanted.delete(kind);
      if (working !== kind) return;
      leave();
      if (plan !== undefined) soon(0);
    },
    plan(newest, answer) {
      const said = newest === undefined ? "" : newest === plan ? talk : talkOf(newest);
      const same = newest?.sha256 === plan?.sha256;
      if (same && said === talk) return;
      plan = newest;
      talk = said;
      forecast = answer;
      // Decisions and talk move no number: what only computes goes on.
      if (!same || (working !== undefined && tellsOfTalk(working))) leave();
      if (plan !== undefined) soon(restFirst);
    },
  };
}
