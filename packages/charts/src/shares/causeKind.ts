import type { CauseKind } from "@leeway/core";
import type { Fall } from "../waterfall/types.ts";

/** What kind of cause it is, in a word beside its name. */
export function causeWord(kind: CauseKind): string {
  switch (kind) {
    case "spread":
      return "range of estimates";
    case "risk":
      return "risk";
    case "assumption":
      return "assumption";
    case "cause":
      return "shared cause";
    case "people":
      return "limited people";
  }
}

/** Events of the register are plum, limited people outlined, ranges a tint of the ink. */
export function causeTint(kind: CauseKind): Fall["tint"] {
  if (kind === "risk" || kind === "assumption") return "register";
  return kind === "people" ? "people" : "range";
}
