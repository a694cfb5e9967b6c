/** One step into a document: a key of a map or a place in a list. */
export type Step = string | number;

/** `tasks[3].after[0].lag` as steps. */
export function pathSteps(path: string): Step[] {
  const steps: Step[] = [];
  for (const part of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (part[2] !== undefined) steps.push(Number(part[2]));
    else if (part[1] !== undefined) steps.push(part[1]);
  }
  return steps;
}
