import { curvePlace, type Figure } from "@leeway/charts";
import { documentOf, estimateTable } from "@leeway/core";
import { type AnswerOf, type ChartName, drawChart } from "../../elements/charts.ts";
import { markdownHtml } from "../../words/markdown.ts";
import { fonts, type Written } from "../writeBrief.ts";
import { levelsOf, type Place } from "./levels.ts";
import { type Drawn, notebookHtml } from "./notebookHtml.ts";

/** Px: two thirds of a wide screen, and what an A4 page shows whole. */
const width = 860;

/** The read-only page of a plan whose brief is written. Needs a document to draw in. */
export function writeNotebook({ plan, brief, answers }: Written, text: string): string {
  const { forecast, explanation, responses } = answers;
  const draw = (name: ChartName, answer: AnswerOf): Figure =>
    drawChart(name, answer, { document, width, theme: "light" });
  const finish = draw("finishCurve", forecast);
  const cost = draw("costCurve", forecast);
  return notebookHtml({
    plan,
    forecast,
    brief,
    fonts,
    levels: levelsOf(forecast, placeOf(finish), placeOf(cost)),
    texts: plan.texts.map(({ after, text }) => ({ after, html: markdownHtml(text, document) })),
    estimates: estimateTable(documentOf(text) ?? {}),
    figures: {
      futures: [
        drawn(finish, "finish"),
        ...(brief.spends ? [drawn(cost, "cost")] : []),
        drawn(draw("fiftyFutures", forecast)),
      ],
      drivers: [drawn(draw("driversBars", forecast))],
      contingency: (["walkDays", "sharesDays"] as const).map((name) => drawn(draw(name, explanation))),
      responses: responses.responses.length === 0 ? [] : [drawn(draw("responseWorth", responses))],
    },
  });
}

function placeOf({ svg }: Figure): Place {
  return curvePlace(svg) ?? { width, x: () => 0 };
}

function drawn({ title, subtitle, summary, svg, table }: Figure, line?: "finish" | "cost"): Drawn {
  return {
    title,
    subtitle,
    summary,
    svg: new XMLSerializer().serializeToString(svg),
    table: {
      header: table.columns.map(({ name, unit }) => (unit === undefined ? name : `${name}, ${unit}`)),
      rows: table.rows,
    },
    ...(line === undefined ? {} : { line }),
  };
}
