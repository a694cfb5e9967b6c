import type { Helper } from "./helper.ts";
import { sparingly } from "./sparingly.ts";

/** Adds up what the threads say: what is done, and how far each is with what it is doing. */
export function progressOf(total: number, tell: ((done: number, total: number) => void) | undefined) {
  const report = sparingly(tell ?? (() => {}));
  const current = new Map<Helper, number>();
  let done = 0;
  const say = (): void => {
    let sum = done;
    for (const part of current.values()) sum += part;
    report(sum, total);
  };
  return {
    during(helper: Helper, part: number): void {
      current.set(helper, part);
      // The end is reported once, by `after`.
      if (part > 0 && done + part < total) say();
    },
    after(helper: Helper, part: number): void {
      current.delete(helper);
      done += part;
      say();
    },
  };
}
