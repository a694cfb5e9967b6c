export { problemFamilies } from "./problemFamilies.ts";
export type { ProblemFamily, ProblemRule } from "./types.ts";
