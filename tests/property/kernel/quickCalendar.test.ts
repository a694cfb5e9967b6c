import { expect, it } from "vitest";
import { lastDay, workCalendar } from "../../../packages/core/src/calendar/workCalendar.ts";
import { quickCalendar } from "../../../packages/core/src/kernel/quickCalendar.ts";
import { rng } from "./kernels.ts";

const random = rng(7);
const flagsOf = (works: (day: number) => boolean) =>
  Uint8Array.from({ length: lastDay + 1 }, (_, day) => (works(day) ? 1 : 0));

it.each([
  ["every day", flagsOf(() => true)],
  ["five days of seven", flagsOf((day) => day % 7 < 5)],
  ["rare days", flagsOf(() => random() < 0.02)],
  ["days too far apart", flagsOf(() => random() < 0.004)],
  ["a pause of 366 days", flagsOf((day) => day < 50 || day > 50 + 365)],
  ["a pause of 367 days", flagsOf((day) => day < 50 || day > 50 + 366)],
  ["no day", flagsOf(() => false)],
  ["every other day", flagsOf((day) => day % 2 === 1)],
])("quickCalendar(flags) is workCalendar(flags): %s", (_, flags) => {
  expect(quickCalendar(flags)).toEqual(workCalendar(flags));
});
