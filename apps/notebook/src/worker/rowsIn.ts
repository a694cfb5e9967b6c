import type { Trials } from "@leeway/core";

type Row = Float64Array | Int32Array;

/** All rows of trials, in an order that depends on the plan alone; sums are not rows. */
export function rowsIn({ sums: _sums, ...rest }: Trials): Row[] {
  const rows: Row[] = [];
  const collect = (value: unknown): void => {
    if (value instanceof Float64Array || value instanceof Int32Array) rows.push(value);
    else if (typeof value === "object" && value !== null)
      for (const inner of Object.values(value)) collect(inner);
  };
  collect(rest);
  return rows;
}
