import { type FixedEstimate, lawOf, type RangeEstimate } from "@leeway/core";
import { densityPoints } from "./curves/densityPoints.ts";
import { drawDensity } from "./curves/drawDensity.ts";
import { type EstimateAbout, estimateReading, oneInTenSentence } from "./curves/estimateReading.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { shapeWords } from "./words/shapeWords.ts";

const BOUNDS = {
  extremes: "low and high the least and the most it can be",
  "p10-p90": "low and high one in ten at each end",
  "p5-p95": "low and high one in twenty at each end",
};

/**
 * What one estimate says: the curve of its chances, and its one-in-ten reading as the title. Exact, nothing is drawn at
 * random; what takes time is read as the forecast draws it, cut at zero.
 *
 * Cost  a few hundred values of the law: about a millisecond.
 */
export function estimateCurve(
  estimate: RangeEstimate | FixedEstimate,
  about: EstimateAbout,
  options: ChartOptions,
): Figure {
  const reading = estimateReading(estimate, about);
  const { p10, half, p90, mean, cut, short } = reading;
  const title = oneInTenSentence(reading, about);
  const columns = [
    { name: "Reading", align: "start" as const },
    { name: "Value", unit: about.unitWords, align: "end" as const },
  ];
  if (estimate.kind === "fixed")
    return {
      title,
      subtitle: `One value without a range, in ${about.unitWords}`,
      summary: "A value that is certain has no curve.",
      table: { columns, rows: [["Certain", short(estimate.value)]] },
      svg: emptyDrawing(
        "A value that is certain has no curve. Give a low and a high one for a range.",
        options,
      ),
    };
  const { shape, bounds, likely } = estimate;
  const points = densityPoints(lawOf(estimate));
  const svg = drawDensity(
    {
      points,
      core: { from: Math.max(p10, points[0]?.at ?? p10), to: p90 },
      marks: [
        { level: "half", value: p10, title: "1 in 10 below", detail: short(p10) },
        ...(likely === undefined
          ? []
          : [{ level: "asWritten" as const, value: likely, title: "Likely", detail: short(likely) }]),
        { level: "half", value: mean, title: "Average", detail: short(mean) },
        { level: "half", value: p90, title: "1 in 10 above", detail: short(p90) },
      ],
      unit: about.unitWords,
    },
    options,
  );
  const zero = cut >= 0.0005 ? `; below nothing, ${formatPercent(cut)}, counts as nothing` : "";
  return {
    title,
    subtitle: `Chances by ${about.unitWords}, ${shapeWords[shape]}, ${BOUNDS[bounds]}; the stronger tint holds eight times in ten${zero}`,
    summary: `The curve for ${about.name}, ${shapeWords[shape]}: a tenth below ${short(p10)}, half below ${short(half)}, nine tenths below ${short(p90)} ${about.unitWords}.`,
    table: {
      columns,
      rows: [
        ["One in ten is below", short(p10)],
        ...(likely === undefined ? [] : [["Likely, as written", short(likely)]]),
        ["Half is below", short(half)],
        ["Average", short(mean)],
        ["One in ten is above", short(p90)],
      ],
    },
    svg,
  };
}
