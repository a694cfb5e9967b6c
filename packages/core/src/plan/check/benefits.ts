import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";

/** A benefit is money or a quantity; lateness needs a day; an overhead costs something. */
export function checkBenefits(plan: PlanDraft, reading: Reading): void {
  for (const benefit of plan.benefits ?? []) {
    const place = reading.placeOf(benefit);
    const written = (key: string) => place.node.kind === "map" && place.node.entries.has(key);
    if (written("amount") && written("quantity")) {
      const rule = "A benefit has `amount` or `quantity`, not both.";
      reading.report(
        reading.placeOf(benefit, "quantity"),
        "amount-and-quantity",
        rule,
        "Keep one of the two.",
      );
    }
    if (!written("amount") && !written("quantity")) {
      const remedy = "Add `amount` in money, or `quantity` and `unit`.";
      reading.report(place, "no-amount", "A benefit needs `amount` or `quantity`.", remedy, {
        received: benefit.id ?? "",
      });
    }
    if (written("amount") && !written("quantity")) {
      for (const key of ["unit", "worth"]) {
        if (!written(key)) continue;
        reading.report(
          reading.placeOf(benefit, key),
          "without-quantity",
          `\`${key}\` belongs to a \`quantity\`.`,
          "Remove it.",
        );
      }
    }
    if (!written("per")) {
      const rule = "Without `per` it is read as a value per year.";
      reading.report(place, "no-period", rule, "Add `per`.", {
        received: benefit.id ?? "",
        severity: "warning",
      });
    }
  }

  const { lateness } = plan;
  if (lateness !== undefined && lateness.after === undefined && plan.commitment?.finishBy === undefined) {
    const remedy = "Add `after`, or `commitment: { finishBy: ... }`.";
    reading.report(
      reading.placeOf(lateness),
      "no-deadline",
      "Nothing says after which day it is late.",
      remedy,
      {
        received: "",
        severity: "warning",
      },
    );
  }
  for (const overhead of plan.overheads ?? []) {
    if (overhead.perDay !== undefined) continue;
    reading.report(
      reading.placeOf(overhead),
      "no-amount",
      "Without `perDay` it costs nothing.",
      "Add `perDay`.",
      {
        received: overhead.id ?? "",
        severity: "warning",
      },
    );
  }
}
