import { curvePlace, type Figure } from "@leeway/charts";
import { documentOf, estimateTable } from "@leeway/core";
import { type AnswerOf, type ChartName, drawChart } from "../../elements/charts.ts";
import { markdownHtml } from "../../words/markdown.ts";
import { fonts, type Written } from "../writeBrief.ts";
import { levelsOf, type Place, type Places } from "./levels.ts";
import { type Drawn, notebookHtml } from "./notebookHtml.ts";
import { writtenEstimates } from "./writtenEstimates.ts";

/** Px: two thirds of a wide screen, and what an A4 page shows whole; and the room of a telephone held upright. */
const widths = { broad: 860, slim: 344 } as const;
type Size = keyof typeof widths;

/** The read-only page of a plan whose brief is written. Needs a document to draw in. */
export function writeNotebook({ plan, brief, answers }: Written, text: string): string {
  const { forecast, explanation, responses } = answers;
  const draw = (name: ChartName, answer: AnswerOf, line?: Drawn["line"]): Sizes => {
    const at = (size: Size) => drawChart(name, answer, { document, width: widths[size], theme: "light" });
    return { broad: at("broad"), slim: at("slim"), line };
  };
  const finish = draw("finishCurve", forecast, "finish");
  const cost = draw("costCurve", forecast, "cost");
  return notebookHtml({
    plan,
    forecast,
    brief,
    fonts,
    levels: levelsOf(forecast, placesOf(finish), placesOf(cost)),
    texts: plan.texts.map(({ after, text }) => ({ after, html: markdownHtml(text, document) })),
    estimates: writtenEstimates(estimateTable(documentOf(text) ?? {}), plan),
    figures: {
      futures: [drawn(finish), ...(brief.spends ? [drawn(cost)] : []), drawn(draw("fiftyFutures", forecast))],
      drivers: [drawn(draw("driversBars", forecast))],
      contingency: (["walkDays", "sharesDays"] as const).map((name) => drawn(draw(name, explanation))),
      responses: responses.responses.length === 0 ? [] : [drawn(draw("responseWorth", responses))],
    },
  });
}

interface Sizes {
  broad: Figure;
  slim: Figure;
  line: Drawn["line"] | undefined;
}

function placesOf({ broad, slim }: Sizes): Places {
  const of = ({ svg }: Figure, width: number): Place => curvePlace(svg) ?? { width, x: () => 0 };
  return { broad: of(broad, widths.broad), slim: of(slim, widths.slim) };
}

function drawn({ broad, slim, line }: Sizes): Drawn {
  const { title, subtitle, summary, table } = broad;
  const xml = ({ svg }: Figure) => new XMLSerializer().serializeToString(svg);
  return {
    title,
    subtitle,
    summary,
    svg: { broad: xml(broad), slim: xml(slim) },
    table: {
      header: table.columns.map(({ name, unit }) => (unit === undefined ? name : `${name}, ${unit}`)),
      rows: table.rows,
    },
    ...(line === undefined ? {} : { line }),
  };
}
