import { renderFigure } from "../src/index.ts";
import type { Shown } from "./figures.ts";

/** Plans with their figures, as one page without scripts: each chart wide with its table, and narrow beside. */
export function galleryPage(
  plans: readonly { title: string; file: string; shown: Shown[] }[],
  document: Document,
): string {
  const main = document.createElement("main");
  main.append(element(document, "h1", "Charts"));
  main.append(
    element(
      document,
      "p",
      "Every chart of @leeway/charts, drawn from the plans in examples/ at their own seeds: wide with its table, and narrow. All names and figures are invented.",
    ),
  );
  for (const { title, file, shown } of plans) {
    const section = document.createElement("section");
    section.append(element(document, "h2", title), element(document, "p", `examples/${file}`));
    for (const { call, draw } of shown) {
      const pair = document.createElement("div");
      pair.className = "pair";
      const narrow = renderFigure(draw({ document, width: 350 }), document);
      narrow.querySelector("details")?.remove();
      pair.append(renderFigure(draw({ document, width: 720 }), document), narrow);
      const article = document.createElement("article");
      article.append(element(document, "code", call), pair);
      section.append(article);
    }
    main.append(section);
  }
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Charts of Leeway</title>
<style>${style}</style>
</head>
<body>${main.outerHTML}</body>
</html>
`;
}

const style = `
body { margin: 0; background: #fbf8f1; color: #24211c; font: 1rem/1.5 "Source Sans 3", "Segoe UI", "Helvetica Neue", Arial, sans-serif; }
main { max-width: 74rem; margin: 0 auto; padding: 1rem; }
h1, h2, h3 { font-family: "Source Serif 4", Georgia, "Times New Roman", serif; line-height: 1.25; }
article { border-top: 1px solid #ddd6c8; padding: 1rem 0; break-inside: avoid; }
.pair { display: flex; flex-wrap: wrap; gap: 2rem; align-items: flex-start; }
figure { margin: 0.5rem 0; min-width: 0; max-width: min(720px, 100%); }
figure + figure { max-width: min(350px, 100%); }
.figure-title { margin: 0; font-size: 1.25rem; }
figure + figure .figure-title { font-size: 1.05rem; }
.figure-subtitle { margin: 0.25rem 0 0.5rem; color: #5f594e; font-size: 0.85rem; }
details { font-size: 0.85rem; overflow-x: auto; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th, td { padding: 0.15rem 0.6rem; font-weight: 400; vertical-align: top; }
thead th { border-bottom: 1px solid #24211c; }
caption { text-align: start; padding: 0.5rem; color: #5f594e; }
code { color: #5f594e; }
@media print { details { display: none; } }
`;

function element(document: Document, name: string, text: string): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}
