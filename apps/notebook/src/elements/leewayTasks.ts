import type { Forecast, Plan, Task } from "@leeway/core";
import { html, nothing, type PropertyValues } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { linksCell, readLinksCell } from "../plan/linksEntry.ts";
import { newTask, type TaskCells } from "../plan/newTask.ts";
import { pasteTasks } from "../plan/pasteTasks.ts";
import { moveToPhase, phasesIn, renamePhase } from "../plan/phases.ts";
import { removeTask } from "../plan/removeTask.ts";
import { shownNames } from "../plan/shownName.ts";
import { statedAt } from "../plan/stated.ts";
import { taskUnit } from "../plan/unitWords.ts";
import type { Pending } from "../store/state.ts";
import { calendarSpan, type TimeScale } from "../words/timeScale.ts";
import { estimateInputs, outcomesWords } from "./estimateCellsView.ts";
import { send } from "./events.ts";
import { field, isTyped } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { LongElement } from "./longElement.ts";
import { messageId } from "./messageId.ts";
import { newPhaseLine } from "./newPhaseLine.ts";
import { newTaskRow } from "./newTaskRow.ts";
import { closesPlan, saysOther } from "./openEnds.ts";
import { RowStops } from "./rowStops.ts";
import { type RowAction, RowTools } from "./rowTools.ts";
import { tableKeys } from "./tableKeys.ts";
import { taskFollows, timeAxis } from "./taskFollows.ts";
import { TaskForms } from "./taskForms.ts";

/** The unit the section's heading names; a row says so when its own is another. */
const usual = "working days";

/** Rows made in one turn: a long table grows, so that it never holds the page. */
const rowsAtOnce = 60;

/** Rows of a block that are pasted at once. */
const most = 1000;

interface Part {
  key: string;
  task?: Task;
  at: number;
  /** Its phase begins with it. */
  heads?: boolean;
  /** A button that adds to the end of this phase, in place of a task. */
  adds?: { phase: string | undefined };
  /** That phase has no task yet: its heading stands before the button. */
  empty?: true;
}

