import type { Link, LinkKind, Task } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { Edit } from "../plan/edit.ts";
import { readNumber } from "../plan/readNumber.ts";
import { shownNames } from "../plan/shownName.ts";
import { statedAt } from "../plan/stated.ts";
import { delayUnit } from "../plan/unitWords.ts";
import { chosenField, entryField, type FieldsOf } from "./entryFields.ts";
import { estimateRange } from "./impactWords.ts";
import type { Reading } from "./listsElement.ts";

type OfTask = FieldsOf & { task: Task; path: string };

const kinds: readonly (readonly [LinkKind, string])[] = [
  ["finish-to-start", "starts once it has finished"],
  ["start-to-start", "starts once it has started"],
  ["finish-to-finish", "finishes once it has finished"],
  ["start-to-finish", "finishes once it has started"],
];

/** What a task waits for: how it hangs on each of them, and how much later. Which they are is said in its row. */
export function taskLinks(on: OfTask): TemplateResult {
  const { after } = on.task;
  const names = shownNames(on.plan.tasks);
  return html`<h3>What it waits for</h3>
    ${after.length === 0 ? html`<p class="quiet">Nothing: no task is named under “Waits for” in its row.</p>` : nothing}
    <ul class="picked members">${after.map((link, at) => {
      const name = names.get(link.task) ?? link.task;
      const again = after.slice(0, at).filter(({ task }) => task === link.task).length;
      const of = `${on.task.name} waits for ${name}${again === 0 ? "" : `, link ${again + 1}`}`;
      return html`<li><span>${name}</span>${linkFields(on, link, `${on.path}.after[${at}]`, of)}</li>`;
    })}</ul>`;
}

function linkFields(on: OfTask, link: Link, path: string, of: string): TemplateResult {
  const edits = (key: "link" | "lag", value: unknown): Edit[] => [
    { path: `${path}.${key}`, value, names: "task" },
  ];
  const stated = statedAt(on.stated, `${path}.lag`);
  const plain = stated === undefined || typeof stated === "number";
  return html`<div class="entry-fields">
    ${chosenField(on, {
      path: `${path}.link`,
      label: "This task",
      said: "kind of link",
      of,
      committed: link.link,
      choices: kinds,
      edits: (value) => edits("link", value === "finish-to-start" ? undefined : value),
    })}
    ${
      plain
        ? entryField(on, {
            path: `${path}.lag`,
            label: "Working days later",
            of,
            committed: typeof stated === "number" && stated !== 0 ? String(stated) : "",
            kind: "number",
            read: (text) => {
              const found = lag(text);
              return "value" in found ? { edits: edits("lag", found.value) } : found;
            },
          })
        : html`<p class="quiet">${lagWords(link)}: edited in the <a href="#text">plan text</a>.</p>`
    }
  </div>`;
}

const lag = (text: string): Reading => {
  if (text.trim() === "") return { value: undefined };
  const entry = readNumber(text, "a number of working days", "2, or -1 for a day earlier");
  return "words" in entry ? entry : { value: entry.value === 0 ? undefined : entry.value };
};

/** A lag that is more than a certain number of working days. */
function lagWords({ lag, lagCalendar }: Link): string {
  const on = lagCalendar === undefined ? "" : ` on the calendar “${lagCalendar}”`;
  return `${estimateRange(lag)} ${delayUnit(lag)} later${on}`;
}
