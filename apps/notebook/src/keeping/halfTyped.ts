import type { PageEvents } from "../elements/events.ts";
import { isTyped } from "../elements/field.ts";
import type { Pending } from "../store/state.ts";

/** What a reader had typed that was no part of the plan yet. */
interface HalfTyped {
  /** Of which plan the fields and rows are; the form of a new plan belongs to none. */
  plan: string;
  /** Text by the label of its field. */
  fields: readonly (readonly [string, string])[];
  /** Rows that were begun: what opens one, and its cells. */
  rows: readonly { opens: string; cells: Cells }[];
  begin?: { open: boolean; cells: Cells };
}
type Cells = Readonly<Record<string, string>>;

interface KeepsOf {
  /** The page: what it hears of entries. */
  page: HTMLElement;
  /** The plan as it is kept; another one has other fields. */
  plan: () => string;
  refuse: (field: string, pending: Pending) => void;
}

const key = "leeway-half-typed";
/** Ms after a key until it is kept; later keys wait no longer for it. */
const rest = 200;
const words =
  "You were still typing this when the page went away. It is not in the plan: Enter takes it in, Escape gives it up.";

/**
 * Keeps what is half typed for as long as the tab lives, and puts it back at its place after a reload: as an entry that
 * waits, never as part of the plan. What it is, is read off the page each time, so nothing has to be told of it.
 * Returns what has it kept soon, for whoever changes the plan it belongs to.
 */
export function keepHalfTyped(of: KeepsOf): () => void {
  const touched = new Set<HTMLInputElement | HTMLTextAreaElement>();
  const restored = new WeakSet<Element>();
  const opened = of.plan();
  const found = read();
  const waiting = {
    fields: new Map(found?.plan === opened ? found.fields : []),
    rows: found?.plan === opened ? [...found.rows] : [],
    begin: found?.begin,
  };
  let last: string | undefined;
  let due: ReturnType<typeof setTimeout> | undefined;

  function write(): void {
    clearTimeout(due);
    due = undefined;
    const now = halfTyped();
    const nothing = now.fields.length === 0 && now.rows.length === 0 && now.begin === undefined;
    const text = nothing ? "" : JSON.stringify(now);
    if (text === last) return;
    last = text;
    try {
      if (nothing) sessionStorage.removeItem(key);
      else sessionStorage.setItem(key, text);
    } catch {
      // Storage refused or full: it is there as long as the page is.
    }
  }

  function halfTyped(): HalfTyped {
    const plan = of.plan();
    const mine = plan === opened || opened === "";
    const fields = new Map(mine ? waiting.fields : []);
    for (const one of touched) {
      if (!one.isConnected || !isHalf(one)) touched.delete(one);
      else fields.set(labelOf(one), one.value);
    }
    for (const one of document.querySelectorAll<HTMLElement>(".field[aria-invalid=true]"))
      if (isTyped(one) && one.dataset.shown !== undefined && labelOf(one) !== "")
        fields.set(labelOf(one), one.value);
    const rows = [...document.querySelectorAll<HTMLElement>(".new-row[data-draft]")].flatMap((row) => {
      const cells = cellsOf(row);
      const begun = [...row.querySelectorAll("input")].some(({ value }) => value.trim() !== "");
      return begun ? [{ opens: row.dataset.draft ?? "", cells }] : [];
    });
    const begin = waiting.begin ?? begun();
    return {
      plan,
      fields: [...fields],
      rows: [...(mine ? waiting.rows : []), ...rows],
      ...(begin === undefined ? {} : { begin }),
    };
  }

  const soon = (): void => {
    due ??= setTimeout(write, rest);
  };
  document.addEventListener(
    "input",
    ({ target }) => {
      if (!isTyped(target)) return;
      restored.delete(target);
      if (target.dataset.shown !== undefined && labelOf(target) !== "") touched.add(target);
    },
    true,
  );
  for (const type of ["input", "change", "keydown", "focusout", "click"])
    document.addEventListener(type, soon, true);
  addEventListener("pagehide", write);
  // As it was put back it is no entry of the browser's: Enter would not take it in.
  document.addEventListener(
    "keydown",
    ({ key: pressed, target }) => {
      if (!isTyped(target) || !restored.has(target)) return;
      if (pressed === "Enter") {
        restored.delete(target);
        delete target.dataset.taken;
        target.dispatchEvent(new Event("change", { bubbles: true }));
      } else if (pressed === "Escape") restored.delete(target);
    },
    true,
  );

  /** One at a time: the cells of an estimate are read together with those that wait beside them. */
  function putBack(): void {
    if (waiting.begin !== undefined) {
      const form = document.querySelector<HTMLFormElement>("form.own");
      if (form !== null) {
        fill(form, "name", waiting.begin.cells);
        const details = form.closest("details");
        if (details !== null && waiting.begin.open) details.open = true;
        waiting.begin = undefined;
      }
    }
    if (of.plan() !== opened && opened !== "") {
      waiting.fields.clear();
      waiting.rows = [];
    }
    for (const [label, text] of waiting.fields) {
      const field = document.querySelector(`.field[data-shown][aria-label="${CSS.escape(label)}"]`);
      if (!isTyped(field) || field.readOnly) continue;
      waiting.fields.delete(label);
      // Who types there already has gone on.
      if (isHalf(field)) continue;
      putInto(field, text);
      again();
      return;
    }
    // A row that opens takes the focus for a moment, which would finish what is being typed.
    if (isTyped(document.activeElement)) return;
    for (const row of waiting.rows) {
      const opens = CSS.escape(row.opens);
      const button = document.querySelector<HTMLElement>(`[data-adds="${opens}"], [data-opens="${opens}"]`);
      if (button === null) continue;
      waiting.rows = waiting.rows.filter((one) => one !== row);
      const at = { left: scrollX, top: scrollY };
      button.click();
      const made = document.querySelector<HTMLElement>(`.new-row[data-draft="${opens}"]`);
      if (made !== null) fill(made, "data-cell", row.cells);
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      scrollTo({ ...at, behavior: "instant" });
      again();
      return;
    }
  }

  /** Entered as by the reader, and kept from becoming part of the plan: it waits at its field, with its reason. */
  function putInto(field: HTMLInputElement | HTMLTextAreaElement, text: string): void {
    const waits = (event: Event): void => {
      if (!(event instanceof CustomEvent)) return;
      event.stopImmediatePropagation();
      const { field: path, cells }: PageEvents["plan-edit"] = event.detail;
      of.refuse(path, { cells, words });
    };
    of.page.addEventListener("plan-edit", waits, true);
    field.value = text;
    field.dispatchEvent(new Event("change", { bubbles: true }));
    of.page.removeEventListener("plan-edit", waits, true);
    touched.add(field);
    restored.add(field);
  }

  let looks = false;
  function again(): void {
    if (looks) return;
    looks = true;
    setTimeout(() => {
      looks = false;
      putBack();
      if (waiting.fields.size === 0 && waiting.rows.length === 0 && waiting.begin === undefined)
        drawn.disconnect();
    }, 50);
  }
  // Sections are drawn one after the other, and some of their fields only when they are opened.
  const drawn = new MutationObserver(again);
  if (waiting.fields.size > 0 || waiting.rows.length > 0 || waiting.begin !== undefined) {
    drawn.observe(of.page, { childList: true, subtree: true });
    again();
  }
  return soon;
}

