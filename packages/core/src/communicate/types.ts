import type { Id, InformEvery, IsoDate } from "../plan/types.ts";

/** One occasion on which somebody has to be told something. */
export interface Due {
  date: IsoDate;
  /** The day of the rhythm, where it held no work and the occasion was moved to the next day that does. */
  movedFrom?: IsoDate;
  stakeholder: { id: Id; name: string };
  every: InformEvery;
  /** Who sees to it; absent where the plan does not say. */
  owner?: { id: Id; name: string };
  how?: string;
  what?: string;
  /** The milestone it is about. */
  milestone?: { id: Id; name: string };
}

/** What is to be told to whom until the committed finish, and what the plan leaves open about it. */
export interface DueList {
  /** The committed finish, up to which the list goes. */
  until: IsoDate;
  /** From this day on; absent: from the beginning. */
  from?: IsoDate;
  due: Due[];
  /** Stakeholders who are to be informed, but the plan does not say how often. */
  without: { id: Id; name: string; missing: ("every" | "owner" | "how" | "what")[] }[];
}
