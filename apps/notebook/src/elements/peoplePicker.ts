import type { Person, Task } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { Edit } from "../plan/edit.ts";
import { findWho } from "../plan/findWho.ts";
import { readShare } from "../plan/readShare.ts";
import { statedAt } from "../plan/stated.ts";
import { taskPeople, withoutPerson, withPeople } from "../plan/taskPeople.ts";
import { entryField, type FieldsOf, percentText, tickField } from "./entryFields.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { messageId } from "./messageId.ts";

/** Who works on a task, with how much of their time: each can be taken away, another is picked by name. */
export function peoplePicker(on: FieldsOf & { task: Task; path: string }): TemplateResult {
  const { host, plan, task, readonly } = on;
  const path = `${on.path}.people`;
  const waits = on.pending.get(path);
  const stated = taskPeople(on.stated, path);
  const put = (value: unknown, cells: Record<string, string>): void =>
    send(host, "plan-edit", { field: path, cells, edits: [{ path, value }] });
  return html`<div class="picker">
    ${task.people.length === 0 ? html`<p class="quiet">Nobody yet.</p>` : nothing}
    <ul class="picked members">${task.people.map(({ id, along }, at) => {
      const person = plan.people.find((one) => one.id === id);
      const name = person?.name ?? id;
      return html`<li><span>${name}${
        readonly
          ? nothing
          : html` <button type="button" @click=${(event: Event) => {
              // The focus goes to the input beside it: the button goes with its person.
              const picker = event.target instanceof Element ? event.target.closest(".picker") : null;
              picker?.querySelector<HTMLElement>(".picks input")?.focus();
              put(withoutPerson(stated, id), {});
            }}>Take away<span class="unseen">: ${name}, from ${task.name}</span></button>`
      }</span>${memberFields({ ...on, path, at, along, person, of: `${task.name}, ${name}` })}</li>`;
    })}</ul>
    ${
      readonly
        ? nothing
        : html`<label class="picks"><span class="form-label">${task.people.length === 0 ? "who" : "and"}</span>${field(
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

interface Member extends FieldsOf {
  /** Path of the people. */
  path: string;
  at: number;
  along: boolean;
  person: Person | undefined;
  of: string;
}

/** How much of their time it takes, and whether it waits for them. */
function memberFields(on: Member): TemplateResult {
  const { path, at, person, plan, of } = on;
  const edits = (key: "share" | "along", value: unknown): Edit[] => [
    { path: `${path}[${at}].${key}`, value, names: "id" },
  ];
  const share = statedAt(on.stated, `${path}[${at}].share`);
  const own = person === undefined || person.share === 1 ? "" : `; empty: ${percentText(person.share)}`;
  return html`<div class="entry-fields">
    ${entryField(on, {
      path: `${path}[${at}].share`,
      label: `Share of their time, %${own}`,
      of,
      committed: typeof share === "number" ? percentText(share) : "",
      kind: "number",
      read: (text) => {
        const found = readShare(text, person, plan);
        return "words" in found ? found : { edits: edits("share", found.value) };
      },
    })}
    ${tickField(on, {
      path: `${path}[${at}].along`,
      label: "Their absences do not hold it up",
      of,
      committed: on.along,
      edits: (ticked) => edits("along", ticked ? true : undefined),
    })}
  </div>`;
}
