import { beginning } from "./table/beginning.ts";
import { estimating } from "./table/estimating.ts";
import { exchange } from "./table/exchange.ts";
import { explaining } from "./table/explaining.ts";
import { findings } from "./table/findings.ts";
import { live } from "./table/live.ts";
import { looking } from "./table/looking.ts";
import { signing } from "./table/signing.ts";
import type { VerbRule } from "./verbRule.ts";

const rows = [
  ...explaining,
  ...looking,
  ...signing,
  ...live,
  ...findings,
  ...estimating,
  ...exchange,
  ...beginning,
] as const;
/** A verb by name: what `main.ts` has to know how to do. */
export type VerbName = (typeof rows)[number]["name"];

/** Every verb there is, in the order of help. `help`, the check of the call and its suggestions all read this list. */
export const verbs: readonly (VerbRule & { name: VerbName })[] = rows;
