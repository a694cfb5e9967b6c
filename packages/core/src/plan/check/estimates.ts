import type { PlanDraft } from "../definition/draft.ts";
import type { EstimateDraft } from "../definition/estimate.ts";
import type { Reading } from "../definition/reading.ts";
import { shapeRules } from "../shapes.ts";
import type { Place } from "../source/place.ts";
import { TOLERANCE } from "./tolerance.ts";

/** The rules of estimates: order, what each shape needs, outcomes that are distinct and sum to 1. */
export function checkEstimates(plan: PlanDraft, reading: Reading): void {
  for (const { draft, place } of reading.estimates) {
    if (draft.outcomes !== undefined) checkOutcomes(draft.outcomes, place, reading);
    else if (draft.value === undefined) checkRange(draft, place, plan, reading);
  }
}

function checkRange(draft: EstimateDraft, place: Place, plan: PlanDraft, reading: Reading): void {
  const { low, likely, high } = draft;
  const problem = (code: string, rule: string, remedy: string) => reading.report(place, code, rule, remedy);
  if (low !== undefined && high !== undefined && low > high) {
    problem(
      "estimate-order",
      `low ${low} is above high ${high}; low <= likely <= high.`,
      "Put the smallest first.",
    );
    return;
  }
  if (low !== undefined && likely !== undefined && likely < low) {
    problem(
      "estimate-order",
      `likely ${likely} is below low ${low}; low <= likely <= high.`,
      orRaise("likely", low),
    );
    return;
  }
  if (high !== undefined && likely !== undefined && likely > high) {
    problem(
      "estimate-order",
      `likely ${likely} is above high ${high}; low <= likely <= high.`,
      orRaise("high", likely),
    );
    return;
  }
  if (low === undefined || high === undefined || low === high) return;

  const shape = draft.shape ?? plan.estimates?.shape ?? "pert";
  const bounds = draft.bounds ?? plan.estimates?.bounds ?? "extremes";
  const by = draft.shape === undefined && plan.estimates?.shape !== undefined ? " (from `estimates`)" : "";
  const { takesLikely, ends } = shapeRules[shape];
  if (takesLikely) {
    if (likely === undefined && !hasKey(place, "likely")) {
      problem(
        "estimate-shape",
        `The shape ${shape}${by} needs \`likely\`.`,
        "Add `likely`, or use shape: uniform.",
      );
    }
  } else if (likely !== undefined) {
    const remedy = "Write { low, high } only, or give it shape: pert or triangular.";
    problem("estimate-shape", `The shape ${shape}${by} takes no \`likely\`.`, remedy);
  }
  if (ends !== "both" && bounds === "extremes") {
    const remedy = "Add bounds: p10-p90 or p5-p95, or use shape: pert.";
    problem("estimate-shape", `The shape ${shape}${by} has no extremes; its bounds are percentiles.`, remedy);
  }
  if (ends === "above-nought" && low <= 0) {
    problem(
      "estimate-shape",
      `The shape ${shape}${by} needs low above 0; it is ${low}.`,
      "Raise low, or use shape: normal.",
    );
  }
}

function orRaise(key: string, to: number): string {
  return `Raise ${key} to at least ${to}, or correct the other.`;
}

function hasKey(place: Place, key: string): boolean {
  return place.node.kind === "map" && place.node.entries.has(key);
}

function checkOutcomes(
  outcomes: NonNullable<EstimateDraft["outcomes"]>,
  place: Place,
  reading: Reading,
): void {
  const seen = new Set<number>();
  let sum = 0;
  let complete = true;
  for (const outcome of outcomes) {
    const { value, chance } = outcome;
    if (value !== undefined) {
      if (seen.has(value)) {
        const at = reading.placeOf(outcome, "value");
        reading.report(
          at,
          "outcome-repeated",
          "Each value stands once.",
          "Add its chances up in one outcome.",
        );
      }
      seen.add(value);
    }
    if (chance === undefined) complete = false;
    else sum += chance;
    if (chance === 0) {
      const at = reading.placeOf(outcome, "chance");
      reading.report(at, "outcome-chance", "A chance is above 0.", "Leave out what cannot happen.");
    }
  }
  const written = place.node.kind === "map" ? place.node.entries.get("outcomes")?.node : undefined;
  if (written?.kind === "list" && written.items.length !== outcomes.length) complete = false;
  if (complete && Math.abs(sum - 1) > TOLERANCE) {
    const total = Number(sum.toPrecision(12));
    reading.report(
      place,
      "outcome-sum",
      `The chances sum to ${total}; they must sum to 1.`,
      "Correct the chances.",
    );
  }
}
