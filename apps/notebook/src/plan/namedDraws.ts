import { findTasks } from "./findTasks.ts";
import { inOneLine } from "./shownName.ts";

interface Named {
  id: string;
  name: string;
}

const ofCost = "cost of ";
const costs = "cost:";

/** What moves together, as its cell shows it: names of tasks, and "cost of" a name where it is the cost of one. */
export function drawsCell(between: readonly string[], shown: ReadonlyMap<string, string>): string {
  return between
    .map((draw) => {
      const id = draw.startsWith(costs) ? draw.slice(costs.length) : draw;
      return `${draw === id ? "" : ofCost}${shown.get(id) ?? id}`;
    })
    .join("; ");
}

/** The same read back: names or parts of names, parted by semicolons; two or more. */
export function readDraws(text: string, tasks: readonly Named[]): { value: string[] } | { words: string } {
  const draws: string[] = [];
  for (const part of text.split(";").map((one) => inOneLine(one))) {
    if (part === "") continue;
    const whole = tasks.some(({ name }) => inOneLine(name).toLowerCase() === part.toLowerCase());
    const cost = !whole && part.toLowerCase().startsWith(ofCost);
    const stated = part.startsWith(costs);
    const name = cost ? part.slice(ofCost.length) : stated ? part.slice(costs.length) : part;
    const found = findTasks(name, tasks);
    if ("words" in found) return found;
    draws.push(...found.ids.map((id) => (cost || stated ? `${costs}${id}` : id)));
  }
  const value = [...new Set(draws)];
  return value.length < 2
    ? { words: "Name two tasks or more, parted by semicolons: their estimates move together." }
    : { value };
}
