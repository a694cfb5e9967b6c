import { columnDays, formatDate, formatPercent, groupDigits, quoteName, reachSpends } from "@leeway/charts";
import type { Reach, ReachStep, ReachWay } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { unbroken } from "../words/unbroken.ts";

const verbs: Record<ReachStep["kind"], string> = { response: "Adopt", scope: "Drop", capacity: "Add" };

/** The steps of a way, each with what it costs and adds to those before it. */
export function reachRows(reach: Reach, way: ReachWay): TemplateResult {
  const { plan, asked, chance } = reach;
  const spends = reachSpends(reach);
  return html`<table class="levels apart">
    <caption>Step by step; days: of the finish at ${formatPercent(asked.confidence)}</caption>
    <thead>
      <tr>
        <th scope="col">Step</th>
        ${spends ? html`<th scope="col" class="number">Costs, ${plan.currency}</th>` : nothing}
        <th scope="col" class="number">Days</th>
        <th scope="col" class="number">Chance</th>
      </tr>
    </thead>
    <tbody>
      <tr>
        <th scope="row">As it stands</th>
        ${spends ? html`<td></td>` : nothing}
        <td></td>
        <td class="number">${formatPercent(chance)}</td>
      </tr>
      ${way.steps.map(
        (step) => html`<tr>
          <th scope="row">${verbs[step.kind]} ${step.capacity === undefined ? "" : `${step.capacity} of `}${quoteName(step.name)}${
            step.from === undefined ? "" : unbroken(` from ${formatDate(step.from, "short")}`)
          }${step.kind === "scope" ? html`<span class="quiet">. Lost: ${step.lost ?? "the plan does not say"}</span>` : nothing}</th>
          ${spends ? html`<td class="number">${groupDigits(Math.round(step.cost))}</td>` : nothing}
          <td class="number">${columnDays(step.effect.workingDays, true)}</td>
          <td class="number">${formatPercent(step.chance)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
