import { findTasks } from "./findTasks.ts";

/** People and stakeholders by their names, or parts of them, parted by semicolons or commas. */
export function findWho(
  text: string,
  who: readonly { id: string; name: string }[],
): { ids: string[] } | { words: string } {
  const ids: string[] = [];
  for (const part of text.split(/[;,]/).map((one) => one.trim())) {
    if (part === "") continue;
    const found = findTasks(part, who);
    if ("words" in found) {
      const unknown = found.words.startsWith("No task");
      return unknown
        ? {
            words: `Nobody in this plan is called “${part}”. Write a name, or add that person under People first.`,
          }
        : found;
    }
    ids.push(...found.ids);
  }
  return { ids: [...new Set(ids)] };
}
