import { formatDate, formatMoney, formatPercent, groupDigits, plainName } from "@leeway/charts";
import { briefSheet, escapeHtml, type PageFonts, pageStyle, sectionHtml } from "@leeway/charts/brief";
import type { Brief, Forecast, PageSection, Plan, Table } from "@leeway/core";
import { committedLevel, committedSum, contingencyWords, spends, withSum } from "../../words/answerWords.ts";
import { darkDrawings } from "./darkDrawings.ts";
import { levelScript, levelScriptHash } from "./levelScript.ts";
import type { Levels } from "./levels.ts";
import { tableHtml } from "./tableHtml.ts";

/** A figure as it goes into the page. */
export interface Drawn {
  title: string;
  subtitle: string;
  summary: string;
  /** The drawing as XML, its texts escaped: for a wide screen and paper, and for a slim one. */
  svg: { broad: string; slim: string };
  table: Table;
  /** The line over it follows the level. */
  line?: "finish" | "cost";
}
export type FigureRoom = "futures" | "drivers" | "contingency" | "responses";

export interface NotebookPage {
  plan: Plan;
  forecast: Forecast;
  brief: Brief;
  figures: Readonly<Record<FigureRoom, readonly Drawn[]>>;
  levels: Levels;
  estimates: Table;
  /** Free texts of the plan in their order, as markup that holds nothing but what `markdownHtml` makes. */
  texts?: readonly { after: PageSection; html: string }[];
  fonts?: PageFonts;
}

/**
 * The whole notebook as one HTML file that opens anywhere: read only, nothing fetched, every text of the plan escaped.
 * Its policy allows its own style, type and the one script that moves the level, and nothing else.
 */
