import type { Plan, Task } from "@leeway/core";
import { html, type LitElement, nothing, type TemplateResult } from "lit";
import type { Pending } from "../store/state.ts";
import { taskDetails } from "./taskDetails.ts";

interface Host extends LitElement {
  stated: unknown;
  pending: ReadonlyMap<string, Pending>;
  readonly: boolean;
}

/** Which tasks of a table have their details open, the buttons that turn that, and the details themselves. */
export class TaskForms {
  #host: Host;
  /** Ids of the tasks whose details were opened. */
  #open = new Set<string>();

  constructor(host: Host) {
    this.#host = host;
  }

  button(task: Task, path: string): TemplateResult {
    return html`<button type="button" class="more-turn" aria-expanded=${this.#isOpen(task, path) ? "true" : "false"}
      @click=${() => this.#turn(task.id)}>Details<span class="unseen"> of ${task.name}</span></button>`;
  }

  /** Made only while they are open: a long table does not carry a form for each of its rows. */
  form(plan: Plan, task: Task, path: string): TemplateResult | typeof nothing {
    if (!this.#isOpen(task, path)) return nothing;
    const { stated, pending, readonly } = this.#host;
    return html`<td role="cell" class="more">${taskDetails({ host: this.#host, plan, stated, pending, readonly, task, path })}</td>`;
  }

  /** What was entered there and waits is not hidden. */
  #isOpen(task: Task, path: string): boolean {
    if (this.#open.has(task.id)) return true;
    const ofRow = ["name", task.effort === undefined ? "duration" : "effort", "after", "phase"];
    return [...this.#host.pending.keys()].some(
      (field) => field.startsWith(`${path}.`) && !ofRow.some((key) => field === `${path}.${key}`),
    );
  }

  #turn(id: string): void {
    if (!this.#open.delete(id)) this.#open.add(id);
    this.#host.requestUpdate();
  }
}
