import type { Shape } from "../../plan/types.ts";
import { standardLaw } from "../shapes/standardLaw.ts";
import { lognormalTable } from "./lognormalTable.ts";
import { pertTable } from "./pertTable.ts";
import { tabulate } from "./tabulate.ts";

// Tables by standard shape. A plan repeats few shapes, an edited plan repeats nearly all of them; when the store is
// full it starts again, which costs time and changes no number.
const limit = 512;
const store = new Map<string, Float64Array>();

/** The table of a standard law, shared by all estimates of that shape; 14.6 KB. Read only. */
export function standardTable(shape: Shape, parameter: number): Float64Array {
  const key = `${shape} ${parameter}`;
  const known = store.get(key);
  if (known !== undefined) return known;
  const table = build(shape, parameter);
  if (store.size >= limit) store.clear();
  store.set(key, table);
  return table;
}

function build(shape: Shape, parameter: number): Float64Array {
  if (shape === "pert") return pertTable(parameter);
  if (shape === "lognormal") return lognormalTable(parameter, standardTable("normal", 0));
  return tabulate(standardLaw(shape, parameter));
}
