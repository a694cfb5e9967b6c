/** Whether any of the first n bytes is 1. */
export function anySet(row: Uint8Array, n: number): boolean {
  for (let k = 0; k < n; k++) if (row[k] === 1) return true;
  return false;
}
