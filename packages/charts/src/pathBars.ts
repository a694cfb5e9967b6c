import type { DrivingPath, Paths } from "@leeway/core";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawPaths } from "./paths/drawPaths.ts";
import { formatPercent } from "./words/formatPercent.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { plainName, quoteName } from "./words/plainName.ts";

/**
 * The chains of tasks that set the finish most often, each with its share of the futures; tasks that are not
 * on the most frequent one stand out.
 *
 * Reads `paths`, `different`.
 */
export function pathBars(answer: Paths, options: ChartOptions): Figure {
  const { paths, different, stamp } = answer;
  const title = finding(paths);
  const others = different - paths.length;
  const left = Math.max(0, 1 - paths.reduce((sum, path) => sum + path.share, 0));
  const rest =
    others <= 0
      ? ""
      : `${others === 1 ? "One other path sets" : `${groupDigits(others)} other paths set`} it in the rest of futures, ${formatPercent(left)}`;
  const [first] = paths;
  const chain = first === undefined ? "" : first.names.map((name) => plainName(name, 60)).join(", ");
  const people = paths.some((path) => path.ways.some((way) => way.kind === "person"));
  return {
    title,
    subtitle: `Chains of tasks that set the finish, with the share of ${groupDigits(stamp.iterations)} futures in which they did${paths.length > 1 ? "; bold: not on the first" : ""}${people ? "; in brackets: who was waited for" : ""}`,
    summary:
      first === undefined
        ? "No task sets the finish of this plan."
        : `${paths.length === 1 ? "One path" : `The ${paths.length} most frequent paths`}. The first, in ${formatPercent(first.share)} of the futures: ${chain}. ${rest === "" ? "No other path sets the finish" : rest}.`,
    table: {
      columns: [
        { name: "Path", align: "end" },
        { name: "Share of futures", align: "end" },
        { name: "Tasks, in order", align: "start" },
      ],
      rows: paths.map((path, k) => [
        String(k + 1),
        formatPercent(path.share),
        path.names.map((name) => plainName(name)).join(" → "),
      ]),
    },
    svg:
      paths.length === 0
        ? emptyDrawing("The plan has no task that could set its finish.", options)
        : drawPaths(paths, rest, options),
  };
}

function finding(paths: readonly DrivingPath[]): string {
  const [first, second] = paths;
  if (first === undefined) return "No path sets the finish";
  const often = first.share >= 1 ? "every future" : `${formatPercent(first.share)} of futures`;
  if (second === undefined) return `One path sets the finish in ${often}`;
  // What tells the most frequent path from the next: a task of it that the other does not pass.
  const own = first.tasks.findIndex((id) => !second.tasks.includes(id));
  const over = own < 0 ? "One path" : `The path over ${quoteName(first.names[own] ?? "")}`;
  const all = paths.reduce((sum, path) => sum + path.share, 0);
  return `${over} sets the finish most often, in ${often}; the first ${paths.length} together in ${formatPercent(Math.min(1, all))}`;
}
