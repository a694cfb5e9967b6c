import type { Id } from "../../plan/types.ts";
import type { Count, Portion } from "../../units.ts";

/** Responsible: does it. Accountable: answers for it. Consulted before, informed after. */
export type Role = "R" | "A" | "C" | "I";

/** One task of the matrix. */
export interface RoleRow {
  kind: "task" | "phase";
  /** The id of a task, the name of a phase. */
  id: string;
  name: string;
  phase?: string;
  /** One entry for each of `RoleMatrix.people`: the roles in the order R A C I; empty for none. */
  roles: Role[][];
}

/** A row that breaks the rule of one accountable, or that nobody does. */
export interface RoleFault {
  code: "no-accountable" | "many-accountable" | "no-responsible";
  row: string;
  name: string;
  /** Those accountable, where they are many. */
  who: { id: Id; name: string }[];
}

/** How much stands on one person. */
export interface RoleLoad {
  id: Id;
  name: string;
  /** Rows of each role. */
  responsible: Count;
  accountable: Count;
  consulted: Count;
  informed: Count;
  /** Part of all rows that somebody is accountable for, 0 to 1. */
  part: Portion;
}

/** Who does, answers for, is asked about and is told of each task. */
export interface RoleMatrix {
  plan: { title: string; sha256: string };
  rows: RoleRow[];
  /** The columns: everybody who has a part, people first, in the order of the plan. */
  people: { id: Id; name: string; kind: "person" | "stakeholder" }[];
  faults: RoleFault[];
  /** Who is accountable for most, first. */
  load: RoleLoad[];
}
