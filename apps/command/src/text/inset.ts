import { wrap } from "./page.ts";

/** A paragraph two columns in, as it stands under a heading or a table. */
export function inset(text: string, width: number): string[] {
  return wrap(text, width - 2).map((line) => `  ${line}`);
}
