/** Where a curve stands in its drawing, in px of the drawing: for whoever lays something over it. */
export interface CurvePlace {
  width: number;
  height: number;
  /** Edges of the plot itself. */
  left: number;
  top: number;
  bottom: number;
  /** Of a value, kept within the axis; of a share of futures. */
  x(value: number): number;
  y(share: number): number;
}

const places = new WeakMap<Element, CurvePlace>();

/** The place of the curve in a drawing made by `finishCurve` or `costCurve`; undefined for any other. */
export function curvePlace(svg: Element): CurvePlace | undefined {
  return places.get(svg);
}

export function keepCurvePlace(svg: Element, place: CurvePlace): void {
  places.set(svg, place);
}
