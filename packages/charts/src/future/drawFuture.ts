import type { Future, FutureTask } from "@leeway/core";
import { calendarAxis } from "../axes/calendarAxis.ts";
import { calendarTicks } from "../dates/calendarTicks.ts";
import { fitText } from "../draw/fitText.ts";
import { drawFlags, type FlagText, planFlags } from "../draw/flags.ts";
import { itemLabel } from "../draw/itemLabel.ts";
import { levelShape } from "../draw/levels.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { rowFrame } from "../draw/rowFrame.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { type Palette, palette } from "../palette.ts";
import { formatDate } from "../words/formatDate.ts";
import { plainName } from "../words/plainName.ts";

export interface FutureView {
  future: Future;
  /** In the order drawn. */
  tasks: FutureTask[];
  /** What happened to a task, in a few words; "" where nothing did. */
  word: (task: FutureTask) => string;
  /** Whether a risk or assumption touched it. */
  touched: (task: FutureTask) => boolean;
  marks: (FlagText & { day: number })[];
  /** Heading over the finish of each task. */
  heading: string;
  /** A line at the end, or "". */
  rest: string;
}

/**
 * The tasks of one future on the calendar: full bars are the path that set the finish, joined where it goes on; a
 * plum square stands where a risk struck; diamonds are the finishes of the plan as written.
 */
export function drawFuture(view: FutureView, options: ChartOptions): SVGSVGElement {
  const { document } = options;
  const { tasks, future } = view;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const names = tasks.map((task) => plainName(task.name));
  const words = tasks.map((task) => plainWord(view.word(task)));

  const dateWidth = Math.max(textWidth(view.heading, 12), textWidth("30 Nov 2027", 12));
  const frame = rowFrame(width, { names, words, beside: dateWidth + 8 });
  const { inline } = frame;
  const left = inline ? 8 : frame.left + 6;
  const right = inline ? width - 10 : width - dateWidth - 16;
  const [from, to] = range(view);
  const x = (day: number) => left + ((day - from) / (to - from)) * (right - left);
  const at = view.marks.map((mark) => x(mark.day));
  const plan = planFlags(view.marks, at, 2, inline ? width - 2 : right + 8);
  const top = plan.height + (inline ? 26 : 12);
  const middle = (row: number) => top + frame.middle(row);
  const bottom = top + frame.height + 4;
  const svg = openSvg(document, width, bottom + (view.rest === "" ? 50 : 72), colours);
  const ticks = calendarTicks(future.plan.start, from, to, Math.floor((right - left) / 62));

  const grid = make(document, "g", { stroke: colours.hairline });
  const bars = make(document, "g");
  const texts = make(document, "g");
  const { poles, labels } = drawFlags(
    document,
    view.marks,
    at,
    plan,
    inline ? top - 18 : top,
    inline ? top - 18 : bottom,
    colours,
  );
  const headed = { x: width - 2, y: top - 6, "text-anchor": "end", fill: colours.inkQuiet };
  texts.append(make(document, "text", headed, view.heading));
  const onPath = new Map(future.path.map(({ task }, k) => [task.id, k]));
  const rowOf = new Map(tasks.map((task, k) => [task.id, k]));
  tasks.forEach((task, k) => {
    const y = middle(k);
    for (const tick of ticks) {
      const line = { x1: x(tick.day), x2: x(tick.day), y1: y - 11, y2: y + 11 };
      grid.append(make(document, "line", line));
    }
    texts.append(itemLabel(document, names[k] ?? "", words[k] ?? "", frame.label(k, top), colours));
    const date = { x: width - 2, y: top + frame.figureAt(k), "text-anchor": "end" };
    if (!task.needed) {
      texts.append(make(document, "text", { ...date, fill: colours.inkQuiet }, "not needed"));
      return;
    }
    texts.append(make(document, "text", date, formatDate(task.finishDate)));
    bars.append(...taskBar(document, task, onPath.has(task.id), view.touched(task), x, y, colours));
  });
  const joints = make(document, "g", { stroke: colours.ink });
  if (!inline)
    future.path.slice(1).forEach(({ task }, k) => {
      const [above, below] = [rowOf.get(future.path[k]?.task.id ?? ""), rowOf.get(task.id)];
      const before = above === undefined ? undefined : tasks[above];
      if (above === undefined || below === undefined || before === undefined || above === below) return;
      const down = below > above ? 6 : -6;
      const line = {
        x1: x(before.finish),
        x2: x(before.finish),
        y1: middle(above) + down,
        y2: middle(below) - down,
      };
      joints.append(make(document, "line", line));
    });
  svg.append(grid, poles, joints, bars, calendarAxis(document, ticks, x, bottom, left, right, colours));
  if (view.rest !== "")
    texts.append(
      make(
        document,
        "text",
        { x: 2, y: bottom + 66, fill: colours.inkQuiet },
        fitText(view.rest, width - 4, 12),
      ),
    );
  svg.append(texts, labels);
  return svg;
}

function plainWord(word: string): string {
  return word === "" ? "" : plainName(word, 46);
}

function taskBar(
  document: Document,
  task: FutureTask,
  onPath: boolean,
  touched: boolean,
  x: (day: number) => number,
  y: number,
  colours: Palette,
): SVGElement[] {
  const paint = onPath
    ? { fill: colours.ink, stroke: colours.ink }
    : { fill: colours.rangeCore, stroke: colours.rangeEdge };
  const parts: SVGElement[] = [];
  const long = x(task.finish) - x(task.start);
  if (task.milestone) {
    const [at, half] = [x(task.finish), 5];
    const ring = { cx: at, cy: y, r: half, "stroke-width": 1.5 };
    parts.push(
      make(document, "circle", { ...ring, fill: onPath ? colours.ink : colours.paper, stroke: colours.ink }),
    );
  } else {
    parts.push(
      make(document, "rect", { x: x(task.start), y: y - 6, width: Math.max(1, long), height: 12, ...paint }),
    );
  }
  if (touched) {
    const box = { x: x(task.start) - 3.5, y: y - 12, width: 7, height: 7 };
    parts.push(make(document, "rect", { ...box, fill: colours.register, stroke: colours.paper }));
  }
  parts.push(levelShape(document, "asWritten", x(task.asWritten.finish), y + 8, colours));
  return parts;
}

function range({ tasks, marks }: FutureView): [number, number] {
  let [from, to] = [0, 1];
  for (const { day } of marks) [from, to] = [Math.min(from, day), Math.max(to, day)];
  for (const task of tasks) {
    from = Math.min(from, task.asWritten.finish, task.needed ? task.start : 0);
    to = Math.max(to, task.asWritten.finish, task.needed ? task.finish : 0);
  }
  const margin = Math.max(1, (to - from) * 0.015);
  return [from - margin, to + margin];
}
