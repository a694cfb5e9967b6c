import type { Problem, Refusal } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";

/** A refusal of the library as a problem of the call. */
export function refusalProblem({ code, received, rule, remedy }: Refusal): Problem {
  return callProblem(code, received, rule, remedy);
}
