/** A number as a field holds it: every digit of it, with commas between thousands. */
export function figureText(value: number): string {
  return String(value).replace(/^-?\d+/, (whole) => whole.replace(/\B(?=(\d{3})+$)/g, ","));
}
