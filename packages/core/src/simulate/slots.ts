import type { Estimate } from "../plan/types.ts";
import { asWrittenValue } from "../sampling/index.ts";
import { type Amount, constant, type Slot } from "./model.ts";

/** Collects the estimates of a plan that are drawn; certain ones become constants. */
export interface SlotList {
  slots: Slot[];
  /** `cut`: draws and as-written values below zero become zero. */
  amount(
    estimate: Estimate | undefined,
    at: { key: string; item: string; purpose: string; cut: boolean },
  ): Amount;
}

export function slotList(): SlotList {
  const slots: Slot[] = [];
  return {
    slots,
    amount(estimate, { key, item, purpose, cut }) {
      if (estimate === undefined) return constant(0);
      const raw = asWrittenValue(estimate);
      const asWritten = cut && raw < 0 ? 0 : raw;
      if (estimate.kind === "fixed") return constant(asWritten);
      slots.push({ key, item, purpose, estimate, cut, asWritten });
      return { slot: slots.length - 1, value: asWritten };
    },
  };
}
