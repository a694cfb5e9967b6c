export type * from "./forecast/types.ts";
export { describeProblem, type Problem } from "./plan/problem.ts";
export type * from "./plan/types.ts";
export type { Design } from "./sampling/design.ts";
export { version } from "./version.ts";
