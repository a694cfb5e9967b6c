type Node = { [key: string]: unknown };
const isObject = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Copies of an answer that are no answers any more, each broken in one way: a key that must be there left out, a key
 * too many, a number as yes or no. Of many items of a list only the first is broken.
 *
 * @param open  Places of objects that may have any key: rows of a table.
 */
export function brokenCopies(
  answer: unknown,
  schema: Node,
  open: (path: readonly (string | number)[]) => boolean,
): { how: string; copy: unknown }[] {
  const copies: { how: string; copy: unknown }[] = [];
  const change = (how: string, path: (string | number)[], deed: (holder: Node) => void) => {
    const copy: unknown = structuredClone(answer);
    let holder = copy as Node;
    for (const step of path) holder = holder[step] as Node;
    deed(holder);
    copies.push({ how: `${how} at ${path.join(".")}`, copy });
  };
  const visit = (value: unknown, path: (string | number)[]): void => {
    if (Array.isArray(value)) {
      if (value.length > 0) visit(value[0], [...path, 0]);
    } else if (isObject(value)) {
      if (!open(path)) {
        change("a key too many", path, (holder) => {
          holder.keyTooMany = 1;
        });
      }
      for (const [key, item] of Object.entries(value)) {
        if (typeof item === "number") {
          change(`${key} as yes or no`, path, (holder) => {
            holder[key] = true;
          });
        } else visit(item, [...path, key]);
      }
    }
  };
  visit(answer, []);
  for (const key of requiredIn(schema)) {
    if (!isObject(answer) || !(key in answer)) continue;
    change(`without ${key}`, [], (holder) => {
      delete holder[key];
    });
  }
  return copies;
}

/** Keys that every answer of a schema must have at its root. */
function requiredIn(schema: Node): string[] {
  return Array.isArray(schema.required) ? schema.required.map(String) : [];
}
