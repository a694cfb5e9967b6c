/** part += rate * duration. */
export function addDaily(part: Float64Array, duration: Float64Array, rate: number, n: number): void {
  for (let k = 0; k < n; k++) part[k] = (part[k] as number) + rate * (duration[k] as number);
}
