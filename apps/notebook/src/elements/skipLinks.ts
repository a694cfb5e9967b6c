import type { Plan } from "@leeway/core";
import { html, type TemplateResult } from "lit";
import { estimateCells } from "../plan/estimateEntry.ts";

/**
 * The first stops of the page, seen while they have the focus: past what comes before the answer, the first estimate that
 * can be changed, and the work. `arriving` takes the focus along.
 *
 * Source: success criterion 2.4.1, Bypass Blocks, WCAG 2.2. Recalled.
 */
export function skipLinks(plan: Plan | undefined): TemplateResult {
  const first = plan?.tasks.find(({ effort, duration, finished }) => {
    const estimate = effort ?? duration;
    return finished === undefined && estimate !== undefined && estimateCells(estimate) !== undefined;
  });
  return html`<a class="skip" href="#answer">Skip to the answer</a>
    <a class="skip" href="#${first === undefined ? "work" : `task-${first.id}`}">Skip to the estimates</a>
    <a class="skip" href="#work">Skip to the work</a>`;
}
