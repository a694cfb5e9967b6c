/** Laws a row of moments may follow: each makes its own draw for an iteration. */
export const laws: Record<string, (random: () => number) => () => number> = {
  even: (random) => () => 100 * random(),
  "bell-shaped": (random) => () => 50 + 10 * (random() + random() + random() + random()),
  skewed: (random) => () => 20 - 5 * Math.log(1 - random()),
  "long-tailed": (random) => () => 1 / (1 - random()) ** 2,
  "on whole days": (random) => () => Math.floor(60 * random()),
  constant: () => () => 12.3,
  "constant at the start": () => () => 0,
  "of two values": (random) => () => (random() < 0.5 ? 3.7 : 9.1),
  "of two values, one rare": (random) => () => (random() < 0.9 ? 3.7 : 9.1),
  "of three values and more": (random) => () => {
    const u = random();
    return u < 0.3 ? 5.1 : u < 0.45 ? 5.2 : u < 0.8 ? 5.1 + random() : 7;
  },
  "of neighbours in the last digit": (random) => () => 3 + Math.floor(5 * random()) * 2 ** -51,
  "of neighbours in the low half of the bits": (random) => () => 3 + Math.floor(1e5 * random()) * 2 ** -48,
  // Work ends on a Friday or goes on after the weekend: gaps, and many at their edges.
  "over weekends": (random) => () => {
    const worked = 15 + 10 * (random() + random());
    const day = Math.floor(worked / 5) * 7 + (worked % 5);
    return random() < 0.2 ? Math.floor(day / 7) * 7 : day;
  },
  "with a risk": (random) => () => 30 + random() + (random() < 0.12 ? 15 + 4 * random() : 0),
  // The ties are as many as can be where brackets end: at 0.1, 0.5 and 0.9 themselves.
  "with steps at the wanted places": (random) => () => {
    const u = random();
    for (const p of [0.1, 0.5, 0.9]) if (Math.abs(u - p) < 0.02) return Math.floor((u - p) / 0.008) + 100 * p;
    return 100 * u;
  },
};

/**
 * Values in blocks of 1,024, one of each block in each of its strata (as a Latin hypercube has it), through the
 * quantile function of a triangular law from 10 to 50 with its mode at 20.
 */
export function stratified(random: () => number, n: number): Float64Array {
  const values = new Float64Array(n);
  const strata = new Uint16Array(1024);
  for (let first = 0; first < n; first += 1024) {
    for (let k = 0; k < 1024; k++) {
      const j = Math.floor(random() * (k + 1));
      strata[k] = strata[j] as number;
      strata[j] = k;
    }
    for (let k = 0; k < 1024 && first + k < n; k++) {
      const u = ((strata[k] as number) + random()) / 1024;
      values[first + k] = u < 0.25 ? 10 + Math.sqrt(400 * u) : 50 - Math.sqrt(1200 * (1 - u));
    }
  }
  return values;
}
