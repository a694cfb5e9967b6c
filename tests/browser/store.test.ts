import type { Forecast, Plan } from "@leeway/core";
import { readPlan } from "@leeway/core";
import { describe, expect, it, vi } from "vitest";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import type { Edit } from "../../apps/notebook/src/plan/edit.ts";
import { record, redo, startHistory, undo } from "../../apps/notebook/src/store/history.ts";
import { staleWords } from "../../apps/notebook/src/store/state.ts";
import { createStore } from "../../apps/notebook/src/store/store.ts";
import type { Leave, Reply, Request, Unasked } from "../../apps/notebook/src/worker/messages.ts";
import type { PlanRead } from "../../apps/notebook/src/worker/planMessages.ts";
import { createRunner, type WorkerLike } from "../../apps/notebook/src/worker/runner.ts";

// The rules are this project's own (the newest edit wins; the last good answer stays and is marked; undo gives
// the very text back), common practice, no source. No browser: workers are stood in for by hand.

class HandWorker implements WorkerLike {
  onmessage: ((event: MessageEvent<Reply | Unasked>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  asked: (Request | Leave)[] = [];
  ended = false;
  postMessage(request: Request | Leave): void {
    this.asked.push(request);
  }
  terminate(): void {
    this.ended = true;
  }
  say(data: Reply | Unasked): void {
    this.onmessage?.(new MessageEvent("message", { data }));
  }
}

const readable = readPlan(
  "format: 1\ntitle: One\nstart: 2027-02-01\ntasks:\n  - { id: dig, name: Dig, duration: 5 }\n",
).plan;
if (readable === undefined) throw new Error("the plan of the tests does not read");
const onePlan = readable;
const request = (run: number): Request => ({ kind: "forecast", run, plan: onePlan, first: 8 });

/** A runner over workers by hand. */
function handRunner(patience?: number) {
  const workers: HandWorker[] = [];
  const heard: (Reply | Unasked)[] = [];
  const start = () => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  };
  const runner = createRunner(start, (message) => heard.push(message), patience);
  return { workers, heard, runner };
}

describe("createRunner", () => {
  it("ends the worker of an older request and lets nothing of it through", () => {
    const { workers, heard, runner } = handRunner();
    runner.run(request(1));
    runner.run(request(2));
    expect(workers.map((worker) => worker.ended)).toEqual([true, false]);
    workers[0]?.say({ kind: "progress", run: 1, stage: "full", done: 1, total: 2 });
    workers[1]?.say({ kind: "done", run: 2, problems: [] });
    expect(heard).toEqual([{ kind: "done", run: 2, problems: [] }]);

    // An idle worker is kept for the next request.
    runner.run(request(3));
    expect(workers).toHaveLength(2);
    runner.stop();
    expect(workers[1]?.ended).toBe(true);
  });

  it("keeps a worker that listens, and ends it only when it does not take up the newer request in time", () => {
    vi.useFakeTimers();
    try {
      const { workers, heard, runner } = handRunner(100);
      expect(workers).toHaveLength(1); // there before it is asked
      runner.run(request(1));
      workers[0]?.say({ kind: "begun", run: 1 });
      runner.run(request(2));
      workers[0]?.say({ kind: "progress", run: 1, stage: "full", done: 1, total: 2 });
      vi.advanceTimersByTime(99);
      workers[0]?.say({ kind: "begun", run: 2 });
      vi.advanceTimersByTime(1000);
      expect(workers.map((worker) => worker.ended)).toEqual([false]);
      expect(heard.map((message) => ("run" in message ? message.run : undefined))).toEqual([1, 2]);

      runner.stop();
      expect(workers[0]?.asked.at(-1)).toEqual({ kind: "leave" });
      runner.run(request(3));
      vi.advanceTimersByTime(101);
      expect(workers.map((worker) => worker.ended)).toEqual([true, false]);
      expect(workers[1]?.asked).toEqual([request(3)]);
    } finally {
      vi.useRealTimers();
    }
  });
});

describe("what a worker says unasked", () => {
  it("is passed on whatever is asked meanwhile, and ends nothing", () => {
    const { workers, heard, runner } = handRunner(100);
    const unasked: Unasked = { kind: "unasked", forecast: forecastNamed("early") };
    workers[0]?.say(unasked);
    runner.run(request(1));
    workers[0]?.say({ kind: "begun", run: 1 });
    workers[0]?.say(unasked);
    workers[0]?.say({ kind: "done", run: 1, problems: [] });
    expect(heard.map(({ kind }) => kind)).toEqual(["unasked", "begun", "unasked", "done"]);
    expect(workers.map((worker) => worker.ended)).toEqual([false]);
  });

  it("is shown when its plan is the current one, and else waits until it is", async () => {
    const read = async (text: string): Promise<PlanRead> => {
      const { plan: found, problems } = readPlan(text);
      return { text, problems, stated: undefined, ...(found === undefined ? {} : { plan: found }) };
    };
    let say: (message: Reply | Unasked) => void = () => {};
    const asked: Request[] = [];
    const reader = { read, try: async () => undefined, hurry: () => {} };
    const store = createStore(plan, reader, (kind, reply) => {
      if (kind === "forecast") say = reply;
      return { run: (one) => asked.push(one), stop: () => {} };
    });
    const quiet = async (): Promise<void> => {
      while (store.state.reading) await new Promise((resolve) => setTimeout(resolve, 1));
    };
    const early = (text: string, title: string): Forecast => ({
      ...forecastNamed(title),
      plan: { title, sha256: readPlan(text).plan?.sha256 ?? "", currency: "EUR", start: "2027-02-01" },
    });
    await quiet();
    const longer = plan.replace("duration: 5", "duration: 9");
    const ahead = early(longer, "ahead");
    say({ kind: "unasked", forecast: ahead });
    expect(store.state.answer).toBeUndefined();
    const now = early(plan, "now");
    say({ kind: "unasked", forecast: now });
    expect(store.state.answer).toEqual({ forecast: now, stage: "first", plan: store.state.current });
    store.setText(longer);
    await quiet();
    expect(store.state.answer).toEqual({ forecast: ahead, stage: "first", plan: store.state.current });
    // The full answer stands, whatever comes late.
    const full = early(longer, "full");
    say({ kind: "forecast", run: asked.at(-1)?.run ?? -1, stage: "full", forecast: full });
    say({ kind: "unasked", forecast: ahead });
    expect(store.state.answer?.forecast).toBe(full);
    expect(store.state.computing).toBe(false);
  });
});

describe("history", () => {
  it("gives every text back, and forgets what could be redone at a new one", () => {
    let history = startHistory("a");
    for (const text of ["b", "b", "c"]) history = record(history, text);
    history = undo(history);
    expect(history.present).toBe("b");
    history = undo(history);
    expect(history.present).toBe("a");
    expect(undo(history)).toBe(history);
    history = redo(redo(history));
    expect(history.present).toBe("c");
    history = record(undo(history), "d");
    expect(redo(history)).toBe(history);
    expect([history.present, undo(history).present, undo(undo(history)).present]).toEqual(["d", "b", "a"]);
  });
});

const plan =
  "format: 1\ntitle: Two tasks\nstart: 2027-02-01\ntasks:\n  - { id: dig, name: Dig, duration: 5 }\n";

/** A store whose forecasts are answered by hand, and whose plans are read for real. */
function bench(text: string) {
  const asked: Request[] = [];
  const replies: ((message: Reply) => void)[] = [];
  const stops: number[] = [];
  const read = async (from: string, edits: readonly Edit[]): Promise<PlanRead> => {
    const { text: next, problems: unmade } = applyEdits(from, edits);
    const { plan: found, problems } =
      unmade.length > 0 ? { plan: undefined, problems: unmade } : readPlan(next);
    return { text: next, problems, stated: undefined, ...(found === undefined ? {} : { plan: found }) };
  };
  const nothing = async (): Promise<undefined> => undefined;
  const store = createStore(text, { read, try: nothing, hurry: () => {} }, (_kind, reply) => {
    replies.push(reply);
    return { run: (one) => asked.push(one), stop: () => stops.push(asked.length) };
  });
  const answer = (forecast: Forecast): void => {
    const run = asked.at(-1)?.run ?? -1;
    replies[0]?.({ kind: "forecast", run, stage: "full", forecast });
    replies[0]?.({ kind: "done", run, problems: [] });
  };
  const quiet = async (): Promise<void> => {
    while (store.state.reading) await new Promise((resolve) => setTimeout(resolve, 1));
  };
  return { store, asked, answer, quiet };
}

// Only identity matters here; no figure of it is read.
const forecastNamed = (title: string): Forecast => JSON.parse(JSON.stringify({ plan: { title } }));

describe("the store", () => {
  it("keeps the last full answer beside the new one, and undo answers at once from what it knows", async () => {
    const { store, asked, answer, quiet } = bench(plan);
    await quiet();
    const first = forecastNamed("first");
    answer(first);
    expect(store.state.answer?.forecast).toBe(first);
    expect(store.state.previous).toBeUndefined();

    store.edit("tasks[0].duration", { likely: "9" }, [{ path: "tasks[0].duration", value: 9 }]);
    await quiet();
    expect(store.state.text).toContain("duration: 9");
    expect(store.state.answer?.forecast).toBe(first);
    expect(store.state.previous).toBe(first);
    const second = forecastNamed("second");
    answer(second);
    const runs = asked.filter((request) => request.kind === "forecast").length;

    store.undo();
    await quiet();
    expect(store.state.text).toBe(plan);
    expect(store.state.answer?.forecast).toBe(first);
    expect(store.state.previous).toBe(second);
    expect(asked.filter((request) => request.kind === "forecast")).toHaveLength(runs);
    expect(staleWords(store.state)).toBeUndefined();
  });

  it("keeps the text, the plan and the answer when an edit would break the plan", async () => {
    const { store, answer, quiet } = bench(plan);
    await quiet();
    answer(forecastNamed("first"));
    store.edit("tasks[0].duration", { likely: "-3" }, [{ path: "tasks[0].duration", value: "soon" }]);
    await quiet();
    expect(store.state.text).toBe(plan);
    expect(store.state.pending.get("tasks[0].duration")?.words).toMatch(/\w+ .*\./);
    expect(store.state.answer?.forecast.plan.title).toBe("first");
    expect(staleWords(store.state)).toMatch(/leaves out 1 entry that waits/);
    store.undo();
    await quiet();
    expect(store.state.pending.size).toBe(0);
    expect(store.state.text).toBe(plan);
  });

  it("takes an entry in that waited for another, once that is there, and both are one step of undo", async () => {
    const { store, quiet } = bench(plan);
    await quiet();
    const put = (path: string, value: unknown): void =>
      store.edit(path, { value: String(value) }, [{ path, value }]);
    put("tasks[0].finished", "2027-02-02");
    put("tasks[0].started", "2027-02-01");
    put("tasks[0].cost", "dear");
    await quiet();
    expect([...store.state.pending.keys()]).toEqual([
      "tasks[0].finished",
      "tasks[0].started",
      "tasks[0].cost",
    ]);
    expect(store.state.text).toBe(plan);
    put("statusDate", "2027-02-03");
    await quiet();
    // What cannot be whatever the day goes on waiting.
    expect([...store.state.pending.keys()]).toEqual(["tasks[0].cost"]);
    expect(readPlan(store.state.text).plan?.tasks[0]).toMatchObject({
      started: "2027-02-01",
      finished: "2027-02-02",
    });
    store.undo();
    store.undo();
    await quiet();
    expect(store.state.text).toBe(plan);
  });

  it("tries no row that was refused again: it would be another row by then", async () => {
    const { store, quiet } = bench(plan);
    await quiet();
    const row = { id: "dig", name: "Dig again", duration: 2 };
    store.edit("rows", {}, [{ path: "tasks", value: row, add: "last" }]);
    await quiet();
    expect(store.state.pending.has("rows")).toBe(true);
    store.edit("tasks[0].id", { value: "delve" }, [{ path: "tasks[0].id", value: "delve" }]);
    await quiet();
    expect(readPlan(store.state.text).plan?.tasks).toHaveLength(1);
  });

  it("takes edits in turn: undo asked for right after an edit takes that edit back", async () => {
    const { store, quiet } = bench(plan);
    store.edit("tasks[0].duration", { likely: "6" }, [{ path: "tasks[0].duration", value: 6 }]);
    store.edit("tasks[0].duration", { likely: "7" }, [{ path: "tasks[0].duration", value: 7 }]);
    store.undo();
    await quiet();
    expect(store.state.text).toContain("duration: 6");
    expect(store.state.canRedo).toBe(true);
  });

  it("asks at once where nothing waits, and answers an entry that was computed while it was typed before it is read", async () => {
    const asked: Request[] = [];
    const begun: { edits: readonly unknown[]; first: number | undefined }[] = [];
    let reply: (message: Reply) => void = () => {};
    let release: (read: PlanRead) => void = () => {};
    const edit = { path: "tasks[0].duration", value: 9 };
    const longer = plan.replace("duration: 5", "duration: 9");
    const planIn = (text: string): Plan => {
      const { plan: found } = readPlan(text);
      if (found === undefined) throw new Error("the plan of the tests does not read");
      return found;
    };
    const store = createStore(
      plan,
      {
        read: (text, edits, _ahead, _stated, first) => {
          begun.push({ edits, first });
          if (edits.length > 0)
            return new Promise((resolve) => {
              release = resolve;
            });
          return Promise.resolve({ text, problems: [], stated: undefined, plan: planIn(text) });
        },
        try: async () => planIn(longer),
        hurry: () => {},
      },
      (kind, say) => {
        if (kind === "forecast") reply = say;
        return { run: (one) => asked.push(one), stop: () => {} };
      },
    );
    expect(begun).toHaveLength(1);
    const quiet = async (): Promise<void> => {
      while (store.state.reading) await new Promise((resolve) => setTimeout(resolve, 1));
    };
    await quiet();
    const answer = (title: string): void => {
      const run = asked.at(-1)?.run ?? -1;
      reply({ kind: "forecast", run, stage: "full", forecast: forecastNamed(title) });
      reply({ kind: "done", run, problems: [] });
    };
    answer("first");

    store.foresee([edit]);
    await new Promise((resolve) => setTimeout(resolve, 5));
    answer("foreseen");
    expect(store.state.answer?.forecast.plan.title).toBe("first");
    store.edit("tasks[0].duration", { likely: "9" }, [edit]);
    // Before anything else ran: it was asked to be read, and what was computed of it is the answer.
    expect(begun.at(-1)?.edits).toEqual([edit]);
    expect(store.state.reading).toBe(true);
    expect(store.state.answer?.forecast.plan.title).toBe("foreseen");
    expect(store.state.current).toBe(planIn(longer).sha256);
    release({ text: longer, problems: [], stated: undefined, plan: planIn(longer) });
    await quiet();
    expect(store.state.text).toBe(longer);
    expect(store.state.previous?.plan.title).toBe("first");

    // What was foreseen of one entry says nothing of another, which is begun with as soon as it is read.
    store.edit("tasks[0].duration", { likely: "8" }, [{ ...edit, value: 8 }]);
    expect(store.state.current).toBe(planIn(longer).sha256);
    expect(begun.at(-1)?.first).toBe(1024);
    const shorter = plan.replace("duration: 5", "duration: 8");
    release({ text: shorter, problems: [], stated: undefined, plan: planIn(shorter) });
    await quiet();
    expect(store.state.current).toBe(planIn(shorter).sha256);
  });

  it("keeps a text that cannot be read as the text, with its problems, and the plan of before", async () => {
    const { store, answer, quiet } = bench(plan);
    await quiet();
    answer(forecastNamed("first"));
    store.setText(plan.replace("duration: 5", "duration: five"));
    await quiet();
    expect(store.state.text).toContain("five");
    expect(store.state.plan?.tasks[0]?.duration).toMatchObject({ kind: "fixed", value: 5 });
    expect(store.state.problems.map((problem) => problem.line)).toContain(5);
    expect(staleWords(store.state)).toMatch(/last good answer.*1 problem/);
  });
});
