import { basename, dirname, join } from "node:path";

/** The files kept beside `NAME.plan.yaml`: `NAME.history.jsonl`, and what was set aside of it when it was torn. */
export interface BesidePlan {
  history: string;
  torn: string;
}

/** Where the history of a plan stands. A plan called otherwise keeps its name without `.yaml`, `.yml` or `.json`. */
export function besidePlan(plan: string): BesidePlan {
  const name = basename(plan).replace(/(?:\.plan)?\.(?:ya?ml|json)$/i, "");
  const at = (ending: string) => join(dirname(plan), `${name}.${ending}`);
  return { history: at("history.jsonl"), torn: at("history.torn") };
}
