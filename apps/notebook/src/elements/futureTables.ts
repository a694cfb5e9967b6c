import { columnDays, formatPercent, groupDigits, quoteName } from "@leeway/charts";
import type { Future, PathWay } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";

/** Cost lines shown before the smaller ones are taken together. */
const linesShown = 8;

/** What of the register occurred in a future, and what it added. */
export function futureEvents({ events, plan, cost }: Future): TemplateResult {
  const occurred = events.filter((event) => event.occurred);
  if (occurred.length === 0) {
    const none = events.length === 0 ? "The register is empty." : "Nothing of the register occurred.";
    return html`<h3>What occurred</h3><p>${none}</p>`;
  }
  // Where every future costs nothing, none of what occurs does.
  const spends = cost.total !== 0 || cost.level < 1;
  return html`<h3>What occurred</h3>
    <table class="levels">
      <caption>${occurred.length} of ${events.length} risks and assumptions, and what they added</caption>
      <thead>
        <tr>
          <th scope="col">Event</th>
          <th scope="col" class="number">Chance</th>
          <th scope="col" class="number">Days</th>
          ${spends ? html`<th scope="col" class="number">${plan.currency}</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${occurred.map(
          ({ kind, name, chance, days, waited, money }) => html`<tr>
            <th scope="row" dir="auto">${kind === "assumption" ? `Not so: ${name}` : name}${
              waited === 0 ? nothing : html`<span class="quiet">, held back ${columnDays(waited)} days</span>`
            }</th>
            <td class="number">${formatPercent(chance)}</td>
            <td class="number">${days === 0 ? "" : columnDays(days, true)}</td>
            ${spends ? html`<td class="number">${money === 0 ? "" : groupDigits(Math.round(money))}</td>` : nothing}
          </tr>`,
        )}
      </tbody>
    </table>`;
}

/** What a task of the path waits for besides the one before it; empty for a link, and for the plan's start. */
function wayWords({ kind, person }: PathWay): string {
  switch (kind) {
    case "person":
      return `waits for ${quoteName(person?.name ?? "")}`;
    case "away":
      return `${quoteName(person?.name ?? "")} away`;
    case "not-before":
      return "not before its date";
    case "held-to-plan":
      return "held to the plan";
    case "status-date":
      return "from the status date";
    case "recorded":
      return "under way";
    default:
      return "";
  }
}

/** The chain of tasks that set the finish. */
export function futurePath({ path }: Future): TemplateResult {
  return html`<h3>What set the finish</h3>
    ${
      path.length === 0
        ? html`<p>Nothing that is left to do or needed.</p>`
        : html`<ol class="path">
            ${path.map(({ task, way }) => {
              const words = wayWords(way);
              return html`<li dir="auto">${task.name}${words === "" ? nothing : html`<span class="quiet">, ${words}</span>`}</li>`;
            })}
          </ol>`
    }`;
}

/** The cost line by line, largest first; the lines shown and the rest are the total. */
export function futureCosts({ cost, plan, lateness }: Future): TemplateResult | typeof nothing {
  if (cost.lines.length === 0) return nothing;
  const units = (money: number) => groupDigits(Math.round(money));
  const sorted = [...cost.lines].sort(
    (a, b) => Math.abs(b.money) - Math.abs(a.money) || (a.id < b.id ? -1 : 1),
  );
  const shown = sorted.length > linesShown + 1 ? sorted.slice(0, linesShown) : sorted;
  const rest = sorted.slice(shown.length);
  return html`<h3>What it costs</h3>
    <table class="levels">
      <caption>${formatPercent(cost.level)} of futures cost no more</caption>
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col" class="number">${plan.currency}</th>
        </tr>
      </thead>
      <tbody>
        ${shown.map(
          ({ kind, name, money }) => html`<tr>
            <th scope="row" dir="auto">${name}${kind === "task" ? nothing : html`<span class="quiet">, ${kind}</span>`}</th>
            <td class="number">${units(money)}</td>
          </tr>`,
        )}
        ${
          rest.length === 0
            ? nothing
            : html`<tr>
                <th scope="row">${rest.length} smaller</th>
                <td class="number">${units(rest.reduce((sum, { money }) => sum + money, 0))}</td>
              </tr>`
        }
        <tr class="committed">
          <th scope="row">In all</th>
          <td class="number">${units(cost.total)}</td>
        </tr>
      </tbody>
    </table>
    ${
      lateness === undefined || lateness === 0
        ? nothing
        : html`<p class="note">Beside the total, finishing late costs ${units(lateness)}.</p>`
    }`;
}
