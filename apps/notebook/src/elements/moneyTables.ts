import {
  formatMoney,
  formatPercent,
  fundsFinding,
  limitStep,
  monthName,
  monthsToShow,
  roundTogether,
  roundToStep,
} from "@leeway/charts";
import type { Budget } from "@leeway/core";
import { html, nothing, svg, type TemplateResult } from "lit";
import { unbroken } from "../words/unbroken.ts";

type Kind = Budget["components"][number]["kind"];

const kinds: Record<Kind, string> = {
  spent: "Spent so far",
  "task-cost": "Task costs, once",
  "task-per-day": "Task costs by the day",
  people: "People",
  risks: "Risks and assumptions",
  responses: "Responses",
  overheads: "Overheads",
};

interface Line {
  name: string;
  figures: readonly string[];
  /** From P50 to P80, for its bar. */
  range?: readonly [number, number];
  whole?: true;
}

/** What the money is for, by component and by phase; contingency and reserve apart; and month by month against funds. */
export function moneyTables(budget: Budget): TemplateResult {
  const { components, phases, total, addedUp, plan, confidence } = budget;
  if (components.length === 0) {
    return html`<p>The plan speaks of no money. Give <a href="#people">people</a> a rate, an entry of the
      <a href="#register">register</a> a cost, or tasks a cost and the plan overheads in its <a href="#text">text</a>:
      then it says here what the money is for, when it is needed and whether it is there by then.</p>`;
  }
  const step = limitStep(total.committed, total.low, total.high);
  const sum = (value: number): string => formatMoney(roundToStep(value, step), "");
  const part = `Of ${sum(total.committed)}`;
  const apart = (values: readonly number[]): string[] =>
    roundTogether(values, step).map((value) => formatMoney(value, ""));
  const splits = apart(components.map(({ split }) => split));
  const phaseSplits = apart(phases.map(({ split }) => split));
  const used = components.map(({ kind }) => kind);
  const together: Line = {
    name: "Together",
    figures: [total.asWritten, total.mean, total.p50, total.p80, total.committed].map(sum),
    range: [total.p50, total.p80],
    whole: true,
  };
  return html`${table(
    `What the money is for, ${plan.currency}`,
    ["As written", "Mean", "P50", "P80", part],
    [
      ...components.map(
        ({ kind, asWritten, mean, p50, p80 }, i): Line => ({
          name: kinds[kind],
          figures: [...[asWritten, mean, p50, p80].map(sum), splits[i] ?? ""],
          range: [p50, p80],
        }),
      ),
      together,
    ],
  )}
    <p class="note">${unbroken(
      `P50 and P80 are those of each line alone and do not add up: added up, the P80s would make ${plan.currency} ${sum(addedUp.p80)}. The last column adds up: what each line comes to, on average, in futures that cost about what is committed at ${formatPercent(confidence)}. The bars run from P50 to P80.`,
    )}</p>
    ${
      phases.length < 2
        ? nothing
        : table(
            `By phase, ${plan.currency}: the mean of each component, then the phase as a whole`,
            [...used.map((kind) => kinds[kind]), "P50", "P80", part],
            [
              ...phases.map(
                ({ phase, components: own, p50, p80 }, i): Line => ({
                  name: phase ?? "Of no phase",
                  figures: [
                    ...used.map((kind) => {
                      const found = own.find((one) => one.kind === kind);
                      return found === undefined ? "" : sum(found.mean);
                    }),
                    sum(p50),
                    sum(p80),
                    phaseSplits[i] ?? "",
                  ],
                  range: [p50, p80],
                }),
              ),
              {
                ...together,
                figures: [...components.map(({ mean }) => sum(mean)), ...together.figures.slice(2)],
              },
            ],
          )
    }
    ${apartTable(budget, sum)} ${monthTables(budget, sum, step)}`;
}

