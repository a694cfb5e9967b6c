import type { OptionRule } from "./verbRule.ts";

/** Options that more than one verb takes: the same word means the same, in the same words, wherever it stands. */
export const common = {
  json: { name: "json", help: "one JSON document on standard output and nothing else" },
  charts: { name: "charts", value: "DIR", help: "also write the charts as SVG files into DIR" },
  confidence: {
    name: "confidence",
    value: "P",
    help: "how sure to be, above 0 and below 1: 0.8 is 8 times in 10 (default: the plan's)",
  },
  iterations: { name: "iterations", value: "N", help: "how many futures (default: the plan's)" },
  seed: {
    name: "seed",
    value: "TEXT",
    help: "the same seed draws the same futures, another one others (default: the plan's)",
  },
  design: {
    name: "design",
    value: "NAME",
    help: "how futures are drawn: latin-hypercube (default) or plain",
  },
  without: {
    name: "without",
    value: "IDS",
    repeats: true,
    help: "leave out risks, optional scope, adopted responses; ids with commas",
  },
  with: {
    name: "with",
    value: "IDS",
    repeats: true,
    help: "take in responses not adopted, capacity people could add; ids with commas",
  },
  workers: { name: "workers", value: "N", help: "processor cores to use; never changes a digit" },
} as const satisfies Record<string, OptionRule>;

/** How the futures are drawn and what they are of: what nearly every verb that draws futures takes, in this order. */
export const drawn: readonly OptionRule[] = [
  common.iterations,
  common.seed,
  common.design,
  common.without,
  common.with,
];
