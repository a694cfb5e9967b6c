import type { Benefit } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { countedIn } from "../plan/countedIn.ts";
import { figureText } from "../plan/figureText.ts";
import { readNumber } from "../plan/readNumber.ts";
import {
  chosenField,
  dateText,
  entryField,
  type FieldsOf,
  optionalDate,
  optionalText,
  whoField,
} from "./entryFields.ts";
import { needed, type Reading } from "./listsElement.ts";

const kinds = [
  ["", "not said"],
  ["revenue", "income"],
  ["cost-saving", "costs saved"],
  ["time-saving", "time saved"],
  ["process", "a better process"],
  ["efficiency", "more from the same effort"],
  ["risk-reduction", "less risk"],
] as const;

/** Keys of a benefit that are stated here and not in its row. */
export const moreOfBenefit = [
  "kind",
  "goal",
  "owner",
  "baseline",
  "target",
  "counted",
  "unit",
  "worth",
  "lag",
  "ramp",
  "lasts",
  "until",
] as const;

/** All of a benefit that its row has no room for: what sort it is, who sees to it, how it comes and how long it lasts. */
export function benefitDetails(on: FieldsOf, benefit: Benefit, path: string): TemplateResult {
  const of = benefit.name;
  const { plan } = on;
  const text = (key: "baseline" | "target", label: string) =>
    entryField(on, {
      path: `${path}.${key}`,
      label,
      of,
      committed: benefit[key] ?? "",
      wraps: true,
      read: optionalText,
    });
  const months = (key: "lag" | "ramp" | "lasts", label: string) =>
    entryField(on, {
      path: `${path}.${key}`,
      label,
      of,
      committed: benefit[key] ? String(benefit[key]) : "",
      kind: "number",
      read: optionalMonths,
    });
  return html`<fieldset class="effect"><legend>${of}</legend><div class="entry-fields">
    ${chosenField(on, { path: `${path}.kind`, label: "What sort it is", of, committed: benefit.kind ?? "", choices: kinds })}
    ${
      plan.purpose.goals.length === 0
        ? nothing
        : chosenField(on, {
            path: `${path}.goal`,
            label: "Goal it serves",
            of,
            committed: benefit.goal ?? "",
            choices: [
              ["", "not said"],
              ...plan.purpose.goals.map(({ id, statement }) => [id, statement] as const),
            ],
          })
    }
    ${whoField(on, { path: `${path}.owner`, label: "Owner", of, committed: benefit.owner ?? "" })}
    ${text("baseline", "How it is today")} ${text("target", "How it is to be")}
    ${months("lag", "Months until it begins")} ${months("ramp", "Months until it is there in full")}
    ${months("lasts", "Months it lasts")}
    ${entryField(on, { path: `${path}.until`, label: "Last day it counts", of, committed: dateText(benefit.until), kind: "date", read: optionalDate })}
    ${chosenField(on, {
      path: `${path}.counted`,
      label: "Counted in",
      of,
      committed: benefit.quantity === undefined ? "money" : "units",
      choices: [
        ["money", `money, ${plan.currency}`],
        ["units", "units of its own"],
      ],
      edits: (value) => countedIn(value === "money" ? "amount" : "quantity", path, on.stated),
    })}
    ${benefit.quantity === undefined ? nothing : unitFields(on, benefit, path)}
  </div></fieldset>`;
}

/** What the units are, and what one is worth: without that it is told, and not counted as money. */
function unitFields(on: FieldsOf, benefit: Benefit, path: string): TemplateResult {
  const of = benefit.name;
  const { currency } = on.plan;
  const worth = benefit.worth;
  return html`${entryField(on, {
    path: `${path}.unit`,
    label: "Unit",
    of,
    committed: benefit.unit ?? "",
    read: needed("Write what is counted: hours, visits, kilometres."),
  })}
  ${entryField(on, {
    path: `${path}.worth`,
    label: `Worth of one, ${currency}`,
    of,
    committed: worth === undefined ? "" : figureText(worth),
    kind: "number",
    read: (text) =>
      text.trim() === "" ? { value: undefined } : readNumber(text, `a sum in ${currency}`, "40"),
  })}`;
}

const optionalMonths = (text: string): Reading => {
  if (text.trim() === "") return { value: undefined };
  const entry = readNumber(text, "a number of months", "6");
  return "value" in entry && entry.value < 0 ? { words: "A number of months is 0 or more. Write 6." } : entry;
};
