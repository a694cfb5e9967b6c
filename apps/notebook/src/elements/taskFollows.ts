import { formatDate, formatPercent } from "@leeway/charts";
import type { Forecast, Plan, Task, TaskForecast } from "@leeway/core";
import { html, nothing, svg, type TemplateResult } from "lit";
import type { TimeScale } from "../words/timeScale.ts";
import { unbroken } from "../words/unbroken.ts";

/** Names of months that a telephone held upright has room for. */
const slimNames = 6;

/** Months above the bars. */
export function timeAxis(scale: TimeScale): TemplateResult {
  const every = Math.ceil(scale.months.length / slimNames);
  // One that begins at the end of a slim axis would stand beyond the page.
  const onSlim = (place: string, at: number) => at % every === 0 && Number.parseFloat(place) < 90;
  return html`<span class="unseen">When, from P10 of its start to P90 of its finish</span
    ><svg class="time-axis" aria-hidden="true">
      ${scale.months.map(({ day, name }, at) => {
        const place = scale.at(day);
        return svg`<line class="tick" x1=${place} x2=${place} y1="14" y2="22" />
          <text class=${onSlim(place, at) ? nothing : "broad-only"} x=${place} dx="3" y="13">${name}</text>`;
      })}
    </svg>`;
}

/** What follows from a task: its bar on the calendar, its finish as a range, how often it is critical. */
export function taskFollows(
  task: Task,
  plan: Plan,
  forecast: Forecast | undefined,
  scale: TimeScale | undefined,
): TemplateResult {
  const found = forecast?.tasks.find((one) => one.id === task.id);
  if (forecast === undefined || found === undefined || scale === undefined) {
    return html`<td role="cell" class="when"></td>
      <td role="cell" class="finish quiet">not computed yet</td>
      <td role="cell" class="critical"></td>`;
  }
  const unadopted = notAdopted(task, plan);
  if (found.needed === 0 && unadopted !== undefined)
    return html`<td role="cell" class="when"></td>
      <td role="cell" class="finish quiet">Not needed: “${unadopted}” is not adopted</td>
      <td role="cell" class="critical"></td>`;
  const { p10, p90 } = found.finishDates;
  return html`<td role="cell" class="when">${bar(found, forecast, scale)}</td>
    <td role="cell" class="finish">
      ${unbroken(p10 === p90 ? formatDate(p10, "shortest") : `${formatDate(p10, "shortest")} – ${formatDate(p90, p10.slice(0, 4) === p90.slice(0, 4) ? "shortest" : "short")}`)}
      ${found.needed < 1 ? html`<span class="quiet">needed ${formatPercent(found.needed)}</span>` : nothing}
      ${
        found.target === undefined || plan.tasks.length === 0
          ? nothing
          : html`<span class="quiet">by ${unbroken(formatDate(found.target.date, "shortest"))}: ${formatPercent(found.target.chance)}</span>`
      }
    </td>
    <td role="cell" class="critical"><span class="cell-label">critical </span>${formatPercent(found.critical)}</td>`;
}

/** What the task is needed for alone, where that is not adopted: it has no dates then, and no chances. */
function notAdopted({ onlyIf }: Task, { risks, assumptions }: Plan): string | undefined {
  if (onlyIf === undefined) return undefined;
  const response = [...risks, ...assumptions]
    .flatMap(({ responses }) => responses)
    .find(({ id }) => id === onlyIf);
  return response?.adopted === false ? response.action : undefined;
}

/**
 * The work as a bar from the median start to the median finish, the finish from P10 to P90 as a line with end
 * marks, the plan as written as a diamond, the committed date as a line through all rows.
 */
function bar(task: TaskForecast, forecast: Forecast, scale: TimeScale): TemplateResult {
  const { start, finish, asWritten } = task;
  const committed = scale.at(forecast.committed.day);
  const asked = forecast.asked.finishByDay;
  return html`<svg class="task-bar" aria-hidden="true">
    ${asked === undefined ? nothing : svg`<line class="asked" x1=${scale.at(asked)} x2=${scale.at(asked)} y1="0" y2="100%" />`}
    <line class="committed" x1=${committed} x2=${committed} y1="0" y2="100%"></line>
    ${task.milestone ? nothing : svg`<rect class="work" x=${scale.at(start.p50)} width=${scale.width(start.p50, finish.p50)} y="8" height="10" />`}
    <line class="range" x1=${scale.at(finish.p10)} x2=${scale.at(finish.p90)} y1="13" y2="13"></line>
    <line class="range-end" x1=${scale.at(finish.p10)} x2=${scale.at(finish.p10)} y1="9" y2="17"></line>
    <line class="range-end" x1=${scale.at(finish.p90)} x2=${scale.at(finish.p90)} y1="9" y2="17"></line>
    <svg class="written" x=${scale.at(asWritten.finish)} y="13" overflow="visible">
      <path d="M0-4.5 4.5 0 0 4.5-4.5 0Z" />
    </svg>
  </svg>`;
}
