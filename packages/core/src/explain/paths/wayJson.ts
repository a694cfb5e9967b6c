import type { Model } from "../../simulate/model.ts";
import type { PathWay } from "../types.ts";
import { named } from "./boundJson.ts";
import type { Way } from "./pathCounts.ts";

/** A way with the name of the person in it. */
export function wayJson(model: Model, way: Way | undefined): PathWay {
  if (way === undefined) return { kind: "plan-start" };
  const person = model.people[way.person];
  return { kind: way.kind, ...(person === undefined ? {} : { person: named(person) }) };
}
