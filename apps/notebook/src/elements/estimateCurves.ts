import type { Plan } from "@leeway/core";
import type { LitElement, ReactiveController } from "lit";
import { estimateAt } from "../plan/estimateAt.ts";
import { statedAt } from "../plan/stated.ts";
import { typedEstimate } from "../plan/typedEstimate.ts";
import { CurvePlace } from "./curvePlace.ts";
import { isGivenUp, isTyped } from "./field.ts";
import { LeewayEstimateCurve } from "./leewayEstimateCurve.ts";
import { pageTurns } from "./pageTurns.ts";

interface Knows {
  readonly plan: Plan | undefined;
  readonly stated: unknown;
  /** Entries that wait. */
  readonly pending: unknown;
}

/**
 * Shows what the estimate of a row says, in any table of the page, while one of its three cells has the focus. The curve is made once and goes to
 * the row that is worked in, as its last cell, and is shown at that edge of the window where the row is not
 * (`curvePlace.ts`): it moves no row and hides neither this one nor its neighbours. Its fields carry `data-estimate`, the
 * path, with `data-unit` and `data-of` for its words.
 *
 * It takes its turn on the page (`turns.ts`): whoever enters a figure and goes on to the next row sees the answer first.
 */
export class EstimateCurves implements ReactiveController {
  #host: LitElement;
  #knows: () => Knows | undefined;
  #cell = document.createElement("td");
  #curve = new LeewayEstimateCurve();
  #place = new CurvePlace(this.#cell);
  #path = "";
  /** The row it goes to when its turn comes; undefined where it stays. */
  #next: HTMLElement | undefined;
  #shown: Knows | undefined;
  /** Tables are redrawn in turns of their own, after the page that hands them the plan. */
  #cells = new MutationObserver(() => this.#soon());
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
    this.#host.addEventListener("input", this.#typed);
    this.#host.addEventListener("keydown", this.#before, true);
    this.#host.addEventListener("keydown", this.#keys);
  }

  hostDisconnected(): void {
    this.#host.removeEventListener("focusin", this.#enter);
    this.#host.removeEventListener("focusout", this.#leave);
    this.#host.removeEventListener("input", this.#typed);
    this.#host.removeEventListener("keydown", this.#before, true);
    this.#host.removeEventListener("keydown", this.#keys);
    this.#close();
  }

  hostUpdated(): void {
    if (!this.#cell.isConnected) return;
    const [was, now] = [this.#shown, this.#knows()];
    if (was?.plan !== now?.plan || was?.stated !== now?.stated || was?.pending !== now?.pending) this.#soon();
  }

  #enter = (event: Event): void => {
    const input = event.target;
    if (!takesEstimate(input)) return;
    const row = input.closest("tr");
    if (row === null) return;
    this.#path = input.dataset.estimate ?? "";
    this.#next = row;
    this.#soon();
  };

  #leave = (event: FocusEvent): void => {
    const row = this.#next ?? this.#cell.closest("tr");
    const { relatedTarget } = event;
    if (
      this.#curve.drawing ||
      row === null ||
      (relatedTarget instanceof Node && row.contains(relatedTarget)) ||
      // It goes there when its turn comes: taken away first, the page would be laid out twice before the answer.
      takesEstimate(relatedTarget)
    )
      return;
    this.#close();
  };

  /** Typing brings it back where Escape sent it away. */
  #typed = (event: Event): void => {
    if (this.#cell.isConnected || this.#next !== undefined) this.#soon();
    else this.#enter(event);
  };

  #soon(): void {
    pageTurns.take(this.#host, this.#show);
  }

  #show = (): void => {
    const row = this.#next;
    this.#next = undefined;
    if (row?.isConnected === true && this.#cell.parentElement !== row) {
      row.append(this.#cell);
      this.#place.open(row);
      this.#cells.disconnect();
      this.#cells.observe(row, { subtree: true, attributeFilter: ["data-shown"] });
    }
    if (!this.#cell.isConnected) return;
    const knows = this.#knows();
    const { plan, stated } = knows ?? {};
    this.#shown = knows;
    const before = plan === undefined ? undefined : estimateAt(plan, this.#path);
    const of = `input[data-estimate="${CSS.escape(this.#path)}"]`;
    const inputs = [...(this.#cell.closest("table") ?? this.#host).querySelectorAll<HTMLInputElement>(of)];
    const [first] = inputs;
    this.#curve.about = {
      name: first?.dataset.of ?? "",
      unitWords: first?.dataset.unit ?? "",
      of: takes(this.#path),
    };
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
    if (event.key !== "Escape" || (!this.#cell.isConnected && this.#next === undefined)) return;
    if (this.#givesUp) {
      this.#soon();
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
    this.#next = undefined;
    this.#cells.disconnect();
    pageTurns.drop(this.#host);
    this.#place.close();
    this.#cell.remove();
    this.#closing = false;
  }
}

function takesEstimate(target: EventTarget | null): target is HTMLInputElement {
  return target instanceof HTMLInputElement && target.dataset.estimate !== undefined && !target.readOnly;
}

function takes(path: string): "takes" | "delays" | "costs" {
  if (/\.delay$/.test(path)) return "delays";
  return /\.(duration|effort|remaining|lag|wait)$/.test(path) ? "takes" : "costs";
}
