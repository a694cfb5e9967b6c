import type { Comparison } from "../../explain/types.ts";
import type { Break, Drift, ForecastHistory, HistoryEntry, HistoryFacts } from "../../live/history/types.ts";
import type { StillMissing } from "../../live/record/types.ts";
import type { TriggerNow, TriggersNow } from "../../live/triggers/types.ts";
import type { Id, IsoDate } from "../../plan/types.ts";
import type { Drawn, PlanBound } from "./parts.ts";

/** What a report of progress changed, moved, tripped and left open. `written` false: it was only shown. */
export interface RecordedAnswer {
  plan: PlanBound;
  statusDate?: IsoDate;
  written: boolean;
  /** Ids of what the report changed, and of tasks it finished. */
  changed: Id[];
  finished: Id[];
  missing: StillMissing;
  /** As it is kept in the history. */
  forecast: HistoryFacts;
  /** Since the last forecast that was kept, else since the plan as it was. */
  moved: Pick<Comparison, "confidence" | "from" | "to" | "difference" | "moves">;
  triggers: TriggerNow[];
}

/** What moved from one kept forecast to the next; only the hashes where a version is not at hand. */
export interface HistoryStep extends Partial<Pick<Comparison, "difference" | "moves" | "stamp">> {
  /** SHA-256 of the plans. */
  from: string;
  to: string;
}

/** The forecasts that were kept, whether the chain of their hashes holds, and how the commitment drifted. */
export interface HistoryAnswer {
  plan: PlanBound;
  entries: HistoryEntry[];
  chain: { holds: boolean; breaks: Break[] } & Pick<ForecastHistory, "torn">;
  /** The last against the first; absent where nothing is kept. */
  moved?: Drift["moved"];
  /** Only with `--explain`. */
  steps?: HistoryStep[];
  triggers: TriggerNow[];
}

/** Where every agreed condition for coming back to the approvers stands. */
export interface TriggersAnswer extends Drawn, TriggersNow {
  plan: PlanBound & { statusDate?: IsoDate };
}
