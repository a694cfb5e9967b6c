import { groupDigits } from "@leeway/charts";
import type { RunStamp } from "@leeway/core";
import { cut, type Page } from "./page.ts";

/** The first line of an explanation: the plan's title, and how many futures it speaks of. */
export function explanationHead(title: string, stamp: RunStamp, { width, strong }: Page): string {
  const run = stamp.iterations === 1 ? "1 future" : `${groupDigits(stamp.iterations)} futures`;
  const shown = cut(title, width - run.length - 2);
  return strong(shown) + " ".repeat(Math.max(2, width - [...shown].length - run.length)) + run;
}

/** What is needed to get the same figures again. */
export function explanationStamp({ seed, iterations, design, sha256, version }: RunStamp): string {
  return (
    `Run: seed ${seed}, ${groupDigits(iterations)} futures, ${design} design, plan ${sha256.slice(0, 12)}, ` +
    `engine ${version}.`
  );
}