/** The work: what is stated about each task, and beside it when it finishes and how often it is critical. */
export class LeewayTasks extends LongElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    forecast: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    fading: { type: Boolean },
    ends: { attribute: false, hasChanged: saysOther },
    told: { state: true },
    draft: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  forecast: Forecast | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  /** The plan text cannot be read: nothing can be edited here until it can. */
  readonly = false;
  fading = false;
  /** What is worth a look at rows, by the ids of their tasks. */
  ends: ReadonlyMap<string, string> = new Map();
  /** What was done to rows last, in words. */
  told = "";
  /** A new row: where it is to go, and what is missing in it. It is part of the plan once it can be read. */
  draft: { at: number; phase: string | undefined; words?: string } | undefined;
  #forms = new TaskForms(this);
  #rows = rowsAtOnce;
  /** What a task that nothing waits for may have been meant to come before. */
  #closes: Task | undefined;
  #tools = new RowTools(this, {
    move: (path, by) => this.#move(placeOf(path), by),
    remove: (path) => {
      const removal = removeTask(this.stated, placeOf(path));
      return "refused" in removal ? removal : { edits: removal.edits, told: removal.words };
    },
    name: (path) => this.plan?.tasks[placeOf(path)]?.name ?? "",
    into: {
      label: "Phase",
      choices: () => ["", ...phasesIn(this.stated)],
      at: (path) => this.plan?.tasks[placeOf(path)]?.phase ?? "",
      move: (path, to) => this.#moveInto(placeOf(path), to === "" ? undefined : to),
    },
  });

  constructor() {
    super();
    // After the tools: they are in the row by then.
    new RowStops(this, { groups: true });
  }

  /** The new row stays behind the task it was behind, and behind those that came from it: it is never moved itself. */
  protected override willUpdate(changed: PropertyValues<this>): void {
    const { draft, plan } = this;
    const old = changed.get("plan");
    if (draft === undefined || plan === undefined || old === undefined) return;
    const known = new Set(old.tasks.map(({ id }) => id));
    let at = plan.tasks.findIndex(({ id }) => id === old.tasks[draft.at - 1]?.id) + 1;
    if (at === 0) at = Math.min(draft.at, plan.tasks.length);
    for (let id = plan.tasks[at]?.id; id !== undefined && !known.has(id); id = plan.tasks[at]?.id) at++;
    if (at !== draft.at) this.draft = { ...draft, at };
  }

  protected override updated(): void {
    if (this.plan === undefined || this.plan.tasks.length <= this.#rows) return;
    this.#rows += rowsAtOnce;
    this.requestUpdate();
  }

  /** All rows, those too whose turn has not come. */
  override drawForPaper(): void {
    const { plan } = this;
    if (plan !== undefined && plan.tasks.length > this.#rows) {
      this.#rows = plan.tasks.length;
      this.requestUpdate();
    }
    super.drawForPaper();
  }

  protected override render() {
    const { plan, forecast } = this;
    if (plan === undefined) return nothing;
    const { stated } = this;
    const known = new Set(plan.tasks.map((task) => task.id));
    const shown = shownNames(plan.tasks);
    const scale = forecast === undefined ? undefined : calendarSpan(forecast);
    const names = new Map(plan.people.map((person) => [person.id, person.name]));
    const { draft } = this;
    this.#closes = closesPlan(plan);
    return html`<table class="stated work" role="table" @keydown=${this.#keys} @paste=${this.#paste}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col" class="name">Task</th>
          <th role="columnheader" scope="col" class="number">Low</th>
          <th role="columnheader" scope="col" class="number">Likely</th>
          <th role="columnheader" scope="col" class="number">High</th>
          <th role="columnheader" scope="col" class="after">Waits for, by</th>
          <th role="columnheader" scope="col" class="when">${scale === undefined ? "When" : timeAxis(scale)}</th>
          <th role="columnheader" scope="col" class="finish">Finishes, P10 to P90</th>
          <th role="columnheader" scope="col" class="critical">Critical</th>
        </tr>
      </thead>
      <tbody role="rowgroup" class=${this.fading ? "settling" : ""}>
        ${repeat(
          this.#parts(plan),
          ({ key }) => key,
          ({ task, at, heads, adds, empty }) => {
            if (adds !== undefined && empty)
              return html`<tr role="row" class="phase"><th role="rowheader" scope="rowgroup" colspan="8">${adds.phase}</th></tr>
                <tr role="row" class="adds-row"><td role="cell">${draft?.at === at && draft.phase === adds.phase ? nothing : html`<span class="quiet">No task yet. </span>`}${this.#addButton(at, adds.phase)}</td></tr>`;
            if (adds !== undefined) return this.#adds(at, adds.phase);
            if (task === undefined) return draft === undefined ? nothing : this.#newRow(draft);
            return html`${
              heads
                ? html`<tr role="row" class="phase">
                  <th role="rowheader" scope="rowgroup" colspan="8">${this.#phaseName(task.phase, at)}</th>
                </tr>`
                : nothing
            }${this.#row(plan, task, at, stated, known, shown, names, scale)}`;
          },
        )}
      </tbody>
    </table>
    ${newPhaseLine({
      host: this,
      plan,
      stated: this.stated,
      readonly: this.readonly,
      told: (words) => {
        this.told = words;
      },
    })}
    <p class="rows-told" role="status">${this.told}</p>`;
  }

  /** The heading of a phase is its name, to be written over: it changes wherever the phase is named. */
  #phaseName(name: string | undefined, at: number) {
    if (name === undefined) return nothing;
    const path = `tasks[${at}].phase`;
    return html`${field({
      label: `Name of the phase ${name}`,
      committed: name,
      shown: this.pending.get(path)?.cells.value,
      message: this.pending.has(path) ? messageId(path) : undefined,
      readonly: this.readonly,
      commit: (text) => {
        const cells = { value: text };
        const result = renamePhase(name, text, this.stated);
        if ("words" in result)
          send(this, "plan-refuse", { field: path, pending: { cells, words: result.words } });
        else send(this, "plan-edit", { field: path, cells, edits: result.edits });
      },
      drop: () => send(this, "plan-drop", { field: path }),
    })}${fieldMessage(messageId(path), this.pending.get(path))}`;
  }

  /** The rows in order, each with a key of its own: a row that comes leaves the others, and what is typed there, alone. */
  #parts(plan: Plan): Part[] {
    const { draft } = this;
    const end = plan.tasks.length;
    const empty = this.#rows < end ? [] : emptyPhases(plan);
    const after = empty.flatMap((phase): Part[] => [
      { key: `empty ${phase}`, at: end, adds: { phase }, empty: true },
      ...(draft?.at === end && draft.phase === phase ? [{ key: "new row", at: end }] : []),
    ]);
    const elsewhere = draft?.phase !== undefined && empty.includes(draft.phase);
    const parts = plan.tasks.slice(0, this.#rows).flatMap((task, at): Part[] => {
      const next = plan.tasks[at + 1];
      const parts: Part[] = [
        {
          key: task.id,
          task,
          at,
          heads: task.phase !== undefined && task.phase !== plan.tasks[at - 1]?.phase,
        },
      ];
      if (draft?.at === at + 1 && !elsewhere) parts.push({ key: "new row", at: at + 1 });
      if (!this.readonly && (next === undefined || next.phase !== task.phase))
        parts.push({ key: `adds ${next?.id ?? ""}`, at: at + 1, adds: { phase: task.phase } });
      return parts;
    });
    return [...parts, ...after];
  }

  #row(
    plan: Plan,
    task: Task,
    at: number,
    stated: unknown,
    known: ReadonlySet<string>,
    shown: ReadonlyMap<string, string>,
    names: ReadonlyMap<string, string>,
    scale: TimeScale | undefined,
  ) {
    const path = `tasks[${at}]`;
    const estimate = task.effort ?? task.duration;
    const estimatePath = `${path}.${task.effort === undefined ? "duration" : "effort"}`;
    const linksPath = `${path}.after`;
    const namePath = `${path}.name`;
    const links = linksCell(task.after, shown);
    const loose = this.ends.get(task.id);
    const unit = estimate === undefined ? usual : taskUnit(task);
    const people = task.people.map((person) => names.get(person.id) ?? person.id).join(", ");
    const inputs =
      estimate === undefined
        ? []
        : estimateInputs({
            host: this,
            estimate,
            path: estimatePath,
            stated,
            of: task.name,
            unit,
            pending: this.pending.get(estimatePath),
            message: `message-${task.id}-estimate`,
            row: at,
            column: 1,
            readonly: this.readonly || task.finished !== undefined,
          });
    const cells =
      inputs.length > 0
        ? inputs.map((input) => html`<td role="cell" class="number">${input}</td>`)
        : html`<td role="cell" class="words" colspan="3">${
            estimate === undefined
              ? html`<span class="quiet">milestone</span>`
              : outcomesWords(estimate, unit)
          }</td>`;
    const waits = [namePath, estimatePath, linksPath].some((field) => this.pending.has(field));
    return html`<tr role="row" class="${waits ? "waits" : ""}" id="task-${task.id}" data-item=${path}>
      <th role="rowheader" scope="row" class="name" data-text=${task.name}>${field({
        label: `${shown.get(task.id) ?? task.name}: name`,
        committed: task.name,
        shown: this.pending.get(namePath)?.cells.value,
        message: this.pending.has(namePath) ? `message-${task.id}-name` : undefined,
        row: at,
        column: 0,
        readonly: this.readonly,
        commit: (text) => this.#commitName(namePath, text),
        drop: () => send(this, "plan-drop", { field: namePath }),
      })}</th>
      ${cells}
      <td role="cell" class="after" data-tools>
        <span class="links" data-text=${links}>${field({
          label: `${task.name}: waits for these tasks, by name or id`,
          committed: links,
          shown: this.pending.get(linksPath)?.cells.value,
          message: this.pending.has(linksPath) ? `message-${task.id}-after` : undefined,
          note: loose === undefined ? undefined : `loose-${task.id}`,
          row: at,
          column: 4,
          readonly: this.readonly,
          wraps: true,
          suggest: { of: "tasks", not: task.id },
          tidy: (text) => text.replace(/[\s,;]+$/, ""),
          commit: (text) => this.#commitLinks(linksPath, stated, text, known, task.id),
          drop: () => send(this, "plan-drop", { field: linksPath }),
        })}</span>
        <span class="by">${[unit === usual ? "" : unit, people].filter((part) => part !== "").join(" · ")}</span>
        ${loose === undefined ? nothing : html`<span class="loose" id="loose-${task.id}">${loose}${this.#shouldWait(task)}</span>`}
        ${this.#forms.button(task, path)}
      </td>
      ${taskFollows(task, plan, this.forecast, scale)}
      ${this.#forms.form(plan, task, path)}
      ${
        waits
          ? html`<td role="cell" class="messages">
              ${fieldMessage(`message-${task.id}-name`, this.pending.get(namePath))}
              ${fieldMessage(`message-${task.id}-estimate`, this.pending.get(estimatePath))}
              ${fieldMessage(`message-${task.id}-after`, this.pending.get(linksPath))}
            </td>`
          : nothing
      }
    </tr>`;
  }

  /** A way to the field where it is put right, as a question: that it stands open may be meant. */
  #shouldWait(task: Task) {
    const to = this.#closes;
    if (to === undefined || to.id === task.id) return nothing;
    return html` Should <a href="#task-${to.id}" data-within=".links .field">“${to.name}”</a> wait for it?`;
  }

  #newRow(draft: NonNullable<LeewayTasks["draft"]>) {
    const drop = (left: boolean): void => {
      this.draft = undefined;
      if (left) return;
      void this.updateComplete.then(() => {
        if (document.activeElement !== document.body) return;
        this.querySelector<HTMLElement>(`[data-adds="${draft.at}"]`)?.focus();
      });
    };
    return newTaskRow({ ...draft, opens: opensAt(draft.at, draft.phase), add: this.#add, drop });
  }

  #adds(at: number, phase: string | undefined) {
    return html`<tr role="row" class="adds-row"><td role="cell">${this.#addButton(at, phase)}</td></tr>`;
  }

  #addButton(at: number, phase: string | undefined) {
    return html`<button type="button" class="adds-button" data-adds=${at} data-opens=${opensAt(at, phase)}
      @click=${() => this.#open(at, phase)}>Add a task<span class="unseen">${phase === undefined ? " at the end" : ` to ${phase}${this.#again(at, phase)}`}</span></button>`;
  }

  /** A phase whose tasks do not stand together has more than one end. */
  #again(at: number, phase: string): string {
    const earlier = (this.plan?.tasks ?? []).slice(0, at - 1);
    const ends = earlier.filter(
      (task, i) => task.phase === phase && this.plan?.tasks[i + 1]?.phase !== phase,
    );
    return ends.length === 0 ? "" : `, after “${this.plan?.tasks[at - 1]?.name}”`;
  }

  #open(at: number, phase: string | undefined): void {
    this.draft = { at, phase };
    this.told = "";
    this.drawNow();
    this.querySelector<HTMLInputElement>(".new-row input")?.focus();
  }

  #keys = (event: KeyboardEvent): void => {
    const { target } = event;
    const tasks = this.plan?.tasks ?? [];
    const last = tasks.length - 1;
    const plain = !event.shiftKey && !event.altKey && !event.ctrlKey && !event.metaKey;
    if (event.key === "Enter" && plain && !this.readonly && isTyped(target)) {
      if (target.closest(".new-row") !== null) return; // the new row's own
      if (Number(target.dataset.row) === last && this.draft?.at !== last + 1) {
        event.preventDefault();
        target.dispatchEvent(new Event("change", { bubbles: true }));
        this.#open(last + 1, tasks[last]?.phase);
        return;
      }
    }
    tableKeys(event);
  };

  /** Takes the new row into the plan, and offers the next one below it. */
  #add = (cells: TaskCells): keyof TaskCells | undefined => {
    const { draft, plan } = this;
    if (draft === undefined || plan === undefined) return undefined;
    const made = newTask(cells, this.stated, plan.tasks, draft.phase);
    if ("words" in made) {
      this.draft = { ...draft, words: made.words };
      return made.cell;
    }
    this.draft = { at: draft.at, phase: draft.phase };
    this.#tools.act((): RowAction | { refused: string } => {
      const { draft: now, plan: then } = this;
      if (then === undefined) return { refused: "" };
      const again = newTask(cells, this.stated, then.tasks, draft.phase);
      if ("words" in again) return { refused: `“${cells.name}” was not added. ${again.words}` };
      const at = now?.at ?? draft.at;
      return {
        edits: [{ path: "tasks", value: again.task, add: at }],
        told: `Added “${again.task.name}”.`,
      };
    });
    return undefined;
  };

  /** A block from a spreadsheet or a mail fills cells from this one on; a plain word is pasted as everywhere. */
  #paste = (event: ClipboardEvent): void => {
    const { target } = event;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!isTyped(target) || target.dataset.row === undefined || this.readonly) return;
    if (!/[\t\r\n]/.test(text.trim())) return;
    event.preventDefault();
    const row = Math.ceil(Number(target.dataset.row));
    const column = Number(target.dataset.column ?? 0);
    const isNew = target.closest(".new-row") !== null;
    void import("../plan/readBlock.ts").then(({ readBlock }) => {
      const block = readBlock(text);
      this.#tools.act((): RowAction | { refused: string } => {
        const { plan, draft } = this;
        if (plan === undefined) return { refused: "" };
        if ("words" in block) return { refused: `The block cannot be read. ${block.words}` };
        const { rows } = block;
        if (rows.length > most)
          return { refused: `A block of more than ${most} rows is too long. Paste it in parts.` };
        const end = plan.tasks.length;
        const start =
          isNew && draft !== undefined
            ? { row: end, column, at: draft.at, phase: draft.phase }
            : { row, column, at: end, phase: plan.tasks[end - 1]?.phase };
        return pasteTasks(rows, plan, this.stated, start);
      });
    });
  };

  #moveInto(at: number, phase: string | undefined): RowAction | undefined {
    const task = this.plan?.tasks[at];
    if (task === undefined || task.phase === phase) return undefined;
    const moved = moveToPhase(at, phase, this.stated);
    const where = phase === undefined ? "no phase" : `“${phase}”`;
    return {
      edits: moved.edits,
      at: `tasks[${moved.at}]`,
      told: `“${task.name}” now belongs to ${where}.`,
    };
  }

  #move(at: number, by: -1 | 1): RowAction | undefined {
    const tasks = this.plan?.tasks ?? [];
    const [task, other] = [tasks[at], tasks[at + by]];
    if (task === undefined || other === undefined) return undefined;
    if (task.phase !== other.phase) {
      const where = other.phase === undefined ? "no phase" : `“${other.phase}”`;
      return {
        edits: [{ path: `tasks[${at}].phase`, value: other.phase }],
        at: `tasks[${at}]`,
        told: `“${task.name}” now belongs to ${where}.`,
      };
    }
    return {
      edits: [{ path: "tasks", value: undefined, swap: Math.min(at, at + by) }],
      at: `tasks[${at + by}]`,
      told: `Moved “${task.name}” ${by < 0 ? "up" : "down"}.`,
    };
  }

  #commitName(path: string, text: string): void {
    const cells = { value: text };
    if (text.trim() === "") {
      const words = "A task needs a name. Write what is done, in a few words.";
      send(this, "plan-refuse", { field: path, pending: { cells, words } });
      return;
    }
    send(this, "plan-edit", {
      field: path,
      cells,
      edits: [{ path: path, value: text.trim() }],
    });
  }

  #commitLinks(path: string, stated: unknown, text: string, known: ReadonlySet<string>, self: string): void {
    const cells = { value: text };
    const result = readLinksCell(text, path, statedAt(stated, path), known, self, this.plan?.tasks);
    if ("words" in result)
      send(this, "plan-refuse", { field: path, pending: { cells, words: result.words } });
    else send(this, "plan-edit", { field: path, cells, edits: result.edits });
  }
}

/** Phases that are declared and have no task. */
function emptyPhases(plan: Plan): string[] {
  const used = new Set(plan.tasks.map(({ phase }) => phase));
  return plan.phases.flatMap(({ name }) => (used.has(name) ? [] : [name]));
}

/** The place of a new row: phases without a task share the one at the end. */
function opensAt(at: number, phase: string | undefined): string {
  return `${at} ${phase ?? ""}`;
}

function placeOf(path: string): number {
  return Number(/\[(\d+)\]$/.exec(path)?.[1] ?? -1);
}

customElements.define("leeway-tasks", LeewayTasks);
