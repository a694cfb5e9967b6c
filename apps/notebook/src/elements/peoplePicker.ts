import { formatPercent } from "@leeway/charts";
import type { Plan, Task } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { findWho } from "../plan/findWho.ts";
import { taskPeople, withoutPerson, withPeople } from "../plan/taskPeople.ts";
import type { FieldsOf } from "./entryFields.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { messageId } from "./messageId.ts";

/** Who works on a task: each can be taken away, another is picked by name. Shares and who comes along stay as stated. */
export function peoplePicker(on: FieldsOf & { task: Task; path: string }): TemplateResult {
  const { host, plan, task, readonly } = on;
  const path = `${on.path}.people`;
  const waits = on.pending.get(path);
  const stated = taskPeople(on.stated, path);
  const put = (value: unknown, cells: Record<string, string>): void =>
    send(host, "plan-edit", { field: path, cells, edits: [{ path, value }] });
  const chosen = task.people.map((person) => ({ ...person, words: personWords(plan, person) }));
  return html`<div class="picker">
    ${chosen.length === 0 ? html`<p class="quiet">Nobody yet.</p>` : nothing}
    <ul class="picked">${chosen.map(
      ({ id, words }) =>
        html`<li>${words}${
          readonly
            ? nothing
            : html` <button type="button" @click=${(event: Event) => {
                // The focus goes to the input beside it: the button goes with its person.
                const picker = event.target instanceof Element ? event.target.closest(".picker") : null;
                picker?.querySelector("input")?.focus();
                put(withoutPerson(stated, id), {});
              }}>Take away<span class="unseen">: ${words}, from ${task.name}</span></button>`
        }</li>`,
    )}</ul>
    ${
      readonly
        ? nothing
        : html`<label class="picks"><span class="form-label">${chosen.length === 0 ? "who" : "and"}</span>${field(
            {
              label: `${task.name}: add a person, by name`,
              committed: "",
              shown: waits?.cells.value,
              message: waits === undefined ? undefined : messageId(path),
              suggest: { of: "who" },
              commit: (text) => {
                const found = findWho(text, plan.people);
                const cells = { value: text };
                if ("words" in found) {
                  send(host, "plan-refuse", { field: path, pending: { cells, words: found.words } });
                  return;
                }
                // Who was typed stands beside it now.
                const typed = document.activeElement;
                if (typed instanceof HTMLInputElement && typed.dataset.suggest !== undefined)
                  typed.value = "";
                put(withPeople(stated, found.ids), cells);
              },
              drop: () => send(host, "plan-drop", { field: path }),
            },
          )}</label>`
    }
    ${fieldMessage(messageId(path), waits)}
  </div>`;
}

function personWords(plan: Plan, { id, share, along }: Task["people"][number]): string {
  const name = plan.people.find((person) => person.id === id)?.name ?? id;
  return [
    name,
    share === 1 ? "" : `${formatPercent(share)} of their time`,
    along ? "absences do not count" : "",
  ]
    .filter((part) => part !== "")
    .join(", ");
}
