/** A row without a name has no header to read out: its empty header cell becomes a plain one. */
export function plainEmptyHeaders(root: Element): void {
  for (const header of root.querySelectorAll("tbody th")) {
    if (header.textContent === "") header.replaceWith(document.createElement("td"));
  }
}
