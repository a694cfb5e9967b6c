import type { ChartOptions, Figure } from "@leeway/charts";
import { expect } from "vitest";
import { lineBoxes, meet, textBoxes } from "./boxes.ts";

/** A chart with its data: drawn when told where and how wide. */
export type Drawing = (options: ChartOptions) => Figure;

/**
 * Nothing is cut off, no text lies on another or on a line, and no figure is missing, at three widths. Texts are
 * measured with the widths the drawing itself was laid out with.
 */
export function expectReadable(draw: Drawing, document: Document): void {
  for (const width of [320, 400, 720]) {
    const { svg, title, subtitle, summary, table } = draw({ document, width });
    const [w, h] = [Number(svg.getAttribute("width")), Number(svg.getAttribute("height"))];
    expect(w).toBe(width);
    const texts = textBoxes(svg);
    for (const path of Array.from(svg.querySelectorAll("path"))) {
      const d = path.getAttribute("d") ?? "";
      if (!/^[ML\d.,Z-]*$/.test(d)) continue; // pegs and whiskers are drawn in steps
      for (const [, x, y] of d.matchAll(/([\d.-]+),([\d.-]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0);
        expect(Number(x)).toBeLessThanOrEqual(w);
        expect(Number(y)).toBeGreaterThanOrEqual(0);
        expect(Number(y)).toBeLessThanOrEqual(h);
      }
    }
    for (const rect of Array.from(svg.querySelectorAll("rect"))) {
      const [x, y, wide, high] = ["x", "y", "width", "height"].map((name) => Number(rect.getAttribute(name)));
      expect(Math.min(x ?? 0, y ?? 0, wide ?? 0, high ?? 0)).toBeGreaterThanOrEqual(
        rect.hasAttribute("transform") ? -6 : 0,
      );
      expect((x ?? 0) + (wide ?? 0)).toBeLessThanOrEqual(w + (rect.hasAttribute("transform") ? 6 : 0.5));
      expect((y ?? 0) + (high ?? 0)).toBeLessThanOrEqual(h + 0.5);
    }
    const outside = texts.filter(
      (box) => box.left < -0.5 || box.right > w + 0.5 || box.top < 0 || box.bottom > h,
    );
    expect(outside).toEqual([]);
    const overlaps = texts.flatMap((a, k) =>
      texts.slice(k + 1).flatMap((b) => (meet(a, b) ? [[a.what, b.what]] : [])),
    );
    expect(overlaps).toEqual([]);
    const crossed = lineBoxes(svg).flatMap((line) =>
      texts.filter((box) => meet(line, box)).map((box) => box.what),
    );
    expect(crossed).toEqual([]);

    expect(svg.outerHTML).not.toMatch(/NaN|Infinity|undefined|⚠/);
    for (const sentence of [title, subtitle, summary]) {
      expect(sentence.length).toBeGreaterThan(10);
      expect(sentence).not.toMatch(/NaN|Infinity|undefined|not known/);
    }
    for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
    expect(table.rows.flat().join("")).not.toMatch(/NaN|Infinity|undefined|not known/);
  }
}
