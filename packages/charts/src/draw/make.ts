export const svgNamespace = "http://www.w3.org/2000/svg";

export type Attributes = Record<string, string | number | undefined>;

/** A coordinate to a hundredth of a px: enough for print, and the same text on every machine. */
export function px(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

/**
 * One SVG element. Numbers are rounded by `px`; undefined attributes are left out; strings become text nodes,
 * never markup.
 */
export function make<K extends keyof SVGElementTagNameMap>(
  document: Document,
  name: K,
  attributes: Attributes = {},
  ...children: (Node | string)[]
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(svgNamespace, name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(key, typeof value === "number" ? px(value) : value);
  }
  element.append(...children);
  return element;
}
