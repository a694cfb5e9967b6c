interface Named {
  id: string;
  name: string;
}

/**
 * Tasks by what a person writes for them: an id, a name, or the part of a name that only one of them has. Several are
 * parted by semicolons.
 */
export function findTasks(text: string, tasks: readonly Named[]): { ids: string[] } | { words: string } {
  const ids: string[] = [];
  for (const part of text.split(";").map((one) => one.trim())) {
    if (part === "") continue;
    const small = part.toLowerCase();
    const exact = tasks.filter(({ id, name }) => id === small || name.toLowerCase() === small);
    const begin = tasks.filter(({ name }) => name.toLowerCase().startsWith(small));
    const inside = tasks.filter(({ name }) => name.toLowerCase().includes(small));
    const found = [exact, begin, inside].find((list) => list.length > 0) ?? [];
    const [one] = found;
    if (one === undefined)
      return { words: `No task has “${part}” in its name. Write the name of a task, or a part of it.` };
    if (found.length > 1) {
      const some = found.slice(0, 3).map(({ name }) => `“${name}”`);
      return {
        words: `“${part}” is in ${found.length} names, such as ${some.join(", ")}. Write more of the one you mean.`,
      };
    }
    if (!ids.includes(one.id)) ids.push(one.id);
  }
  return { ids };
}
