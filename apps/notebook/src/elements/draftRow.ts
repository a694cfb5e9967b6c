import { html, type TemplateResult } from "lit";

/** What a row that is not in the plan yet does with what is typed into it. */
export interface DraftRow<C extends string> {
  /** What its button is marked by: a row that was begun before a reload is opened by it again. */
  opens: string;
  /** Takes the row into the plan; the cell to go to when it cannot be read yet. */
  add: (cells: Record<C, string>) => C | undefined;
  /** The row goes. `left`: the reader went elsewhere, and keeps the focus there; else it goes to what adds a row. */
  drop: (left: boolean) => void;
}

/**
 * Keys of a new row: Enter takes it in, or leads to what is missing; Escape leaves it. So do its two buttons, for who has
 * no such keys. A row that is whole is also taken when the reader goes elsewhere; one that nothing was written into goes.
 * Inputs carry `data-cell`; what is typed lives in them alone. The row has the class `new-row`, and `data-draft`.
 */
export function draftRow<C extends string>(
  cells: readonly C[],
  { add, drop }: Pick<DraftRow<C>, "add" | "drop">,
) {
  const inputs = (row: Element): Map<string, HTMLInputElement | HTMLSelectElement> =>
    new Map(
      [...row.querySelectorAll<HTMLInputElement | HTMLSelectElement>(":is(input, select)[data-cell]")].map(
        (input) => [input.dataset.cell ?? "", input],
      ),
    );
  const texts = (row: Element): Record<C, string> => {
    const found = inputs(row);
    return Object.fromEntries(cells.map((cell) => [cell, found.get(cell)?.value ?? ""])) as Record<C, string>;
  };
  /** The cell that is missing, else nothing: then the row is empty again. */
  const take = (row: Element): C | undefined => {
    const missing = add(texts(row));
    if (missing === undefined) for (const input of inputs(row).values()) input.value = "";
    return missing;
  };
  const takeOrLead = (row: Element): void =>
    inputs(row)
      .get(take(row) ?? cells[0] ?? "")
      ?.focus();
  const discard = (row: Element): void => {
    for (const input of inputs(row).values()) input.value = "";
    // The button goes with its row: the focus is free, as when a field goes, and `drop` says where it is next.
    const held = document.activeElement;
    if (held instanceof HTMLButtonElement && row.contains(held)) held.blur();
    drop(false);
  };
  const pressed =
    (does: (row: Element) => void) =>
    ({ target }: Event): void => {
      const row = target instanceof Element ? target.closest(".new-row") : null;
      if (row !== null) does(row);
    };
  return {
    /** What becomes of the row, in words and as buttons; `what`: "new task". */
    buttons: (what: string): TemplateResult =>
      html`<span class="draft-does"><span class="draft-keys">Not in the plan yet. Enter, or going on to another row, adds it; Escape discards it.</span>
        <button type="button" aria-label="Add the ${what}" @click=${pressed(takeOrLead)}>Add</button>
        <button type="button" aria-label="Discard the ${what}" @click=${pressed(discard)}>Discard</button></span>`,
    keydown(event: KeyboardEvent): void {
      const row = event.currentTarget;
      if (!(row instanceof Element) || !(event.target instanceof Element)) return;
      if (event.key === "Escape") {
        event.preventDefault();
        discard(row);
      } else if (event.key === "Enter" && !event.shiftKey && event.target instanceof HTMLInputElement) {
        event.preventDefault();
        event.stopPropagation();
        takeOrLead(row);
      }
    },
    focusout(event: FocusEvent): void {
      const row = event.currentTarget;
      const to = event.relatedTarget;
      if (!(row instanceof Element) || !(to instanceof Node) || row.contains(to)) return;
      if (Object.values<string>(texts(row)).every((text) => text.trim() === "")) drop(true);
      else take(row);
    },
  };
}