/** Two sums for two things: what is foreseen to vary, and what nobody foresaw. */
function apartTable({ contingency, reserve, asked, plan }: Budget, sum: (value: number) => string) {
  return html`<table class="levels money-apart">
    <caption>Contingency and reserve, apart, ${plan.currency}</caption>
    <thead><tr><th scope="col">What</th><th scope="col" class="number">Sum</th><th scope="col">Held by</th><th scope="col">Counted above</th></tr></thead>
    <tbody>
      <tr><th scope="row">Contingency, for what is foreseen to vary</th><td class="number">${sum(contingency.money)}</td>
        <td>${contingency.holder?.name ?? "nobody named"}</td><td>yes</td></tr>
      <tr><th scope="row">Reserve, for what nobody foresaw</th><td class="number">${reserve === undefined ? "none stated" : sum(reserve)}</td>
        <td>the sponsor</td><td>no</td></tr>
      ${
        asked === undefined
          ? nothing
          : html`<tr><th scope="row">Money available</th><td class="number">${sum(asked.budget)}</td>
            <td></td><td>holds in ${formatPercent(asked.chance)} of futures</td></tr>`
      }
    </tbody>
  </table>`;
}

function monthTables(budget: Budget, sum: (value: number) => string, step: number) {
  const { months, funds, plan, components } = budget;
  if (months.length === 0) return nothing;
  const sums = months.map(({ byEnd }) => [byEnd.p50, byEnd.p80]);
  const inIt = months.map(({ spent }) => spent.p80);
  const shown = months.slice(0, monthsToShow(sums, step, inIt));
  const used = components.map(({ kind }) => kind);
  return html`${table(
    `When it is needed${funds === undefined ? "" : ", against what is released by then"}, ${plan.currency}`,
    [
      "In it, P50",
      "In it, P80",
      "By its end, P50",
      "By its end, P80",
      ...(funds === undefined ? [] : ["Released", "Covered", "Short"]),
    ],
    shown.map(
      ({ month, spent, byEnd, released, chanceCovered, short = 0 }): Line => ({
        name: monthName(month),
        figures: [
          ...[spent.p50, spent.p80, byEnd.p50, byEnd.p80].map(sum),
          ...(funds === undefined
            ? []
            : [
                released === undefined ? "" : sum(released),
                chanceCovered === undefined ? "" : formatPercent(chanceCovered),
                short > 0 ? sum(short) : "",
              ]),
        ],
      }),
    ),
  )}
    <p>${unbroken(`${fundsFinding(budget)}.`)}</p>
    ${table(
      `Month by month, what it is for, ${plan.currency}: P50 to P80 of each component`,
      used.map((kind) => kinds[kind]),
      shown.map(
        ({ month, components: own }): Line => ({
          name: monthName(month),
          figures: used.map((kind) => {
            const found = own.find((one) => one.kind === kind);
            if (found === undefined) return "";
            const [low, high] = [sum(found.p50), sum(found.p80)];
            return low === high ? low : `${low} – ${high}`;
          }),
        }),
      ),
    )}`;
}

function table(caption: string, columns: readonly string[], lines: readonly Line[]): TemplateResult {
  const drawn = lines.some(({ range }) => range !== undefined);
  const most = Math.max(
    1,
    ...lines.filter(({ whole }) => whole !== true).map(({ range }) => range?.[1] ?? 0),
  );
  const share = (value: number): string => `${Math.max(0, Math.min(100, (value / most) * 100))}%`;
  return html`<div class="money-scroll" role="region" tabindex="0" aria-label=${caption}><table class="levels money-table">
    <caption>${caption}</caption>
    <thead><tr><th scope="col"><span class="unseen">Line</span></th>${columns.map((name) => html`<th scope="col" class="number">${name}</th>`)}
      ${drawn ? html`<td></td>` : nothing}</tr></thead>
    <tbody>${lines.map(
      ({ name, figures, range, whole }) => html`<tr class=${whole ? "whole" : ""}><th scope="row">${name}</th>
        ${figures.map((figure) => html`<td class="number">${figure}</td>`)}
        ${
          drawn
            ? html`<td class="money-range">${
                range === undefined || whole
                  ? nothing
                  : html`<svg aria-hidden="true">${svg`<line class="money-to" x1="0" x2=${share(range[0])} y1="10" y2="10" />
                    <line class="money-between" x1=${share(range[0])} x2=${share(range[1])} y1="10" y2="10" />`}</svg>`
              }</td>`
            : nothing
        }</tr>`,
    )}</tbody>
  </table></div>`;
}
