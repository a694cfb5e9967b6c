import type { Estimate, Id, IsoDate, Noted } from "./values.ts";

/** What may be done about a risk: its cost, and the chance and effects it leaves. */
export interface Response extends Noted {
  id: Id;
  action: string;
  owner?: Id;
  due?: IsoDate;
  cost?: Estimate;
  adopted: boolean;
  probability?: number;
  scale: number;
}

/** What a register entry does when it occurs: delay, factor, wait or cost. */
export interface Impact {
  /** The tasks it touches; `phase` is already resolved to its tasks, milestones excluded. */
  tasks: Id[];
  phase?: string;
  delay?: Estimate;
  factor?: Estimate;
  wait?: Estimate;
  cost?: Estimate;
}

/** What risks and assumptions have in common. */
export interface RegisterEntry extends Noted {
  kind: "risk" | "assumption";
  id: Id;
  /** A risk's name, an assumption's statement. */
  name: string;
  owner?: Id;
  /** A risk's `probability`, an assumption's `chanceWrong`. */
  probability: number;
  impacts: Impact[];
  responses: Response[];
  group?: string;
  status: "open" | "occurred" | "closed";
  /** What it did in fact, once occurred: takes the place of its impacts' ranges. */
  actual?: {
    /** Money in all. */
    cost?: number;
    /** Working days, of each task that its impacts delay or make wait. */
    days?: number;
  };
  expires?: IsoDate;
  onlyIf?: Id;
}

/** Something that may happen. */
export interface Risk extends RegisterEntry {
  kind: "risk";
  cause?: string;
}

/** Something taken to be true, with what happens if it is not. */
export interface Assumption extends RegisterEntry {
  kind: "assumption";
  cause?: string;
  reviewBy?: IsoDate;
  signpost?: string;
  /** The day its signpost was seen; changes no number. */
  tripped?: IsoDate;
}
