/** What a row that is not in the plan yet does with what is typed into it. */
export interface DraftRow<C extends string> {
  /** Takes the row into the plan; the cell to go to when it cannot be read yet. */
  add: (cells: Record<C, string>) => C | undefined;
  drop: () => void;
}

/**
 * Keys of a new row: Enter takes it in, or leads to what is missing; Escape leaves it. A row that is whole is also taken
 * when the reader goes elsewhere; one that nothing was written into goes. Inputs carry `data-cell`; what is typed lives
 * in them alone.
 */
export function draftRow<C extends string>(cells: readonly C[], { add, drop }: DraftRow<C>) {
  const inputs = (row: Element): Map<string, HTMLInputElement> =>
    new Map(
      [...row.querySelectorAll<HTMLInputElement>("input[data-cell]")].map((input) => [
        input.dataset.cell ?? "",
        input,
      ]),
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
  return {
    keydown(event: KeyboardEvent): void {
      const row = event.currentTarget;
      if (!(row instanceof Element) || !(event.target instanceof HTMLInputElement)) return;
      if (event.key === "Escape") {
        event.preventDefault();
        for (const input of inputs(row).values()) input.value = "";
        drop();
      } else if (event.key === "Enter" && !event.shiftKey) {
        event.preventDefault();
        event.stopPropagation();
        inputs(row)
          .get(take(row) ?? cells[0] ?? "")
          ?.focus();
      }
    },
    focusout(event: FocusEvent): void {
      const row = event.currentTarget;
      const to = event.relatedTarget;
      if (!(row instanceof Element) || !(to instanceof Node) || row.contains(to)) return;
      if (Object.values<string>(texts(row)).every((text) => text.trim() === "")) drop();
      else take(row);
    },
  };
}
