import { triggerCondition, triggerMeasure, triggerStands } from "@leeway/charts";
import { evaluateTriggers, type Forecast, type Plan, type TriggerNow, type TriggersNow } from "@leeway/core";
import { html } from "lit";
import { today } from "../handing/today.ts";
import { kindOf, limitText, readLimit, triggerKinds } from "../plan/triggerEntry.ts";
import { unbroken } from "../words/unbroken.ts";
import type { ListSpec } from "./listsElement.ts";

type Trigger = Plan["returnTriggers"][number];

/** When the plan comes back to those who decide, and how near that is. */
export function returnTriggersList(plan: Plan, forecast: Forecast | undefined): ListSpec<Trigger> {
  const stands = forecast === undefined ? undefined : evaluateTriggers(plan, forecast, undefined, today());
  const now = new Map(stands?.triggers.map((one) => [one.id, one]));
  return {
    path: "returnTriggers",
    one: "return trigger",
    title: "When the plan comes back to those who decide",
    empty:
      "Nothing agreed yet. Agree beforehand what brings it back: a date that slips past a day, a sum above a limit, a chance that falls too low.",
    items: plan.returnTriggers,
    name: (trigger) => {
      const one = now.get(trigger.id);
      return trigger.name ?? (one === undefined ? trigger.id : triggerCondition(plan, one));
    },
    columns: [
      { key: "name", heading: "Called", committed: ({ name }) => name ?? "" },
      {
        key: "condition",
        heading: "It comes back when",
        size: "main",
        committed: () => "",
        cells: (trigger) => [
          html`<span class="plain">${conditionWords(trigger, plan, now.get(trigger.id))}</span>`,
        ],
      },
      {
        key: "limit",
        heading: "Limit",
        committed: (trigger) => limitText(trigger, plan),
        read: (text, path, trigger) => {
          const kind = kindOf(trigger);
          const read = readLimit(kind, text, plan);
          return "words" in read
            ? read
            : { edits: [{ path: path.replace(/\.limit$/, `.${kind}`), value: read.value }] };
        },
      },
      {
        key: "stands",
        heading: "How it stands",
        size: "main",
        committed: () => "",
        cells: ({ id }) => {
          const one = now.get(id);
          const words = one === undefined || stands === undefined ? "" : standsWords(stands, one);
          const [first = "", ...rest] = words.split(/(?<=\.) /);
          return [
            one?.state === "tripped"
              ? html`<span class="plain"><strong>${unbroken(first)}</strong> ${unbroken(rest.join(" "))}</span>`
              : html`<span class="quiet">${unbroken(words)}</span>`,
          ];
        },
      },
    ],
    asks: [
      { key: "kind", label: "It comes back when", choices: [["", "choose"], ...triggerKinds] },
      { key: "limit", label: "Limit" },
    ],
    make: ({ kind = "", limit = "" }, id) => {
      const [key] = triggerKinds.find(([one]) => one === kind) ?? [];
      if (key === undefined) return { cell: "kind", words: "Choose what brings it back." };
      const read = readLimit(key, limit, plan);
      if ("words" in read) return { cell: "limit", words: read.words };
      return { item: { id: id(triggerIds[key]), [key]: read.value } };
    },
  };
}

/** What is measured, as it stands before its limit; of a chance with the date or the sum that it is of. */
export function conditionWords(trigger: Trigger, plan: Plan, now: TriggerNow | undefined): string {
  const kind = triggerKinds.find(([key]) => key === kindOf(trigger))?.[1] ?? "";
  return now?.chance === undefined ? kind : unbroken(`${triggerMeasure(plan, now)} is below, %`);
}

/** How it stands; what this page does not work out is said to be worked out elsewhere. */
export function standsWords(stands: TriggersNow, now: TriggerNow): string {
  const words = triggerStands(stands, now);
  return now.condition === "contingencyCoverBelow" && now.unknown !== undefined
    ? `${words} The section Money shows it.`
    : words;
}

/** An id is made from words: those of the condition. */
const triggerIds = {
  finishLaterThan: "date slips",
  costAbove: "sum grows",
  chanceOfDateBelow: "chance of date",
  chanceOfBudgetBelow: "chance of sum",
  contingencyCoverBelow: "contingency cover",
  signpost: "signpost",
} as const;
