import type { LitElement, ReactiveController } from "lit";
import type { Edit } from "../plan/edit.ts";
import type { Pending } from "../store/state.ts";
import { send } from "./events.ts";
import { isTyped } from "./field.ts";

/** What is done to rows at once: one step of undo. */
export interface RowAction {
  edits: readonly Edit[];
  /** Entries that could not be read, by the path of their field once the edits are made. */
  waits?: ReadonlyMap<string, Pending>;
  /** Path of the row that the reader is at afterwards. */
  at?: string;
  /** What happened, in words. */
  told: string;
}

interface Host extends LitElement {
  plan: unknown;
  pending: ReadonlyMap<string, Pending>;
  readonly: boolean;
  told: string;
}

interface Does {
  /** Undefined: it cannot go further. */
  move: (path: string, by: -1 | 1) => RowAction | undefined;
  remove: (path: string) => RowAction | { refused: string };
  name: (path: string) => string;
  /** What a row may be moved into, and where it is; undefined: there is no such choice. */
  into?: {
    label: string;
    choices: () => readonly string[];
    at: (path: string) => string;
    move: (path: string, to: string) => RowAction | undefined;
  };
}

const waitsAt = "rows";
/** Events that show the reader to have gone on. */
const goneBy = ["focusin", "pointerdown", "input"];

/**
 * What can be done with a row of a table: moved up and down, removed. The buttons are made once and go to the row that
 * has the focus or is pointed at, so that a long table does not carry them a hundred times. A row is marked by
 * `data-item`, its path; the cell that takes the buttons by `data-tools`.
 *
 * What is asked while an action is under way waits for its outcome: places in lists are true for one plan only.
 */
export class RowTools implements ReactiveController {
  #host: Host;
  #does: Does;
  #strip = document.createElement("span");
  #buttons: { up: HTMLButtonElement; down: HTMLButtonElement; remove: HTMLButtonElement };
  #into: HTMLSelectElement | undefined;
  #queue: (() => void)[] = [];
  #under: { plan: unknown; done: () => void } | undefined;
  #path = "";

