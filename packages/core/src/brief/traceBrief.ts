import type { Brief, BriefAnswers, BriefFigure, FigureSource } from "./types.ts";

/** Parts of a brief that hold figures of the run; the rest is what the plan says. */
const PARTS = [
  "decision",
  "recommendation",
  "commitment",
  "worth",
  "drivers",
  "responses",
  "assumptions",
] as const satisfies (keyof Brief)[];

/** A figure somewhere in an answer. */
interface Leaf {
  keys: readonly string[];
  value: number | string;
}

/**
 * Where each figure of a brief comes from: the answer of the same run that holds this very value, and its place there (a
 * JSON pointer, RFC 6901). What no answer holds is stated by the plan, or added up by the brief itself from figures
 * beside it. Nothing is rounded, so a figure that was computed twice would show.
 */
export function traceBrief(brief: Omit<Brief, "trace">, answers: BriefAnswers): BriefFigure[] {
  const sources: [FigureSource, Leaf[]][] = [
    ["forecast", leaves(answers.forecast)],
    ["explain", leaves(answers.explanation)],
    ["responses", leaves(answers.responses)],
    ["confidence", leaves(answers.confidence)],
    ["assumptions", leaves(answers.assumptions)],
  ];
  return PARTS.flatMap((part) =>
    leaves(brief[part], [part]).map(({ keys, value }): BriefFigure => {
      const figure = pointer(keys);
      const own = OWN.find(([match]) => match.test(figure));
      if (own !== undefined) return { figure, value, from: own[1] };
      let best: { from: FigureSource; at: string; fit: number } | undefined;
      for (const [from, list] of part === "assumptions" ? sources.slice(-1) : sources.slice(0, -1)) {
        for (const leaf of list) {
          if (leaf.value !== value) continue;
          const fit = commonEnd(leaf.keys, keys);
          if (fit > (best?.fit ?? 0)) best = { from, at: pointer(leaf.keys), fit };
        }
      }
      best ??= byValue(sources, value);
      if (best === undefined) return { figure, value, from: "brief" };
      const { from, at } = best;
      return { figure, value, from, at: from === "assumptions" ? ofAssumption(at, answers) : at };
    }),
  );
}

/** A figure under another name: only a value with a fraction, which no two figures have by chance. */
function byValue(
  sources: readonly [FigureSource, Leaf[]][],
  value: number | string,
): { from: FigureSource; at: string; fit: number } | undefined {
  if (typeof value === "string" || Number.isInteger(value)) return undefined;
  for (const [from, list] of sources) {
    const leaf = list.find((one) => one.value === value);
    if (leaf !== undefined) return { from, at: pointer(leaf.keys), fit: 0 };
  }
  return undefined;
}

/** As the verb `assumptions` prints it, the id in place of the position: the bars here are in an order of their own. */
function ofAssumption(at: string, { assumptions }: BriefAnswers): string {
  const [, place, , part] = /^\/(\d+)\/(low|high)\/(\w+)$/.exec(at) ?? [];
  const id = assumptions[Number(place)]?.id;
  return id === undefined || part === undefined ? at : `/assumptions/${id}/ifFalse/moved/${part}`;
}

/** What is the plan's own word, or added up here, whatever value it happens to have. */
const OWN: readonly [RegExp, FigureSource][] = [
  [/^\/decision\/by$/, "plan"],
  [/^\/recommendation\/doNothing\/(perMonth|benefits\/\d+\/amount)$/, "brief"],
  [/^\/commitment\/(reserve|asked\/.*)$/, "plan"],
  [/^\/worth\/(benefits\/.*|lateness\/(perWeek|once|after))$/, "plan"],
  [/^\/drivers\/rest\//, "brief"],
  [/^\/responses\/.*\/due$/, "plan"],
  [/^\/assumptions\/\d+\/(chanceWrong|reviewBy|tripped)$/, "plan"],
];

function leaves(node: unknown, keys: readonly string[] = []): Leaf[] {
  if (typeof node === "number") return [{ keys, value: node }];
  if (typeof node === "string") return /^\d{4}-\d\d(-\d\d)?$/.test(node) ? [{ keys, value: node }] : [];
  if (typeof node !== "object" || node === null) return [];
  return Object.entries(node).flatMap(([key, item]) => leaves(item, [...keys, key]));
}

/** Keys that agree from the end; positions in lists say nothing, as lists are cut and sorted anew. */
function commonEnd(a: readonly string[], b: readonly string[]): number {
  const [x, y] = [a, b].map((keys) => keys.map((key) => (/^\d+$/.test(key) ? "#" : key)));
  if (x === undefined || y === undefined) return 0;
  let same = 0;
  while (same < Math.min(x.length, y.length) && x.at(-1 - same) === y.at(-1 - same)) same++;
  return same;
}

function pointer(keys: readonly string[]): string {
  return keys.map((key) => `/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}
