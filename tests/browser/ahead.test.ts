import { compile, forecast, type Plan, planAsWritten, readPlan, tornado } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { Edit } from "../../apps/notebook/src/plan/edit.ts";
import { forecastDesk } from "../../apps/notebook/src/worker/forecastDesk.ts";
import { forecastInSlices } from "../../apps/notebook/src/worker/forecastInSlices.ts";
import { createHelp, type HelperLike } from "../../apps/notebook/src/worker/help.ts";
import { helpDesk } from "../../apps/notebook/src/worker/helpDesk.ts";
import type { Reply, Unasked } from "../../apps/notebook/src/worker/messages.ts";
import { planDesk } from "../../apps/notebook/src/worker/planDesk.ts";
import type { PlanReply } from "../../apps/notebook/src/worker/planMessages.ts";
import { tornadoDesk } from "../../apps/notebook/src/worker/tornadoDesk.ts";
import { exampleTexts } from "./support/exampleTexts.ts";

/** What a worker posts: to its requests, and unasked. */
function postBox() {
  const replies: Reply[] = [];
  const unasked: Unasked[] = [];
  const post = (message: Reply | Unasked): void => {
    if (message.kind === "unasked") unasked.push(message);
    else replies.push(message);
  };
  return { replies, unasked, post };
}

function planOf(text: string): Plan {
  const { plan } = readPlan(text);
  if (plan === undefined) throw new Error("The plan does not read.");
  return plan;
}

// What the page does to be quick may not change what it says. The other side of each comparison is the library,
// asked the plain way; no outside source.
describe("what an edit makes of a plan, said before its text is edited", () => {
  it.each(exampleTexts)("is the plan that the edited text of %s says", (_name, text) => {
    const replies: PlanReply[] = [];
    const ask = planDesk((reply) => replies.push(reply));
    ask({ id: 0, text, edits: [] });
    const { tasks, risks } = planOf(text);
    const ranged = tasks.findIndex(({ duration }) => duration?.kind === "range");
    const edits: Edit[][] = [
      [{ path: "tasks[0].name", value: "Renamed: with a colon" }],
      [{ path: "commitment.confidence", value: 0.65 }],
      [{ path: `tasks[${ranged}].duration`, value: [3, 4, 9] }],
      ...risks.slice(0, 1).map(() => [{ path: "risks[0].probability", value: 0.41 }]),
    ];
    let now = text;
    for (const [at, one] of edits.entries()) {
      replies.length = 0;
      ask({ id: at + 1, text: now, edits: one });
      const [ahead, read] = replies;
      if (ahead === undefined || !("ahead" in ahead)) throw new Error("Nothing was said before.");
      if (read === undefined || !("read" in read)) throw new Error("The text was not read.");
      now = read.read.text;
      expect(read.read.plan).toEqual(planOf(now));
      expect(JSON.stringify(ahead.ahead)).toBe(JSON.stringify(planOf(now)));
      // And the data kept for the next edit is that of the text.
      expect(read.read.stated).toEqual(parse(now));
    }
  });

  it("is left to the text where a path is not plain: a way through what the plan does not say yet", () => {
    const text = "format: 1\ntitle: One\nstart: 2027-02-01\ntasks: { id: dig, name: Dig, duration: 5 }\n";
    const said = (path: string, value: unknown): PlanReply[] => {
      const replies: PlanReply[] = [];
      const ask = planDesk((reply) => replies.push(reply));
      ask({ id: 0, text, edits: [] });
      replies.length = 0;
      ask({ id: 1, text, edits: [{ path, value }] });
      return replies;
    };
    const kinds = (replies: readonly PlanReply[]) => replies.map((reply) => Object.keys(reply).at(-1));
    const level = said("commitment.confidence", 0.7);
    expect(kinds(level)).toEqual(["read"]);
    expect(level[0]).toMatchObject({ read: { plan: { commitment: { confidence: 0.7 } } } });
    // One item that stands where a list is meant is plain.
    const days = said("tasks[0].duration", 8);
    expect(kinds(days)).toEqual(["ahead", "read"]);
    for (const reply of days) {
      const plan = "ahead" in reply ? reply.ahead : "read" in reply ? reply.read.plan : undefined;
      expect(plan).toMatchObject({ tasks: [{ duration: { kind: "fixed", value: 8 } }] });
    }
  });

  it("lets the text wait for the answer, but not a newer request, nor whoever hurries", () => {
    const [, text] = exampleTexts[0] ?? ["", ""];
    const said: string[] = [];
    const later: (() => void)[] = [];
    const ask = planDesk(
      (reply) => said.push(`${reply.id} ${Object.keys(reply).at(-1)}`),
      (task) => later.push(task),
    );
    ask({ id: 0, text, edits: [] });
    const edits = [{ path: "commitment.confidence", value: 0.66 }];
    ask({ id: 1, text, edits });
    expect(said).toEqual(["0 read", "1 ahead"]);
    ask({ hurry: true });
    expect(said.slice(2)).toEqual(["1 read"]);
    ask({ id: 2, text, edits });
    ask({ id: 3, text, edits, trial: true });
    expect(said.slice(3)).toEqual(["2 ahead", "2 read", "3 ahead", "3 tried"]);
    ask({ id: 4, text, edits });
    for (const task of later) task();
    expect(said.slice(7)).toEqual(["4 ahead", "4 read"]);
  });

  it("is not said of an edit that would break the plan, and a trial changes nothing", () => {
    const [, text] = exampleTexts[0] ?? ["", ""];
    const replies: PlanReply[] = [];
    const ask = planDesk((reply) => replies.push(reply));
    ask({ id: 0, text, edits: [] });
    replies.length = 0;
    ask({ id: 1, text, edits: [{ path: "tasks[0].duration", value: "soon" }], trial: true });
    expect(replies).toEqual([{ id: 1, tried: true }]);
    replies.length = 0;
    ask({ id: 2, text, edits: [{ path: "commitment.confidence", value: 0.66 }], trial: true });
    expect(replies.map((reply) => Object.keys(reply).at(-1))).toEqual(["ahead", "tried"]);
    ask({ id: 3, text, edits: [] });
    expect(replies.at(-1)).toMatchObject({ read: { text, plan: planOf(text) } });
  });
});

