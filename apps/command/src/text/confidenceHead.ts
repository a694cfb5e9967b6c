import { groupDigits, plainName } from "@leeway/charts";
import type { RunStamp } from "@leeway/core";
import { cut, type Page } from "./page.ts";

/** The first line of an explanation: the plan's title, and how many futures it speaks of. */
export function explanationHead(title: string, stamp: RunStamp, { width, strong }: Page): string {
  const run = futures(stamp.iterations);
  const shown = cut(title, width - run.length - 2);
  return strong(shown) + " ".repeat(Math.max(2, width - [...shown].length - run.length)) + run;
}

function futures(n: number): string {
  return n === 1 ? "1 future" : `${groupDigits(n)} futures`;
}

/** Below this many the forecast warns as well. */
const ENOUGH = 1000;

/** What is needed to get the same figures again; of few futures also that they are few. */
export function explanationStamp({ seed, iterations, design, sha256, version }: RunStamp): string {
  const few =
    iterations < ENOUGH ? ` Only ${futures(iterations)}: another seed may give quite other figures.` : "";
  return (
    `Run: seed ${plainName(seed)}, ${futures(iterations)}, ${design} design, plan ${sha256.slice(0, 12)}, ` +
    `engine ${version}.${few}`
  );
}
