/** Turns offsets into 1-based lines and columns; columns count UTF-16 units. One pass, then O(log n). */
export function lineColumn(text: string): (at: number) => { line: number; column: number } {
  const starts = [0];
  for (let i = text.indexOf("\n"); i >= 0; i = text.indexOf("\n", i + 1)) starts.push(i + 1);
  return (at) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((starts[middle] ?? 0) <= at) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: at - (starts[low] ?? 0) + 1 };
  };
}
