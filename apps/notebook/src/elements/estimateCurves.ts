import type { Plan } from "@leeway/core";
import type { LitElement, ReactiveController } from "lit";
import { estimateAt } from "../plan/estimateAt.ts";
import { statedAt } from "../plan/stated.ts";
import { typedEstimate } from "../plan/typedEstimate.ts";
import { CurvePlace } from "./curvePlace.ts";
import { isGivenUp, isTyped } from "./field.ts";
import { LeewayEstimateCurve } from "./leewayEstimateCurve.ts";

interface Knows {
  readonly plan: Plan | undefined;
  readonly stated: unknown;
}

/**
 * Shows what the estimate of a row says, in any table of the page, while one of its three cells has the focus. The curve is made once and goes to
 * the row that is worked in, as its last cell, and is shown at that edge of the window where the row is not
 * (`curvePlace.ts`): it moves no row and hides neither this one nor its neighbours. Its fields carry `data-estimate`, the
 * path, with `data-unit` and `data-of` for its words.
 */
export class EstimateCurves implements ReactiveController {
  #host: LitElement;
  #knows: () => Knows | undefined;
  #cell = document.createElement("td");
  #curve = new LeewayEstimateCurve();
  #place = new CurvePlace(this.#cell);
  #path = "";
  #closing = false;
  #givesUp = false;

  /** @param knows  The plan as it stands, and as it is stated. */
  constructor(host: LitElement, knows: () => Knows | undefined) {
    this.#host = host;
    this.#knows = knows;
    this.#cell.className = "curve-cell";
    this.#cell.setAttribute("role", "cell");
    this.#cell.popover = "manual";
    this.#cell.append(this.#curve);
  }

  hostConnected(): void {
    this.#host.addEventListener("focusin", this.#enter);
    this.#host.addEventListener("focusout", this.#leave);
    this.#host.addEventListener("input", this.#show);
    this.#host.addEventListener("keydown", this.#before, true);
    this.#host.addEventListener("keydown", this.#keys);
  }

  hostDisconnected(): void {
    this.#host.removeEventListener("focusin", this.#enter);
    this.#host.removeEventListener("focusout", this.#leave);
    this.#host.removeEventListener("input", this.#show);
    this.#host.removeEventListener("keydown", this.#before, true);
    this.#host.removeEventListener("keydown", this.#keys);
    this.#close();
  }

  hostUpdated(): void {
    if (this.#cell.isConnected) this.#show();
  }

  #enter = (event: Event): void => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement) || input.dataset.estimate === undefined || input.readOnly)
      return;
    const row = input.closest("tr");
    if (row === null) return;
    this.#path = input.dataset.estimate;
    this.#curve.about = {
      name: input.dataset.of ?? "",
      unitWords: input.dataset.unit ?? "",
      of: takes(this.#path),
    };
    if (this.#cell.parentElement !== row) {
      row.append(this.#cell);
      this.#place.open(row);
    }
    this.#show();
  };

  #leave = (event: FocusEvent): void => {
    const row = this.#cell.closest("tr");
    if (
      this.#curve.drawing ||
      row === null ||
      (event.relatedTarget instanceof Node && row.contains(event.relatedTarget))
    )
      return;
    this.#close();
  };

  /** Typing brings it back where Escape sent it away. */
  #show = (event?: Event): void => {
    if (event !== undefined && !this.#cell.isConnected) this.#enter(event);
    if (!this.#cell.isConnected) return;
    const { plan, stated } = this.#knows() ?? {};
    const before = plan === undefined ? undefined : estimateAt(plan, this.#path);
    const of = `input[data-estimate="${CSS.escape(this.#path)}"]`;
    const inputs = [...this.#host.querySelectorAll<HTMLInputElement>(of)];
    this.#curve.typed = inputs.some((one) => one.value !== one.dataset.shown);
    const [low, likely, high] = inputs.map((one) => one.value);
    if (before === undefined || low === undefined || likely === undefined || high === undefined) {
      this.#close();
      return;
    }
    this.#curve.estimate = typedEstimate({ low, likely, high }, before, statedAt(stated, "estimates"));
  };

  /** Heard before the cell hears it, which then shows again what the plan says. */
  #before = ({ key, target }: KeyboardEvent): void => {
    this.#givesUp = key === "Escape" && isTyped(target) && isGivenUp(target);
  };

  /** One thing for each Escape: what was typed is given up first, and the curve shows so; the next one takes the curve away. */
  #keys = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || !this.#cell.isConnected) return;
    if (this.#givesUp) {
      this.#show();
      return;
    }
    // Whoever is in it goes back to the estimate.
    if (this.#cell.contains(document.activeElement))
      this.#host.querySelector<HTMLElement>(`input[data-estimate="${CSS.escape(this.#path)}"]`)?.focus();
    this.#close();
  };

  /** A focus that goes with it is not one that leaves it. */
  #close(): void {
    if (this.#closing) return;
    this.#closing = true;
    this.#place.close();
    this.#cell.remove();
    this.#closing = false;
  }
}

function takes(path: string): "takes" | "delays" | "costs" {
  if (/\.delay$/.test(path)) return "delays";
  return /\.(duration|effort|remaining|lag|wait)$/.test(path) ? "takes" : "costs";
}
