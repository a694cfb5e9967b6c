import { type Gauger, gauger, type Model } from "@leeway/core";
import type { Answer, ToThread } from "./messages.ts";

/** By plan: what it takes to gauge its sets is made once, however many asks there are. */
const made = new WeakMap<Model, Map<string, Gauger>>();

/** A thread's answer to a question about sets of decisions. */
export function gaugesFor(
  model: Model,
  { about, draw, targets, sets, iterations }: Extract<ToThread, { kind: "gauge" }>,
  onProgress: (done: number, total: number) => void,
): Answer {
  const gaugers = made.get(model) ?? new Map<string, Gauger>();
  made.set(model, gaugers);
  const key = JSON.stringify(about);
  const gauge = gaugers.get(key) ?? gauger(model.plan, about);
  gaugers.set(key, gauge);
  return { kind: "gauges", gauges: gauge(draw, targets, { sets, iterations }, onProgress) };
}
