import { isTyped, type Typed } from "./field.ts";

/**
 * Keys in a table of inputs, as in any plain table: Enter and Shift+Enter go down and up after the entry, the
 * arrows go to the neighbour (left and right only from the edge of the text, so that the caret can move), Home
 * and End stay with the text. Tab is the browser's own. Inputs carry `data-row` and `data-column`.
 */
export function tableKeys(event: KeyboardEvent): void {
  const input = event.target;
  if (!isTyped(input) || input.dataset.row === undefined) return;
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const step = stepFor(event, input);
  if (step === undefined) return;
  const table = input.closest("table");
  const next = table === null ? undefined : neighbour(table, input, step);
  if (next === undefined) return; // at the rim Enter finishes the entry, as the browser does by itself
  event.preventDefault();
  next.focus();
  next.select();
}

interface Step {
  rows: number;
  columns: number;
}

function stepFor(event: KeyboardEvent, input: Typed): Step | undefined {
  const whole = input.selectionStart === 0 && input.selectionEnd === input.value.length;
  const start = whole || (input.selectionStart === 0 && input.selectionEnd === 0);
  const end = whole || input.selectionStart === input.value.length;
  switch (event.key) {
    case "Enter":
      return { rows: event.shiftKey ? -1 : 1, columns: 0 };
    case "ArrowDown":
      return { rows: 1, columns: 0 };
    case "ArrowUp":
      return { rows: -1, columns: 0 };
    case "ArrowLeft":
      return start && !event.shiftKey ? { rows: 0, columns: -1 } : undefined;
    case "ArrowRight":
      return end && !event.shiftKey ? { rows: 0, columns: 1 } : undefined;
    default:
      return undefined;
  }
}

/** The nearest input that way; rows without that column are passed over. */
function neighbour(table: HTMLTableElement, from: Typed, step: Step): Typed | undefined {
  const row = Number(from.dataset.row);
  const column = Number(from.dataset.column);
  let best: Typed | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const input of table.querySelectorAll<Typed>(".field[data-row]")) {
    const rows = Number(input.dataset.row) - row;
    const columns = Number(input.dataset.column) - column;
    const along = step.rows === 0 ? columns * step.columns : rows * step.rows;
    const aside = step.rows === 0 ? rows : columns;
    if (aside !== 0 || along <= 0 || along >= bestDistance) continue;
    best = input;
    bestDistance = along;
  }
  return best;
}
