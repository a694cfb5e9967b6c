import { smallPlan } from "../../contract/command/leeway.ts";

/** What one verb does to the files of a folder in which `shed.plan.yaml` stands. */
export interface Family {
  name: string;
  /** Its call, the folder being the current one. */
  words: string[];
  /** Other files it needs. */
  files?: Record<string, string>;
}

export const PLAN = smallPlan.replace(
  "currency: EUR\n",
  "currency: EUR\niterations: 64\npeople: { id: ines, name: Ines }\napprovals: { who: ines }\n",
);

const PROGRESS = [
  "--status",
  "2027-02-05",
  "--started",
  "strip=2027-02-01",
  "--finished",
  "strip=2027-02-04",
];

/** Every way in which the command writes: into the plan, beside it, and elsewhere. */
export const FAMILIES: readonly Family[] = [
  {
    name: "record",
    words: ["record", "shed.plan.yaml", ...PROGRESS, "--today", "2027-02-06", "--workers", "1"],
  },
  { name: "history --add", words: ["history", "shed.plan.yaml", "--add", "--today", "2027-02-06"] },
  {
    name: "sign",
    words: ["sign", "shed.plan.yaml", "--as", "ines", "--today", "2027-01-20", "--despite-errors"],
  },
  {
    name: "import",
    words: ["import", "shed.plan.yaml", "--what", "tasks", "--read", "tasks.csv"],
    files: { "tasks.csv": "id,cost\r\nstrip,450\r\n" },
  },
  {
    name: "export --out",
    words: ["export", "shed.plan.yaml", "--what", "tasks", "--out", "out.csv", "--force"],
    files: { "out.csv": "what stood there before\n" },
  },
  { name: "new", words: ["new", "--yes", "--start", "2027-01-04", "--out", "fresh.plan.yaml"] },
];
