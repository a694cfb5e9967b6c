import { isTyped } from "./field.ts";

/** Ctrl+S (Cmd+S) saves the plan to its file, with Shift to another; Ctrl+O opens one. Returns a function that ends it. */
export function fileKeys(on: Document, does: { open: () => void; save: (as: boolean) => void }): () => void {
  const handle = (event: KeyboardEvent): void => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    if (key !== "s" && (key !== "o" || event.shiftKey)) return;
    event.preventDefault();
    // An entry that is still being typed is part of what is saved.
    if (isTyped(document.activeElement)) {
      document.activeElement.dispatchEvent(new Event("change", { bubbles: true }));
    }
    if (key === "o") does.open();
    else does.save(event.shiftKey);
  };
  on.addEventListener("keydown", handle);
  return () => on.removeEventListener("keydown", handle);
}
