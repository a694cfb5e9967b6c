import type { Estimate } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { estimateCells, readEstimateCells, takesLikely } from "../plan/estimateEntry.ts";
import { statedAt } from "../plan/stated.ts";
import type { Pending } from "../store/state.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";

export interface EstimateCellsOptions {
  /** Who sends the events. */
  host: HTMLElement;
  estimate: Estimate;
  /** Path of the estimate in the read plan; also the name of the field. */
  path: string;
  /** The document as plain data. */
  stated: unknown;
  /** What it is the estimate of, for labels: "Permit decided". */
  of: string;
  /** "working days", "person-days", "weeks" */
  unit: string;
  pending: Pending | undefined;
  /** Id of the message under the row. */
  message: string;
  row: number;
  /** Column of the low cell. */
  column: number;
  readonly: boolean;
}

const parts = ["low", "likely", "high"] as const;

/** The three inputs of an estimate; an estimate by outcomes is shown as it stands. One per table cell. */
export function estimateInputs(options: EstimateCellsOptions): TemplateResult[] {
  const { estimate, path, stated, unit, pending, host } = options;
  const committed = estimateCells(estimate);
  if (committed === undefined) return [];
  const entry = (part: (typeof parts)[number], text: string) => {
    const cells = { ...committed, ...pending?.cells, [part]: text };
    return { cells, result: readEstimateCells(cells, estimate, path, statedAt(stated, path), unit) };
  };
  const commit = (part: (typeof parts)[number], text: string): void => {
    const { cells, result } = entry(part, text);
    if ("words" in result)
      send(host, "plan-refuse", { field: path, pending: { cells, words: result.words } });
    else send(host, "plan-edit", { field: path, cells, edits: result.edits });
  };
  return parts.map((part, at) =>
    field({
      label: `${options.of}: ${part}, in ${unit}`,
      committed: committed[part],
      shown: pending?.cells[part],
      message: pending !== undefined && pending.cells[part] !== committed[part] ? options.message : undefined,
      kind: "number",
      row: options.row,
      column: options.column + at,
      estimate: { path, unit, of: options.of },
      readonly: options.readonly || (part === "likely" && !takesLikely(estimate)),
      commit: (text) => commit(part, text),
      foresee: (text) => {
        const { result } = entry(part, text);
        if ("edits" in result) send(host, "plan-foresee", { edits: result.edits });
      },
      drop: () => {
        if (pending === undefined) return;
        const cells = { ...committed, ...pending.cells, [part]: committed[part] };
        const unchanged = parts.every((other) => cells[other] === committed[other]);
        if (unchanged) send(host, "plan-drop", { field: path });
        else commit(part, committed[part]);
      },
    }),
  );
}

/** What each of the three cells is, where they stand below each other; outcomes have the middle one. */
export function lineLabels(estimate: Estimate | undefined, unit = ""): string[] {
  return estimate?.kind === "outcomes"
    ? ["", `Outcomes${unit}`, ""]
    : [`Low${unit}`, `Likely${unit}`, `High${unit}`];
}

/** An estimate by outcomes in words: "3 working days (60 %), 5 working days (40 %)". */
export function outcomesWords(estimate: Estimate, unit: string): TemplateResult | typeof nothing {
  if (estimate.kind !== "outcomes") return nothing;
  const words = estimate.outcomes.map(
    ({ value, chance }) => `${value} ${unit} (${Math.round(chance * 100)} %)`,
  );
  return html`<span class="quiet">${words.join(", ")}</span>`;
}
