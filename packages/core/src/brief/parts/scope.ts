import type { Plan } from "../../plan/types.ts";
import type { BriefScope } from "../types.ts";

/** Where the work stops: in, can be left out, out. */
export function briefScope({ purpose }: Plan): BriefScope {
  return {
    in: purpose.scopeIn.filter((item) => !item.optional).map(({ id, name }) => ({ id, name })),
    optional: purpose.scopeIn
      .filter((item) => item.optional)
      .map(({ id, name, lost }) => (lost === undefined ? { id, name } : { id, name, lost })),
    out: purpose.scopeOut,
    constraints: purpose.constraints,
  };
}
