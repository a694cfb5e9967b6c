import { html, nothing, type TemplateResult } from "lit";
import { findTasks } from "../plan/findTasks.ts";
import type { Pending } from "../store/state.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { messageId } from "./messageId.ts";

interface TaskPicker {
  host: HTMLElement;
  /** What they are picked for, in full: "The drains are broken: effect 1". */
  of: string;
  tasks: readonly { id: string; name: string }[];
  chosen: readonly string[];
  /** Path of the list of ids. */
  path: string;
  pending: ReadonlyMap<string, Pending>;
  readonly: boolean;
}

/** Tasks that something touches: each can be taken away, another is picked by typing its name. */
export function taskPicker(options: TaskPicker): TemplateResult {
  const { host, of, tasks, chosen, path, readonly } = options;
  const names = new Map(tasks.map(({ id, name }) => [id, name]));
  const waits = options.pending.get(path);
  const put = (ids: readonly string[], cells: Record<string, string>): void =>
    send(host, "plan-edit", {
      field: path,
      cells,
      edits: [{ path, value: ids.length === 1 ? ids[0] : ids }],
    });
  return html`<div class="picker">
    <ul class="picked">${chosen.map(
      (id) =>
        html`<li>${names.get(id) ?? id}${
          readonly || chosen.length < 2
            ? nothing
            : html` <button type="button" @click=${(event: Event) => {
                // The focus goes to the input beside it: the button goes with its task.
                const picker = event.target instanceof Element ? event.target.closest(".picker") : null;
                picker?.querySelector("input")?.focus();
                put(
                  chosen.filter((one) => one !== id),
                  {},
                );
              }}>Take away<span class="unseen">: ${names.get(id) ?? id}, from ${of}</span></button>`
        }</li>`,
    )}</ul>
    ${
      readonly
        ? nothing
        : html`<label class="picks"><span class="form-label">and on</span>${field({
            label: `${of}: add a task, by name`,
            committed: "",
            shown: waits?.cells.value,
            message: waits === undefined ? undefined : messageId(path),
            suggest: { of: "tasks" },
            commit: (text) => {
              const found = findTasks(text, tasks);
              const cells = { value: text };
              if ("words" in found)
                send(host, "plan-refuse", { field: path, pending: { cells, words: found.words } });
              else {
                // What was typed is a task beside it now.
                const typed = document.activeElement;
                if (typed instanceof HTMLInputElement && typed.dataset.suggest !== undefined)
                  typed.value = "";
                put([...new Set([...chosen, ...found.ids])], cells);
              }
            },
            drop: () => send(host, "plan-drop", { field: path }),
          })}</label>`
    }
    ${fieldMessage(messageId(path), waits)}
  </div>`;
}