describe("a forecast in slices", () => {
  it.each(exampleTexts)(
    "of %s is the library's, to the byte, and so is its early answer",
    async (_name, text) => {
      const plan = { ...planOf(text), iterations: 4500 };
      const early: string[] = [];
      const done: number[] = [];
      const result = await forecastInSlices(plan, {
        first: 1024,
        early: (one) => early.push(JSON.stringify(one)),
        progress: (at) => done.push(at),
        left: async () => false,
      });
      expect(early).toEqual([JSON.stringify(forecast(plan, { iterations: 1024 }).forecast)]);
      expect(JSON.stringify(result?.forecast)).toBe(JSON.stringify(forecast(plan).forecast));
      expect(done[0]).toBe(1024);
      expect(done.at(-1)).toBe(4500);
    },
  );

  it.each(exampleTexts)(
    "of %s is the same, to the byte, when a helper comes from the other end",
    async (_name, text) => {
      const plan = { ...planOf(text), iterations: 9500 };
      const pause = () => new Promise<void>((resolve) => setTimeout(resolve, 0));
      const sent: number[] = [];
      // The helper's thread, by hand: what is posted arrives in a later task, copied as threads copy.
      const helper: HelperLike = {
        onmessage: null,
        postMessage: (wanted) => setTimeout(() => desk(structuredClone(wanted)), 0),
      };
      const desk = helpDesk({
        post: (block) => {
          sent.push(block.block);
          const data = structuredClone(block);
          setTimeout(() => helper.onmessage?.(new MessageEvent("message", { data })), 0);
        },
        breathe: pause,
      });
      const help = createHelp(helper);
      // Twice: what is left of the first plan may not get into the second.
      for (const seed of ["one", "two"]) {
        sent.length = 0;
        const seeded = { ...plan, seed };
        const result = await forecastInSlices(seeded, {
          first: 1024,
          early: () => {},
          progress: () => {},
          left: async () => {
            await pause();
            return false;
          },
          help,
        });
        expect(JSON.stringify(result?.forecast)).toBe(JSON.stringify(forecast(seeded).forecast));
        expect(sent).toContain(9);
        expect(sent.length).toBeGreaterThanOrEqual(3);
      }
    },
  );

  it("is left for a newer request, which alone is answered in full", async () => {
    const [, text] = exampleTexts[0] ?? ["", ""];
    const plan = { ...planOf(text), iterations: 9000 };
    const { replies, post } = postBox();
    const take = forecastDesk({
      post,
      breathe: () => new Promise((resolve) => setTimeout(resolve, 0)),
      onThreads: () => undefined,
      help: () => undefined,
    });
    take({ kind: "forecast", run: 1, plan, first: 1024 });
    take({ kind: "forecast", run: 2, plan: { ...plan, seed: "other" }, first: 1024 });
    while (!replies.some((reply) => reply.kind === "done"))
      await new Promise((resolve) => setTimeout(resolve, 5));
    const full = replies.filter((reply) => reply.kind === "forecast" && reply.stage === "full");
    expect(full.map(({ run }) => run)).toEqual([2]);
    expect(replies.filter((reply) => reply.kind === "done").map(({ run }) => run)).toEqual([2]);
    expect(full[0]).toMatchObject({ forecast: { seed: "other", iterations: 9000 } });
  });

  const later = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
  const until = async (is: () => boolean): Promise<void> => {
    while (!is()) await new Promise((resolve) => setTimeout(resolve, 5));
  };

  it("is begun with ahead of its request, which then hears all of it, and of no other plan", async () => {
    const [, text] = exampleTexts[0] ?? ["", ""];
    const plan = { ...planOf(text), iterations: 5000 };
    for (const asksAt of ["once begun", "once done"]) {
      const { replies, unasked, post } = postBox();
      let pauses = 0;
      const take = forecastDesk({
        post,
        breathe: () => {
          pauses++;
          return later();
        },
        onThreads: () => undefined,
        help: () => undefined,
      });
      take({ kind: "ahead", plan, first: 1024 });
      let before = -1;
      await until(() => {
        const same = pauses > 0 && pauses === before;
        before = pauses;
        return asksAt === "once begun" ? pauses > 0 : same;
      });
      expect(replies).toEqual([]);
      // Its early answer does not wait to be asked for; that is then not said again.
      const early = JSON.stringify(forecast(plan, { iterations: 1024 }).forecast);
      expect(unasked.map((one) => JSON.stringify(one.forecast))).toEqual([early]);
      take({ kind: "forecast", run: 7, plan, first: 1024 });
      await until(() => replies.some(({ kind }) => kind === "done"));
      const told = replies.filter(({ kind }) => kind !== "progress");
      expect(told.map(({ kind, run }) => `${kind} ${run}`)).toEqual(["begun 7", "forecast 7", "done 7"]);
      const [, full] = told;
      expect(full).toMatchObject({ stage: "full" });
      expect(JSON.stringify(full?.kind === "forecast" ? full.forecast : undefined)).toBe(
        JSON.stringify(forecast(plan).forecast),
      );
    }

    const { replies, post } = postBox();
    const take = forecastDesk({
      post,
      breathe: later,
      onThreads: () => undefined,
      help: () => undefined,
    });
    take({ kind: "ahead", plan, first: 1024 });
    const other = planOf(text.replace(/^title: .*$/m, "title: Another"));
    take({ kind: "forecast", run: 8, plan: { ...other, iterations: 3000 }, first: 1024 });
    await until(() => replies.some(({ kind }) => kind === "done"));
    for (const reply of replies)
      if (reply.kind === "forecast") expect(reply.forecast.plan.sha256).toBe(other.sha256);
    expect(new Set(replies.map(({ run }) => run))).toEqual(new Set([8]));

    // Overtaken by its own request, on another way, it takes nothing from it, nor from what was asked for since.
    replies.length = 0;
    take({ kind: "forecast", run: 9, plan, first: 1024 });
    await later();
    take({ kind: "ahead", plan, first: 1024 });
    await until(() => replies.some(({ kind }) => kind === "done"));
    replies.length = 0;
    take({ kind: "forecast", run: 10, plan: { ...other, iterations: 3000 }, first: 1024 });
    take({ kind: "ahead", plan, first: 1024 });
    await until(() => replies.some(({ kind }) => kind === "done"));
    expect(new Set(replies.map(({ run }) => run))).toEqual(new Set([10]));
  });

  it("has a tornado of the same bars, worked out in slices that can be left", async () => {
    const [, text] = exampleTexts[0] ?? ["", ""];
    const plan = { ...planOf(text), iterations: 2000 };
    const model = compile(plan);
    const from = forecast(plan).forecast;
    if (from === undefined) throw new Error("The plan has no forecast.");
    const { seed, design, iterations, committed } = from;
    const replies: Reply[] = [];
    let pauses = 0;
    const take = tornadoDesk(
      (reply) => replies.push(reply),
      () => {
        pauses++;
        return later();
      },
      0,
    );
    const request = { kind: "tornado", plan, from: { seed, design, iterations, committed } } as const;
    take({ ...request, run: 1 });
    await until(() => pauses > 3);
    take({ kind: "leave" });
    const left = pauses;
    await later();
    await later();
    expect(pauses).toBe(left);
    take({ ...request, run: 2 });
    await until(() => replies.some(({ kind }) => kind === "done" || kind === "failed"));
    const bars = replies.find((reply) => reply.kind === "tornado");
    expect(bars?.run).toBe(2);
    expect(JSON.stringify(bars?.bars)).toBe(
      JSON.stringify(tornado(model, request.from, planAsWritten(model), committed)),
    );
    expect(bars?.bars.length).toBeGreaterThan(3);
  });
});
