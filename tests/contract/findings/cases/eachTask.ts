import { cleanPlan, type Edits } from "../cleanPlan.ts";

const tasks = cleanPlan().tasks;
/** The tasks that take time. */
export const work = tasks.filter((task) => !("milestone" in task)).map(({ id }) => id);
/** The same edit of every task that takes time, or of all but a few. */
export const each = (key: string, value: unknown, but: string[] = []): Edits =>
  Object.fromEntries(work.filter((id) => !but.includes(id)).map((id) => [`tasks.${id}.${key}`, value]));
