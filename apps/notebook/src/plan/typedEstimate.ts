import { type Estimate, type FixedEstimate, type RangeEstimate, SHAPES, shapeRules } from "@leeway/core";
import type { EstimateCells } from "./estimateEntry.ts";
import { readNumber } from "./readNumber.ts";

/**
 * The estimate that three cells say as they stand now, while they are typed; undefined while they say none: a part is
 * missing, cannot be read, or is out of order.
 *
 * @param before  What it was: its shape and bounds stay.
 * @param usual  The plan's own `estimates`, for what had no range before.
 */
export function typedEstimate(
  cells: EstimateCells,
  before: Estimate,
  usual: unknown,
): RangeEstimate | FixedEstimate | undefined {
  const value = (text: string): number | undefined | "?" => {
    if (text.trim() === "") return undefined;
    const read = readNumber(text, "", "");
    return "value" in read ? read.value : "?";
  };
  const [low, likely, high] = [value(cells.low), value(cells.likely), value(cells.high)];
  if (low === "?" || likely === "?" || high === "?") return undefined;
  const { unit } = before;
  if (low === undefined && high === undefined)
    return likely === undefined ? undefined : { kind: "fixed", value: likely, unit };
  if (low === undefined || high === undefined) return undefined;
  const { shape, bounds } = before.kind === "range" ? before : usualShape(usual);
  const { takesLikely, ends } = shapeRules[shape];
  if (takesLikely ? likely === undefined : likely !== undefined) return undefined;
  if (low > high || (likely !== undefined && (likely < low || likely > high))) return undefined;
  if (low === high) return { kind: "fixed", value: low, unit };
  if (ends !== "both" && bounds === "extremes") return undefined;
  if (ends === "above-nought" && low <= 0) return undefined;
  return { kind: "range", low, high, shape, bounds, unit, ...(likely === undefined ? {} : { likely }) };
}

function usualShape(usual: unknown): Pick<RangeEstimate, "shape" | "bounds"> {
  const said: Record<string, unknown> = typeof usual === "object" && usual !== null ? { ...usual } : {};
  const ends = ["extremes", "p10-p90", "p5-p95"] as const;
  return {
    shape: SHAPES.find((shape) => shape === said.shape) ?? "pert",
    bounds: ends.find((bounds) => bounds === said.bounds) ?? "extremes",
  };
}
