import { formatPercent } from "@leeway/charts";
import { type Plan, type QualityBar, qualityBars } from "@leeway/core";
import { html } from "lit";
import { readNumber } from "../plan/readNumber.ts";
import { type ListSpec, needed, type Reading, whoChoices } from "./listsElement.ts";

const what = "a number in the unit beside it";

/** The bars the result has to clear whatever the date, each with the chance that it does. */
export function qualityList(plan: Plan): ListSpec<QualityBar> {
  const now = new Map(qualityBars(plan).map((bar) => [bar.id, bar]));
  const number = (key: "atLeast" | "atMost" | "measured", heading: string) => ({
    key,
    heading,
    kind: "number" as const,
    committed: (bar: QualityBar) => (bar[key] === undefined ? "" : String(bar[key])),
    read: readOptional,
  });
  return {
    path: "purpose.quality",
    one: "quality bar",
    title: "Quality",
    empty: "No bar yet: what the result has to reach whatever the date, as a number that can be measured.",
    items: plan.purpose.quality,
    name: ({ statement }) => statement,
    columns: [
      {
        key: "statement",
        heading: "What has to hold",
        size: "main",
        committed: ({ statement }) => statement,
        read: needed("A quality bar says what has to hold."),
      },
      number("atLeast", "At least"),
      number("atMost", "At most"),
      { key: "unit", heading: "Of", size: "of", committed: ({ unit }) => unit ?? "" },
      number("measured", "Measured"),
      {
        key: "chance",
        heading: "Holds",
        size: "narrow",
        committed: () => "",
        cells: ({ id }) => [html`<span class="quiet">${holdsWords(now.get(id))}</span>`],
      },
      { key: "owner", heading: "Owner", committed: ({ owner }) => owner ?? "", choices: whoChoices(plan) },
    ],
    asks: [
      { key: "statement", label: "What has to hold" },
      { key: "atLeast", label: "At least, or", kind: "number" },
      { key: "atMost", label: "At most", kind: "number" },
    ],
    make: ({ statement = "", atLeast = "", atMost = "" }, id) => {
      const text = statement.trim();
      if (text === "") return { cell: "statement", words: "Write what has to hold, in a few words." };
      if ((atLeast.trim() === "") === (atMost.trim() === ""))
        return { cell: "atLeast", words: "Give the bar one number: at least, or at most." };
      const key = atMost.trim() === "" ? "atLeast" : "atMost";
      const entry = readNumber(key === "atLeast" ? atLeast : atMost, "a number", "95");
      if ("words" in entry) return { cell: key, words: entry.words };
      return { item: { id: id(text), statement: text, [key]: entry.value } };
    },
  };
}

function readOptional(text: string): Reading {
  if (text.trim() === "") return { value: undefined };
  return readNumber(text, what, "95");
}

function holdsWords(bar: ReturnType<typeof qualityBars>[number] | undefined): string {
  if (bar?.holds !== undefined) return bar.holds ? "yes" : "no";
  return bar?.chance === undefined ? "unknown" : `${formatPercent(bar.chance)} chance`;
}
