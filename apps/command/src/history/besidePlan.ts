import { lstatSync, realpathSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** The files kept beside `NAME.plan.yaml`: `NAME.history.jsonl`, and what was set aside of it when it was torn. */
export interface BesidePlan {
  history: string;
  torn: string;
  /** The folder of kept versions, `NAME.versions`. */
  versions: string;
}

/**
 * Where the history and the versions of a plan stand. A plan called otherwise keeps its name without `.yaml`, `.yml` or
 * `.json`; one that is reached by a link has them beside the file itself, so that it has them once.
 */
export function besidePlan(plan: string): BesidePlan {
  const file = isLink(plan) ? realpathSync(plan) : plan;
  const name = basename(file).replace(/(?:\.plan)?\.(?:ya?ml|json)$/i, "");
  const at = (ending: string) => join(dirname(file), `${name}.${ending}`);
  return { history: at("history.jsonl"), torn: at("history.torn"), versions: at("versions") };
}

function isLink(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() === true;
}
