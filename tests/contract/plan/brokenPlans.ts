import type { Broken } from "./broken/broken.ts";
import { ESTIMATES } from "./broken/estimates.ts";
import { FORM } from "./broken/form.ts";
import { CALENDARS, NAMES } from "./broken/names.ts";
import { OTHER, REGISTER } from "./broken/register.ts";
import { PROGRESS, TASKS } from "./broken/tasks.ts";
import { VALUES } from "./broken/values.ts";

/** One document for each rule of the format, with the least beside it. */
export const BROKEN: Broken[] = [
  ...FORM,
  ...VALUES,
  ...NAMES,
  ...CALENDARS,
  ...TASKS,
  ...PROGRESS,
  ...ESTIMATES,
  ...REGISTER,
  ...OTHER,
];
