/** Id of the row of a list, from its path. */
export function rowId(path: string): string {
  return `row-${path.replace(/[^a-z0-9]+/gi, "-")}`;
}