  constructor(host: Host, does: Does) {
    this.#host = host;
    this.#does = does;
    this.#strip.className = "row-tools";
    const button = (words: string, on: () => void): HTMLButtonElement => {
      const made = document.createElement("button");
      made.type = "button";
      made.append(words, document.createElement("span"));
      made.lastElementChild?.classList.add("unseen");
      made.addEventListener("click", on);
      this.#strip.append(made);
      return made;
    };
    this.#buttons = {
      up: button("Up", () => this.#move(this.#path, -1)),
      down: button("Down", () => this.#move(this.#path, 1)),
      remove: button("Remove", () => this.#remove(this.#path)),
    };
    this.#buttons.up.setAttribute("aria-keyshortcuts", "Alt+ArrowUp");
    this.#buttons.down.setAttribute("aria-keyshortcuts", "Alt+ArrowDown");
    if (does.into !== undefined) this.#into = this.#makeInto(does.into);
    host.addController(this);
  }

  #makeInto({ label, move }: NonNullable<Does["into"]>): HTMLSelectElement {
    const holder = document.createElement("label");
    const select = document.createElement("select");
    const unseen = document.createElement("span");
    unseen.className = "unseen";
    const word = document.createElement("span");
    word.className = "into-word";
    word.textContent = `${label} `;
    holder.append(word, unseen, select);
    select.addEventListener("change", () => {
      const { value } = select;
      let to = this.#path;
      this.act(
        () => {
          const made = move(this.#path, value);
          to = made?.at ?? to;
          return made;
        },
        () => {
          const item = this.#host.querySelector<HTMLElement>(`[data-item="${CSS.escape(to)}"]`);
          if (item === null) return;
          this.#mount(item);
          select.focus();
          item.scrollIntoView({ block: "nearest" });
        },
      );
    });
    this.#strip.prepend(holder);
    return select;
  }

  /** The choices as they are now, and where the row is among them. */
  #fillInto(): void {
    const { into } = this.#does;
    const select = this.#into;
    if (into === undefined || select === undefined) return;
    const choices = into.choices();
    const holder = select.closest("label");
    if (holder !== null) holder.hidden = choices.length < 2;
    if (choices.join("\n") !== [...select.options].map(({ value }) => value).join("\n"))
      select.replaceChildren(...choices.map((name) => new Option(name === "" ? "none" : name, name)));
    select.value = into.at(this.#path);
    select.disabled = this.#host.readonly;
    const unseen = holder?.querySelector(".unseen");
    if (unseen) unseen.textContent = `of ${this.#does.name(this.#path)}`;
  }

  hostConnected(): void {
    this.#host.addEventListener("focusin", this.#follow);
    this.#host.addEventListener("pointerover", this.#follow);
    this.#host.addEventListener("keydown", this.#keys);
    for (const type of goneBy) document.addEventListener(type, this.#goOn, true);
  }

  hostDisconnected(): void {
    this.#host.removeEventListener("focusin", this.#follow);
    this.#host.removeEventListener("pointerover", this.#follow);
    this.#host.removeEventListener("keydown", this.#keys);
    for (const type of goneBy) document.removeEventListener(type, this.#goOn, true);
  }

  hostUpdated(): void {
    const under = this.#under;
    if (under !== undefined) {
      const refused = this.#host.pending.get(waitsAt);
      if (this.#host.plan === under.plan && refused === undefined) return;
      this.#under = undefined;
      if (refused === undefined) under.done();
      else {
        this.#moving = undefined;
        this.#tell(`That cannot be done. ${refused.words}`, true);
        send(this.#host, "plan-drop", { field: waitsAt });
        this.#queue = [];
        return;
      }
    }
    this.#queue.shift()?.();
  }

  /** Does something once what was asked before is done. `action` is called with the plan as it is then. */
  act(action: () => RowAction | { refused: string } | undefined, then: () => void = () => {}): void {
    const run = (): void => {
      const made = this.#host.readonly ? undefined : action();
      if (made === undefined) return;
      if ("refused" in made) {
        this.#tell(made.refused, true);
        return;
      }
      this.#under = {
        plan: this.#host.plan,
        done: () => {
          this.#tell(made.told);
          then();
        },
      };
      const { edits, waits } = made;
      if (edits.length === 0) {
        this.#under = undefined;
        this.#tell(made.told);
        for (const [field, pending] of waits ?? []) send(this.#host, "plan-refuse", { field, pending });
        return;
      }
      send(this.#host, "plan-edit", {
        field: waitsAt,
        cells: {},
        edits,
        ...(waits === undefined ? {} : { waits }),
      });
    };
    if (this.#under === undefined) run();
    else if (this.#queue.length < 20) this.#queue.push(run);
  }

  /** What was done is seen at its row; why something was not is seen nowhere else, and stays in sight. */
  #tell(words: string, refused = false): void {
    this.#host.toggleAttribute("data-refused", refused);
    this.#host.told = words;
  }

  /** What was told is over once the reader types, or does something elsewhere. */
  #goOn = ({ type, target }: Event): void => {
    if (this.#host.told === "" || (type !== "input" && target instanceof Node && this.#host.contains(target)))
      return;
    this.#host.told = "";
  };

  #follow = (event: Event): void => {
    if (this.#under !== undefined || !(event.target instanceof Element)) return;
    const item = event.target.closest<HTMLElement>("[data-item]");
    if (item === null || !this.#host.contains(item)) return;
    // A row that is worked in keeps its buttons until the reader is elsewhere.
    if (event.type === "pointerover" && this.#strip.contains(document.activeElement)) return;
    this.#mount(item);
  };

  #mount(item: HTMLElement): void {
    const place = item.matches("[data-tools]") ? item : item.querySelector(":scope > [data-tools]");
    this.#path = item.dataset.item ?? "";
    const name = this.#does.name(this.#path);
    for (const button of Object.values(this.#buttons)) {
      const label = button.querySelector("span");
      if (label !== null) label.textContent = `: ${name}`;
      button.disabled = this.#host.readonly;
    }
    this.#fillInto();
    if (this.#strip.parentElement !== place) place?.append(this.#strip);
  }

  #keys = (event: KeyboardEvent): void => {
    if (!event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    const item = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-item]") : null;
    if (item === null) return;
    event.preventDefault();
    event.stopPropagation();
    this.#move(item.dataset.item ?? "", event.key === "ArrowUp" ? -1 : 1);
  };

  #move(path: string, by: -1 | 1): void {
    const from = document.activeElement;
    const button = [this.#buttons.up, this.#buttons.down].find((one) => one === from);
    const column = from instanceof HTMLElement ? from.dataset.column : undefined;
    // An entry that is still being typed is made first.
    if (isTyped(from) && /^text/.test(from.type)) from.dispatchEvent(new Event("change", { bubbles: true }));
    // The next step goes on from where this one leads to.
    const now = this.#under === undefined ? path : (this.#moving ?? path);
    let target = now;
    this.act(
      () => {
        const made = this.#does.move(this.#moving ?? now, by);
        target = made?.at ?? now;
        this.#moving = made === undefined ? undefined : target;
        return made ?? { refused: by < 0 ? "It is the first already." : "It is the last already." };
      },
      () => {
        this.#moving = undefined;
        if (this.#queue.length > 0) this.#moving = target;
        const item = this.#host.querySelector<HTMLElement>(`[data-item="${CSS.escape(target)}"]`);
        if (item === null) return;
        this.#mount(item);
        if (button !== undefined) button.focus();
        else if (column === undefined) item.querySelector<HTMLElement>("input, textarea")?.focus();
        else item.querySelector<HTMLElement>(`[data-column="${column}"]`)?.focus();
        item.scrollIntoView({ block: "nearest" });
      },
    );
  }
  /** Where the row that is being moved stands by now. */
  #moving: string | undefined;

  #remove(path: string): void {
    this.act(
      () => this.#does.remove(path),
      () => {
        // The row that has come into its place, or the one before.
        const list = path.replace(/\[\d+\]$/, "");
        const at = Number(/\[(\d+)\]$/.exec(path)?.[1] ?? 0);
        this.#strip.remove();
        for (const near of [at, at - 1]) {
          const item = this.#host.querySelector<HTMLElement>(
            `[data-item="${CSS.escape(`${list}[${near}]`)}"]`,
          );
          if (item === null) continue;
          item.querySelector<HTMLElement>("input, textarea, button, select")?.focus();
          return;
        }
        this.#host.querySelector<HTMLElement>(`[data-adds="${CSS.escape(list)}"], [data-adds]`)?.focus();
      },
    );
  }
}
