import { changedLines as changesOf } from "@leeway/core";

/** The lines of a text that an edit changed, `- ` before what was and `+ ` before what is; none where nothing did. */
export function changedLines(before: string, after: string): string[] {
  return changesOf(before, after).flatMap(({ removed, added }) => [
    ...removed.map((line) => `- ${line}`),
    ...added.map((line) => `+ ${line}`),
  ]);
}
