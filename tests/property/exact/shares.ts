/**
 * Half width of a band that holds a whole empirical distribution function of n independent draws with
 * probability 1 - alpha at least: sqrt(ln(2 / alpha) / (2 n)).
 *
 * Source: Dvoretzky, Kiefer & Wolfowitz (1956), Ann. Math. Stat. 27, 642-669, with the constant 2 of
 * P. Massart (1990), "The tight constant in the Dvoretzky-Kiefer-Wolfowitz inequality", Ann. Probab. 18(3),
 * 1269-1283 (recalled).
 */
export function bandHalfWidth(n: number, alpha: number): number {
  return Math.sqrt(Math.log(2 / alpha) / (2 * n));
}

/**
 * How far a share of n independent draws may lie from its probability p, exceeded with probability alpha at
 * most: sqrt(2 p (1 - p) L / n) + L / (3 n) with L = ln(2 / alpha). With L = 12.5 the first term is five
 * standard errors; the second is what a probability near 0 or 1 needs, where no normal law holds.
 *
 * Source: S. Bernstein's inequality in the form of Boucheron, Lugosi & Massart (2013), Concentration
 * Inequalities, Oxford, section 2.8 (recalled).
 */
export function shareHalfWidth(p: number, n: number, alpha: number): number {
  const l = Math.log(2 / alpha);
  return Math.sqrt((2 * Math.max(0, p * (1 - p)) * l) / n) + l / (3 * n);
}
