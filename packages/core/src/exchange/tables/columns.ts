import type { CellKind } from "./cell.ts";

/** A column of a table: its heading, the key of the plan it holds, and how its cells read. */
export interface Column {
  heading: string;
  key: string;
  kind: CellKind;
  /** Written even where no row has it. */
  always?: true;
}

const column = (key: string, kind: CellKind = "text", heading = key): Column => ({ heading, key, kind });
const always = (key: string, kind: CellKind = "text"): Column => ({ ...column(key, kind), always: true });

/** Every key of a task: a table of them holds the whole task. */
export const TASK_COLUMNS: readonly Column[] = [
  always("id"),
  always("name"),
  always("phase"),
  always("milestone", "flag"),
  always("duration", "estimate"),
  always("effort", "estimate"),
  always("after", "list"),
  always("people", "list"),
  always("target"),
  always("cost", "estimate"),
  column("due"),
  column("costPerDay", "estimate"),
  column("scope"),
  column("notBefore"),
  column("holdToPlan", "flag"),
  column("calendar"),
  column("unbroken"),
  column("priority", "number"),
  column("detail"),
  column("detailOf"),
  column("chance", "number"),
  column("onlyIf"),
  column("responsible", "list"),
  column("accountable", "list"),
  column("consulted", "list"),
  column("informed", "list"),
  column("estimatedBy", "list"),
  column("basis"),
  column("started"),
  column("finished"),
  column("remaining", "estimate"),
  column("spent", "number"),
  column("opinions", "list"),
  column("was"),
  column("note"),
];

export const PERSON_COLUMNS: readonly Column[] = [
  always("id"),
  always("name"),
  always("role"),
  always("rate", "number"),
  always("share", "number"),
  always("capacity", "number"),
  always("calendar"),
  always("away", "list"),
  column("couldAdd", "list"),
  column("was"),
  column("note"),
];

const ENTRY = [
  column("cause"),
  column("owner"),
  column("group"),
  column("status"),
  column("expires"),
  column("onlyIf"),
  column("was"),
  column("note"),
];
const impactColumns = [
  column("tasks", "list"),
  column("phase"),
  column("delay", "estimate"),
  column("factor", "estimate"),
  column("wait", "estimate"),
  column("cost", "estimate"),
  column("note"),
];

/** The register is one table of four kinds of row; a heading means what stands here for the kind. */
export const REGISTER_COLUMNS: Readonly<
  Record<"risk" | "assumption" | "impact" | "response", readonly Column[]>
> = {
  risk: [column("name"), column("probability", "number"), ...ENTRY],
  assumption: [
    column("statement", "text", "name"),
    column("chanceWrong", "number", "probability"),
    column("reviewBy"),
    column("signpost"),
    column("tripped"),
    ...ENTRY,
  ],
  impact: impactColumns,
  response: [
    column("action", "text", "name"),
    column("probability", "number"),
    column("owner"),
    column("due"),
    column("cost", "estimate"),
    column("adopted", "flag"),
    column("scale", "number"),
    column("was"),
    column("note"),
  ],
};

/** Headings of the register, in order. */
export const REGISTER_HEADINGS = [
  "what",
  "of",
  "id",
  "name",
  "probability",
  "owner",
  "tasks",
  "phase",
  "delay",
  "factor",
  "wait",
  "cost",
  "due",
  "adopted",
  "scale",
  "cause",
  "group",
  "status",
  "expires",
  "onlyIf",
  "reviewBy",
  "signpost",
  "tripped",
  "was",
  "note",
] as const;
