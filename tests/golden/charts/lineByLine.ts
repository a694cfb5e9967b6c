/**
 * An SVG file with every element on a line of its own, so that a difference shows what changed. Text is escaped in it
 * ("&gt;"), so `><` stands only between elements; the space between them means nothing in SVG.
 */
export function lineByLine(svg: string): string {
  return svg.replaceAll("><", ">\n<");
}
