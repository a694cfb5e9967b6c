import { textWidth } from "../../../packages/charts/src/draw/textWidth.ts";

/** Where a text or a line lies in its drawing, px. */
export interface Box {
  what: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const number = (element: Element, name: string) => Number(element.getAttribute(name));

/** Boxes of all texts, by the widths the drawing itself was laid out with: from cap height to descender. */
export function textBoxes(svg: Element): Box[] {
  return Array.from(svg.querySelectorAll("text"), (element) => {
    const size = Number(element.getAttribute("font-size") ?? 12);
    const anchor = element.getAttribute("text-anchor") ?? element.parentElement?.getAttribute("text-anchor");
    const width = textWidth(element.textContent ?? "", size, element.hasAttribute("font-weight"));
    const [x, y] = [number(element, "x"), number(element, "y")];
    const left = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
    return {
      what: element.textContent ?? "",
      left,
      right: left + width,
      top: y - size * 0.72,
      bottom: y + size * 0.2,
    };
  }).filter((box) => box.what !== "");
}

export function lineBoxes(svg: Element): Box[] {
  return Array.from(svg.querySelectorAll("line"), (element) => {
    const [x1, x2, y1, y2] = ["x1", "x2", "y1", "y2"].map((name) => number(element, name)) as [
      number,
      number,
      number,
      number,
    ]; // four names in, four numbers out
    return {
      what: "line",
      left: Math.min(x1, x2),
      right: Math.max(x1, x2),
      top: Math.min(y1, y2),
      bottom: Math.max(y1, y2),
    };
  });
}

export function meet(a: Box, b: Box): boolean {
  return a.left < b.right - 0.5 && b.left < a.right - 0.5 && a.top < b.bottom && b.top < a.bottom;
}
