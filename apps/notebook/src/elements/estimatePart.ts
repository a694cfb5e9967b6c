import type { Estimate } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { estimateCells, readEstimateCells, takesLikely } from "../plan/estimateEntry.ts";
import { boundsNames, reshape, shapeNames } from "../plan/reshape.ts";
import { statedAt } from "../plan/stated.ts";
import type { Pending } from "../store/state.ts";
import { outcomesWords } from "./estimateCellsView.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { messageId } from "./messageId.ts";

export interface EstimatePart {
  host: HTMLElement;
  /** What the part is, before its cells: "Delay, working days". */
  label: string;
  /** Of whom, for those who listen: "The drains are broken". */
  of: string;
  estimate: Estimate | undefined;
  path: string;
  stated: unknown;
  unit: string;
  pending: ReadonlyMap<string, Pending>;
  readonly: boolean;
}

const parts = ["low", "likely", "high"] as const;
const none = { low: "", likely: "", high: "" };
const certain: Estimate = { kind: "fixed", value: 0, unit: "days" };

/** A line of low, likely and high with its shape, for an estimate that may be missing: emptied, it is taken out. */
export function estimatePart(options: EstimatePart): TemplateResult {
  const { label, of, estimate, path, unit, host } = options;
  const said = `${of}: ${label.replace(/,.*/, "").toLowerCase()}`;
  const waits = options.pending.get(path);
  const committed = estimate === undefined ? none : estimateCells(estimate);
  if (committed === undefined || estimate?.kind === "outcomes") {
    return html`<div class="part"><span class="part-label form-label">${label}</span>
      <span class="part-words">${outcomesWords(estimate ?? certain, unit)}</span></div>`;
  }
  const commit = (part: (typeof parts)[number], text: string): void => {
    const cells = { ...committed, ...waits?.cells, [part]: text };
    if (parts.every((one) => cells[one].trim() === "")) {
      send(host, "plan-edit", { field: path, cells, edits: [{ path, value: undefined }] });
      return;
    }
    const stated = statedAt(options.stated, path);
    const result = readEstimateCells(cells, estimate ?? certain, path, stated, unit);
    if ("words" in result)
      send(host, "plan-refuse", { field: path, pending: { cells, words: result.words } });
    else send(host, "plan-edit", { field: path, cells, edits: result.edits });
  };
  const input = (part: (typeof parts)[number]): TemplateResult =>
    html`<label class="part-cell"><span class="form-label">${part}</span>${field({
      label: `${said}: ${part}, in ${unit}`,
      committed: committed[part],
      shown: waits?.cells[part],
      message: waits === undefined ? undefined : messageId(path),
      kind: "number",
      readonly: options.readonly || (part === "likely" && estimate !== undefined && !takesLikely(estimate)),
      commit: (text) => commit(part, text),
      drop: () => {
        if (waits !== undefined) send(host, "plan-drop", { field: path });
      },
    })}</label>`;
  return html`<div class="part"><span class="part-label form-label">${label}</span>
    ${parts.map(input)}${shapes(options, said)}
    ${fieldMessage(messageId(path), waits)}</div>`;
}

/** A line with the shape of an estimate whose figures stand elsewhere; nothing where it has none. */
export function shapePart(options: EstimatePart): TemplateResult | typeof nothing {
  if (options.estimate?.kind !== "range") return nothing;
  const said = `${options.of}: ${options.label.replace(/,.*/, "").toLowerCase()}`;
  return html`<div class="part"><span class="part-label form-label">${options.label.replace(/,.*/, "")}</span>
    ${shapes(options, said)}</div>`;
}

/** How the range is shaped, and what its ends are; a certain value has neither. */
function shapes({ estimate, path, stated, host, readonly }: EstimatePart, said: string) {
  if (estimate?.kind !== "range") return nothing;
  const choose = <V extends string>(
    what: "shape" | "bounds",
    words: string,
    names: readonly (readonly [V, string])[],
  ): TemplateResult => html`<select aria-label="${said}: ${words}" ?disabled=${readonly}
    @change=${(event: Event) => {
      if (!(event.target instanceof HTMLSelectElement)) return;
      const found = names.find(
        ([value]) => event.target instanceof HTMLSelectElement && value === event.target.value,
      );
      if (found === undefined) return;
      const value = reshape(estimate, { [what]: found[0] }, statedAt(stated, path));
      send(host, "plan-edit", { field: path, cells: {}, edits: [{ path, value }] });
    }}>${names.map(
      ([value, name]) => html`<option value=${value} .selected=${estimate[what] === value}>${name}</option>`,
    )}</select>`;
  return html`<span class="part-shape">${choose("shape", "shape", shapeNames)}
    ${choose("bounds", "what low and high are", boundsNames)}</span>`;
}
