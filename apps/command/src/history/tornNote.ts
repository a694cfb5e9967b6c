import { besidePlan } from "./besidePlan.ts";

/** That the history ended within a line, and where that piece is now. */
export function tornNote(plan: string, line: number): string {
  const { history, torn } = besidePlan(plan);
  return `${history}:${line}: this line was never finished (the program was stopped while it wrote). The piece is kept in ${torn}.`;
}
