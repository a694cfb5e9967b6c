import type { Plan, RegisterEntry } from "../../plan/types.ts";
import type { SettledEntry } from "./types.ts";

/** Entries that can no longer happen, or have: closed, occurred, or past their window at the status date. By id. */
export function settledEntries(plan: Plan): { entry: RegisterEntry; how: SettledEntry["how"] }[] {
  const { statusDate } = plan;
  return [...plan.risks, ...plan.assumptions]
    .flatMap((entry: RegisterEntry): { entry: RegisterEntry; how: SettledEntry["how"] }[] => {
      if (entry.status !== "open") return [{ entry, how: entry.status }];
      const past = statusDate !== undefined && entry.expires !== undefined && entry.expires < statusDate;
      return past ? [{ entry, how: "expired" }] : [];
    })
    .sort((a, b) => (a.entry.id < b.entry.id ? -1 : 1));
}
