import { keepTogether } from "../draw/keepTogether.ts";
import type { Figure, FigureTable } from "./types.ts";

const counters = new WeakMap<Document, number>();

/**
 * A figure as an element of a page: heading, subtitle, the picture as an image with name and description,
 * and the same figures as a table that can be folded open.
 *
 * Ids count up within the document, so any number of figures may stand on one page. Class names
 * (`figure-title`, `figure-subtitle`, `figure-summary`, `figure-table`) are for the page's own style sheet; the
 * summary is there for screen readers and carries `hidden`, which a description may.
 */
export function renderFigure(figure: Figure, document: Document): HTMLElement {
  const count = (counters.get(document) ?? 0) + 1;
  counters.set(document, count);
  const id = `figure-${count}`;
  const root = document.createElement("figure");
  const heading = text(document, "h3", "figure-title", keepTogether(figure.title));
  heading.id = `${id}-title`;
  const subtitle = text(document, "p", "figure-subtitle", keepTogether(figure.subtitle));
  const summary = text(document, "p", "figure-summary", figure.summary);
  summary.id = `${id}-summary`;
  summary.hidden = true;
  figure.svg.setAttribute("role", "img");
  figure.svg.setAttribute("aria-labelledby", heading.id);
  figure.svg.setAttribute("aria-describedby", summary.id);
  figure.svg.style.setProperty("max-width", "100%");
  figure.svg.style.setProperty("height", "auto");
  const details = document.createElement("details");
  details.append(
    text(document, "summary", "", "As a table"),
    renderTable(figure.table, figure.title, document),
  );
  root.append(heading, subtitle, figure.svg, summary, details);
  return root;
}

function renderTable(table: FigureTable, title: string, document: Document): HTMLElement {
  const element = document.createElement("table");
  element.className = "figure-table";
  element.append(text(document, "caption", "", title));
  const head = document.createElement("tr");
  for (const column of table.columns) {
    const cell = text(document, "th", "", column.unit ? `${column.name}, ${column.unit}` : column.name);
    cell.setAttribute("scope", "col");
    cell.style.setProperty("text-align", column.align);
    head.append(cell);
  }
  const thead = document.createElement("thead");
  thead.append(head);
  const tbody = document.createElement("tbody");
  for (const row of table.rows) {
    const line = document.createElement("tr");
    row.forEach((value, k) => {
      const cell = text(document, k === 0 ? "th" : "td", "", value);
      if (k === 0) cell.setAttribute("scope", "row");
      cell.style.setProperty("text-align", table.columns[k]?.align ?? "start");
      line.append(cell);
    });
    tbody.append(line);
  }
  element.append(thead, tbody);
  return element;
}

/** `dir="auto"`: a name in a right-to-left script reads from its own side. */
function text(document: Document, name: string, className: string, content: string): HTMLElement {
  const element = document.createElement(name);
  if (className !== "") element.className = className;
  element.dir = "auto";
  element.textContent = content;
  return element;
}
