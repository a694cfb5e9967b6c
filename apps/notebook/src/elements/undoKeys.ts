import { isTyped } from "./field.ts";

/**
 * Ctrl+Z (Cmd+Z) takes the last change of the plan back, Ctrl+Shift+Z or Ctrl+Y brings it again. While an input
 * holds text that is not part of the plan yet, the keys stay with the input, as everywhere.
 * Returns a function that ends it.
 */
export function undoKeys(on: Document, does: { undo: () => void; redo: () => void }): () => void {
  const handle = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const redo = (key === "z" && event.shiftKey) || (key === "y" && !event.shiftKey);
    if (!redo && key !== "z") return;
    if (holdsOwnText(event.target)) return;
    event.preventDefault();
    if (redo) does.redo();
    else does.undo();
  };
  on.addEventListener("keydown", handle);
  return () => on.removeEventListener("keydown", handle);
}

function holdsOwnText(target: EventTarget | null): boolean {
  if (isTyped(target) && target.dataset.shown !== undefined) {
    return target.value !== target.dataset.shown;
  }
  // The text area says itself whether what it shows has been taken over.
  return target instanceof HTMLTextAreaElement && target.dataset.typing === "true";
}
