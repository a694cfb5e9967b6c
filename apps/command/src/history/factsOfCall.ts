import type { FactKind, ProgressFact } from "@leeway/core";
import type { Call } from "../call/parseCall.ts";

const KINDS: readonly FactKind[] = [
  "started",
  "finished",
  "remaining",
  "spent",
  "occurred",
  "closed",
  "tripped",
  "cost",
  "days",
];

/** What the options of a call report, in their order: `--started dig=2027-03-01` and the like. */
export function factsOfCall({ options }: Pick<Call, "options">): ProgressFact[] {
  return KINDS.flatMap((what) =>
    (options.get(what) ?? []).map((text): ProgressFact => {
      const [, id = "", value] = /^([^=]*)(?:=(.*))?$/s.exec(text) ?? [];
      const said = `--${what} ${text}`;
      return value === undefined ? { what, id: id.trim(), said } : { what, id: id.trim(), value, said };
    }),
  );
}