export function notebookHtml(page: NotebookPage): string {
  const { plan, forecast, brief, figures, levels, estimates, fonts, texts = [] } = page;
  const sheet = briefSheet(brief);
  const of = (...keys: string[]) =>
    sheet.sections
      .filter(({ key }) => keys.includes(key))
      .map((section) => sectionHtml(section, "scroll"))
      .join("");
  const prose = (...sections: PageSection[]) =>
    sections
      .flatMap((section) => texts.filter(({ after }) => after === section))
      .map(({ html }) => `<div class="prose" dir="auto">${html}</div>`)
      .join("");
  const policy = `default-src 'none'; script-src '${levelScriptHash}'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'`;
  const main = `<header><h1>${escapeHtml(sheet.title)}</h1><p class="head">Notebook, to be read · ${formatDate(brief.today, "short")}</p></header>
<section><p class="answer">${answer(forecast)}</p><p>${escapeHtml(reason(forecast))}</p></section>${prose("answer")}
${of("decision", "recommendation", "commitment")}${prose("commitment", "level")}
<section class="mover" id="mover" hidden><h2>Another level</h2><label for="level">Move the line</label><input type="range" id="level" min="0" max="${levels.levels.length - 1}" value="${levels.start}" aria-describedby="read-off"><p><output id="reading" for="level"></output></p><p class="quiet" id="read-off"></p></section>
${room("Futures", figures.futures)}${prose("futures")}${room("What drives it", figures.drivers)}${prose("drivers")}${room("Contingency", figures.contingency)}${prose("contingency")}
${of("worth", "scope")}${prose("purpose", "people", "calendar")}
<section><h2>Work</h2>${tableHtml("When each task is finished, and how often it decides the finish", work(plan, forecast))}
<details><summary>Estimates as written</summary>${tableHtml("Estimates as written", estimates)}</details></section>${prose("work")}
<section><h2>Register</h2>${tableHtml("Risks and assumptions", register(plan))}</section>${prose("register")}
${responses(of("responses"), figures.responses)}${of("assumptions")}${prose("responses")}${of("objections", "back", "outcome")}${prose("money", "reach", "one-future", "changes", "hand-over")}
<footer class="stamp">${of("run")}<p>Seed ${escapeHtml(plainName(String(forecast.seed)))} · ${groupDigits(forecast.iterations)} futures · engine ${escapeHtml(forecast.version)} · plan ${escapeHtml(forecast.plan.sha256)}</p></footer>`;
  const data = JSON.stringify(levels).replaceAll("<", "\\u003c");
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark"><title>${escapeHtml(sheet.title)}</title><style>${pageStyle(fonts)}${style()}</style></head>
<body><main>${main}</main><script type="application/json" id="levels">${data}</script><script>${levelScript}</script></body></html>
`;
}

function answer(forecast: Forecast): string {
  const level = escapeHtml(committedLevel(forecast));
  return `${level} of futures finish by <a href="#commitment"><strong>${escapeHtml(formatDate(forecast.committed.date, "long"))}</strong></a>${spends(forecast) ? `, and ${level} cost no more than <a href="#commitment"><strong>${escapeHtml(committedSum(forecast))}</strong></a>` : ""}.`;
}

function reason(forecast: Forecast): string {
  const { days, money } = contingencyWords(forecast);
  const { asWritten, plan } = forecast;
  const held = withSum(forecast, days, { sum: money });
  const finish = withSum(forecast, formatDate(asWritten.finish), {
    sum: formatMoney(asWritten.cost, plan.currency),
    between: " for ",
  });
  return `${held} of contingency over the plan as written, which would finish on ${finish}.`;
}

/** No empty rooms: without figures there is no heading. */
function room(title: string, figures: readonly Drawn[]): string {
  return figures.length === 0
    ? ""
    : `<section><h2>${escapeHtml(title)}</h2>${figures.map(figure).join("")}</section>`;
}

/** What the brief says of the responses, and the drawing of them all below it: one section. */
function responses(told: string, figures: readonly Drawn[]): string {
  const end = "</section>";
  if (!told.endsWith(end)) return told + room("Responses", figures);
  return told.slice(0, -end.length) + figures.map(figure).join("") + end;
}

function figure({ title, subtitle, summary, svg, table, line }: Drawn): string {
  const over = (of: string) =>
    line === undefined ? "" : `<i class="line" data-line="${line}${of}" hidden></i>`;
  const drawing = (size: string, of: string, xml: string) =>
    `<div class="drawing ${size}">${xml}${over(of)}</div>`;
  return `<figure><h3>${escapeHtml(title)}</h3><p class="quiet">${escapeHtml(subtitle)}</p><div class="wide" role="region" tabindex="0" aria-label="${escapeHtml(summary)}">${drawing("broad", "", svg.broad)}${drawing("slim", "Slim", svg.slim)}</div><details><summary>As a table</summary>${tableHtml(title, table)}</details></figure>`;
}

/** In the order of the plan, which is that of the work. */
function work({ tasks: planned }: Plan, { tasks, committed }: Forecast): Table {
  const of = new Map(tasks.map((task) => [task.id, task]));
  return {
    header: [
      "Task",
      "P10",
      "P50",
      "P90",
      `Committed, ${formatPercent(committed.confidence)}`,
      "Decides the finish",
    ],
    rows: planned
      .flatMap(({ id }) => of.get(id) ?? [])
      .map(({ name, finishDates, critical }) => [
        name,
        formatDate(finishDates.p10),
        formatDate(finishDates.p50),
        formatDate(finishDates.p90),
        formatDate(finishDates.committed),
        formatPercent(critical),
      ]),
  };
}

function register({ risks, assumptions, people, stakeholders }: Plan): Table {
  const names = new Map([...people, ...stakeholders].map(({ id, name }) => [id, name]));
  return {
    header: ["Name", "What", "Chance", "Owner", "Responses"],
    rows: [...risks, ...assumptions].map(({ kind, name, probability, owner, responses }) => [
      name,
      kind === "risk" ? "Risk" : "Assumption",
      formatPercent(probability),
      owner === undefined ? "nobody named" : (names.get(owner) ?? owner),
      responses.map(({ action, adopted }) => `${action}${adopted ? " (adopted)" : ""}`).join("; ") || "none",
    ]),
  };
}

/** As the brief's, light or dark as the reader's screen is. */
function style(): string {
  return `
main>section{border-top:1px solid var(--hairline);padding:.75rem 0 1rem}
main>header+section{border-top:0}
section:not(.decision)>h2{font-size:1.4rem}
h3{margin:0;font-size:1.15rem}
.answer{font-size:1.9rem;line-height:1.25;margin-bottom:.5rem}.answer strong{color:var(--committed)}
figure{margin:1rem 0 1.5rem;break-inside:avoid}figure>.quiet{margin-bottom:.5rem}
.wide{overflow-x:auto}.drawing{position:relative;max-width:60rem}.drawing svg{display:block;width:100%;height:auto;font-family:var(--sans)}.slim{display:none;max-width:30rem}
.line{position:absolute;top:0;bottom:0;width:0;border-left:2px dashed var(--committed)}
summary{min-height:24px;font-family:var(--sans);cursor:pointer}
.mover input{width:min(100%,32rem);min-height:28px;accent-color:var(--committed);display:block}
.mover output{font-size:1.25rem}
.prose{max-width:46rem;overflow-wrap:anywhere}.prose pre{white-space:pre-wrap}.prose th,.prose td{padding:.15rem 1rem .15rem 0;text-align:start}
.stamp{overflow-wrap:anywhere}
.number{text-align:end}
@media screen and (max-width:44rem){.number{text-align:start}.broad{display:none}.slim{display:block}.answer{font-size:1.5rem}
.listed,.listed tbody,.listed tr,.listed th,.listed td{display:block}.listed thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.listed tr{display:grid;grid-template-columns:repeat(auto-fill,minmax(7rem,1fr));gap:.1rem .75rem;border-bottom:1px solid var(--hairline);padding:.35rem 0}
.listed th,.listed td{border:0;padding:0}.listed th,.listed .long{grid-column:1/-1}.listed th{font-weight:650}
.listed td:empty{display:none}
.listed td::before{content:attr(data-head) " ";color:var(--quiet);margin-inline-end:.25rem}}
${darkDrawings()}
@media print{.mover,.line,details:not([open]){display:none}.answer{font-size:15pt}}
`;
}
