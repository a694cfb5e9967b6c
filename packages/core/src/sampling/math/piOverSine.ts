/** pi d / sin(pi d) for |d| <= 1/2, by the series of sin(y) / y. Error below 1e-15; + - * / only. */
export function piOverSine(d: number): number {
  const y = Math.PI * d;
  const z = y * y;
  let series = 1;
  // sin(y) / y = 1 - z/(2*3) (1 - z/(4*5) (1 - ...)): 11 steps leave less than 1e-20 at |y| = pi / 2.
  for (let k = 11; k >= 1; k--) series = 1 - (z / (2 * k * (2 * k + 1))) * series;
  return 1 / series;
}
