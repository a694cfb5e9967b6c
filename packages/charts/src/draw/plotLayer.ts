import * as Plot from "@observablehq/plot";
import { make, px, svgNamespace } from "./make.ts";

export interface Layer {
  group: SVGGElement;
  /** Data to px, the scale Plot drew with. */
  x: (value: number) => number;
  y: (value: number) => number;
}

/**
 * Marks drawn by Observable Plot, as a group to put into a drawing of our own.
 *
 * Plot's picture comes with a style sheet, class names, names for parts that are not read aloud inside an
 * image, and a half-pixel shift that depends on the screen. They are taken off, and coordinates rounded, so
 * that a page and a terminal make the same file to the byte.
 */
export function plotLayer(document: Document, options: Plot.PlotOptions): Layer {
  const plot = Plot.plot({ axis: null, ...options, document });
  const group = make(document, "g");
  for (const child of Array.from(plot.childNodes)) {
    if (child.nodeName.toLowerCase() !== "style") group.append(child);
  }
  for (const element of Array.from(group.querySelectorAll("*"))) tidy(element);
  for (const empty of Array.from(group.querySelectorAll("g:empty"))) empty.remove();
  return { group, x: applied(plot.scale("x")), y: applied(plot.scale("y")) };
}

function applied(scale: Plot.Scale | undefined): (value: number) => number {
  return (value) => {
    const at: unknown = scale?.apply(value);
    return typeof at === "number" ? at : Number.NaN;
  };
}

function tidy(element: Element): void {
  if (element.namespaceURI !== svgNamespace) return;
  for (const { name, value } of Array.from(element.attributes)) {
    if (name === "class" || name.startsWith("aria-")) element.removeAttribute(name);
    else if (name === "transform" && /^translate\((0|0\.5),(0|0\.5)\)$/.test(value))
      element.removeAttribute(name);
    else if (/\d\.\d/.test(value))
      element.setAttribute(
        name,
        value.replace(/-?\d+\.\d+/g, (n) => px(Number(n))),
      );
  }
}
