interface Named {
  id: string;
  name: string;
}

/** A text as it is compared and shown: in one line, without room around it. */
export function inOneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/**
 * How each of them is written in a cell: by its name, which is what a reader knows; by its id where the name does not
 * lead back to it alone, or holds the mark between two names.
 */
export function shownNames(all: readonly Named[]): ReadonlyMap<string, string> {
  const times = new Map<string, number>();
  const count = (text: string): void => {
    times.set(text, (times.get(text) ?? 0) + 1);
  };
  for (const { id, name } of all) {
    const small = inOneLine(name).toLowerCase();
    count(small);
    if (id !== small) count(id);
  }
  return new Map(
    all.map(({ id, name }) => {
      const line = inOneLine(name);
      const own = line !== "" && !line.includes(";") && times.get(line.toLowerCase()) === 1;
      return [id, own ? line : id];
    }),
  );
}
