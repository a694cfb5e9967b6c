/** The lines of a text that an edit changed, `- ` before what was and `+ ` before what is; none where nothing did. */
export function changedLines(before: string, after: string): string[] {
  const was = before.split("\n");
  const is = after.split("\n");
  let first = 0;
  while (first < was.length && first < is.length && was[first] === is[first]) first++;
  let last = 0;
  while (
    last < was.length - first &&
    last < is.length - first &&
    was[was.length - 1 - last] === is[is.length - 1 - last]
  )
    last++;
  return [
    ...was.slice(first, was.length - last).map((line) => `- ${line}`),
    ...is.slice(first, is.length - last).map((line) => `+ ${line}`),
  ];
}
