import { html, type TemplateResult } from "lit";
import type { Edit } from "../plan/edit.ts";
import { readNumber } from "../plan/readNumber.ts";
import { readYears } from "../plan/readYears.ts";
import { statedAt } from "../plan/stated.ts";
import { entryField, type FieldsOf, percentText } from "./entryFields.ts";
import type { Reading } from "./listsElement.ts";

/** How benefits are weighed against the cost: how far ahead they count, and how much less what comes later counts. */
export function appraisalFields(on: FieldsOf): TemplateResult {
  const of = "Benefits";
  const said = (key: "years" | "discountRate"): number | undefined => {
    const value = statedAt(on.stated, `appraisal.${key}`);
    return typeof value === "number" ? value : undefined;
  };
  const edits = (key: "years" | "discountRate", value: unknown): Edit[] => {
    const whole = statedAt(on.stated, "appraisal");
    const alone =
      typeof whole === "object" && whole !== null && Object.keys(whole).every((one) => one === key);
    return [{ path: value === undefined && alone ? "appraisal" : `appraisal.${key}`, value }];
  };
  const number = (
    key: "years" | "discountRate",
    label: string,
    committed: string,
    read: (text: string) => { value: number } | { words: string },
  ) =>
    entryField(on, {
      path: `appraisal.${key}`,
      label,
      of,
      committed,
      kind: "number",
      read: (text): Reading => {
        if (text.trim() === "")
          return said(key) === undefined ? { edits: [] } : { edits: edits(key, undefined) };
        const found = read(text);
        return "words" in found ? found : { edits: edits(key, found.value) };
      },
    });
  const years = said("years");
  return html`<div class="entry-form plain">
    <p class="quiet">What comes later counts for less by the discount rate, which is your organisation's own. Empty counts 100 years, at 0${"\u00a0"}%.</p>
    <div class="entry-fields">
      ${number("years", "Years counted", years === undefined ? "" : String(years), readYears)}
      ${number("discountRate", "Discount rate, % a year", percentText(said("discountRate")), readRate)}
    </div>
  </div>`;
}

function readRate(text: string): { value: number } | { words: string } {
  const entry = readNumber(text.replace(/\s*%$/, ""), "a percentage", "3");
  if ("words" in entry) return entry;
  if (entry.value <= -100 || entry.value >= 100)
    return { words: "A discount rate lies between -100 and 100 %. Write 3." };
  return { value: Number((entry.value / 100).toPrecision(12)) };
}
