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

/** Of these a list of ids may stand in one word, as in `--occurred rain,frost`; `5,7,14` of others is a range. */
const LISTED: ReadonlySet<FactKind> = new Set(["started", "finished", "occurred", "closed", "tripped"]);

/**
 * What the options of a call report, in their order: `--started dig=2027-03-01`, `--finished dig,pave=2027-03-05` and
 * the like.
 */
export function factsOfCall({ options }: Pick<Call, "options">): ProgressFact[] {
  return KINDS.flatMap((what) =>
    (options.get(what) ?? []).flatMap((text): ProgressFact[] => {
      const [, before = "", value] = /^([^=]*)(?:=(.*))?$/s.exec(text) ?? [];
      const ids = LISTED.has(what) ? before.split(",") : [before];
      if (ids.length === 1) {
        const one = { what, id: before.trim(), said: `--${what} ${text}` };
        return [value === undefined ? one : { ...one, value }];
      }
      return ids.map((each): ProgressFact => {
        const id = each.trim();
        if (value === undefined) return { what, id, said: `--${what} ${id}` };
        return { what, id, value, said: `--${what} ${id}=${value}` };
      });
    }),
  );
}
