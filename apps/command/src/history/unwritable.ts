import type { Problem } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { WriteProtected } from "../files/writeWhole.ts";
import { Locked } from "./withLock.ts";

/** Why a file could not be written, as a problem; whatever else was thrown is thrown again. */
export function unwritable(path: string, error: unknown): Problem {
  if (error instanceof Locked) {
    const rule = "Another leeway is writing it and does not end.";
    return callProblem("locked", path, rule, `If none runs, remove ${error.message} and try again.`);
  }
  if (error instanceof WriteProtected || (error instanceof Error && "code" in error && "syscall" in error))
    return whyNotWritten(path, error);
  throw error;
}
