import type { Edit } from "./edit.ts";
import { statedAt } from "./stated.ts";

/** The edits that count a benefit in money, or in units: its estimate goes over, and what is said of units goes with them. */
export function countedIn(to: "amount" | "quantity", path: string, stated: unknown): Edit[] {
  const from = to === "amount" ? "quantity" : "amount";
  const said = (key: string): boolean => statedAt(stated, `${path}.${key}`) !== undefined;
  const gone = [from, ...(to === "amount" ? ["unit", "worth"] : [])].filter(said);
  return [
    { path: `${path}.${to}`, value: statedAt(stated, `${path}.${from}`) },
    ...(to === "quantity" ? [{ path: `${path}.unit`, value: "units" }] : []),
    ...gone.map((key) => ({ path: `${path}.${key}`, value: undefined })),
  ];
}