/** It holds something else than the page shows there, or something that could not be taken in. */
function isHalf(one: HTMLInputElement | HTMLTextAreaElement): boolean {
  return one.value !== one.dataset.shown || one.matches("[aria-invalid=true]");
}

function labelOf(one: Element): string {
  return one.getAttribute("aria-label") ?? "";
}

function cellsOf(row: Element): Cells {
  const inputs = row.querySelectorAll<HTMLInputElement | HTMLSelectElement>(":is(input, select)[data-cell]");
  return Object.fromEntries([...inputs].map((one) => [one.dataset.cell ?? "", one.value]));
}

/** The form of a new plan, where something was written into it. */
function begun(): HalfTyped["begin"] {
  const form = document.querySelector<HTMLFormElement>("form.own");
  const inputs = [...(form?.querySelectorAll<HTMLInputElement>("input[name]") ?? [])];
  if (inputs.every(({ value, defaultValue }) => value === defaultValue)) return undefined;
  return {
    open: form?.closest("details")?.open ?? false,
    cells: Object.fromEntries(inputs.map(({ name, value }) => [name, value])),
  };
}

function fill(inside: Element, attribute: string, cells: Cells): void {
  for (const one of inside.querySelectorAll<HTMLInputElement | HTMLSelectElement>(`[${attribute}]`)) {
    const text = cells[one.getAttribute(attribute) ?? ""];
    if (text !== undefined) one.value = text;
  }
}

/** What was there before, as far as it can be read: anybody can write into a browser's storage. */
function read(): HalfTyped | undefined {
  try {
    const found: unknown = JSON.parse(sessionStorage.getItem(key) ?? "null");
    return isHalfTyped(found) ? found : undefined;
  } catch {
    return undefined;
  }
}

function isHalfTyped(found: unknown): found is HalfTyped {
  if (typeof found !== "object" || found === null) return false;
  const { plan, fields, rows, begin } = found as Partial<Record<keyof HalfTyped, unknown>>;
  const text = (one: unknown): boolean => typeof one === "string";
  const texts = (one: unknown): boolean =>
    typeof one === "object" && one !== null && Object.values(one).every(text);
  return (
    text(plan) &&
    Array.isArray(fields) &&
    fields.every((one) => Array.isArray(one) && one.length === 2 && one.every(text)) &&
    Array.isArray(rows) &&
    rows.every((one) => text(one?.opens) && texts(one?.cells)) &&
    (begin === undefined || texts((begin as Partial<HalfTyped["begin"]>)?.cells))
  );
}
