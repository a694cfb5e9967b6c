import { exponential, logarithm } from "./math";

// As in packages/core/src/sampling/dependence (sources there), and to the bit.

function normalScore(p: f64): f64 {
  const q = p - 0.5;
  if (q >= -0.425 && q <= 0.425) {
    const r = 0.180625 - q * q;
    return (
      (q *
        (((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) *
          r +
          13731.69376550946) *
          r +
          1971.5909503065513) *
          r +
          133.14166789178438) *
          r +
          3.3871328727963665)) /
      (((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) *
        r +
        5394.196021424751) *
        r +
        687.1870074920579) *
        r +
        42.31333070160091) *
        r +
        1.0)
    );
  }
  const tail: f64 = q < 0 ? p : 1.0 - p;
  if (!(tail > 0)) return q < 0 ? -Infinity : Infinity;
  const root = Math.sqrt(-logarithm(tail));
  let z: f64;
  if (root <= 5) {
    const r = root - 1.6;
    z =
      (((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r +
        1.2704582524523684) *
        r +
        3.6478483247632045) *
        r +
        5.769497221460691) *
        r +
        4.630337846156546) *
        r +
        1.4234371107496835) /
      (((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r +
        0.14810397642748008) *
        r +
        0.6897673349851) *
        r +
        1.6763848301838038) *
        r +
        2.053191626637759) *
        r +
        1.0);
  } else {
    const r = root - 5.0;
    z =
      (((((((2.0103343992922881e-7 * r + 0.000027115555687434876) * r + 0.0012426609473880784) * r +
        0.026532189526576124) *
        r +
        0.29656057182850487) *
        r +
        1.7848265399172913) *
        r +
        5.463784911164114) *
        r +
        6.657904643501103) /
      (((((((2.0442631033899397e-15 * r + 1.421511758316446e-7) * r + 0.000018463183175100548) * r +
        0.0007868691311456133) *
        r +
        0.014875361290850615) *
        r +
        0.1369298809227358) *
        r +
        0.599832206555888) *
        r +
        1.0);
  }
  return q < 0 ? -z : z;
}

function normalCdf(z: f64): f64 {
  const x = abs(z) * Math.SQRT1_2;
  if (x <= 0.46875) {
    const y = x * x;
    const erf =
      (x *
        ((((0.18577770618460315 * y + 3.1611237438705655) * y + 113.86415415105016) * y + 377.485237685302) *
          y +
          3209.3775891384694)) /
      ((((y + 23.601290952344122) * y + 244.02463793444417) * y + 1282.6165260773723) * y +
        2844.236833439171);
    return z < 0 ? 0.5 - 0.5 * erf : 0.5 + 0.5 * erf;
  }
  // Beyond 37 the lower tail is below 1e-299: no draw comes from there, and `exponential` stays in its range.
  if (x > 26) return z < 0 ? 0 : 1;
  const half = 0.5 * upperTail(x, exponential(-0.5 * z * z));
  return z < 0 ? half : 1.0 - half;
}

function upperTail(x: f64, gauss: f64): f64 {
  if (x <= 4) {
    return (
      (gauss *
        ((((((((2.1531153547440383e-8 * x + 0.5641884969886701) * x + 8.883149794388377) * x +
          66.11919063714163) *
          x +
          298.6351381974001) *
          x +
          881.952221241769) *
          x +
          1712.0476126340707) *
          x +
          2051.0783778260716) *
          x +
          1230.3393547979972)) /
      ((((((((x + 15.744926110709835) * x + 117.6939508913125) * x + 537.1811018620099) * x +
        1621.3895745666903) *
        x +
        3290.7992357334597) *
        x +
        4362.619090143247) *
        x +
        3439.3676741437216) *
        x +
        1230.3393548037495)
    );
  }
  const y: f64 = 1.0 / (x * x);
  const correction =
    (y *
      (((((0.016315387137302097 * y + 0.30532663496123236) * y + 0.36034489994980445) * y +
        0.12578172611122926) *
        y +
        0.016083785148742275) *
        y +
        0.0006587491615298378)) /
    (((((y + 2.568520192289822) * y + 1.8729528499234604) * y + 0.5279051029514285) * y +
      0.06051834131244132) *
      y +
      0.0023352049762686918);
  return (gauss * (0.5641895835477563 - correction)) / x;
}

/** Probabilities become standard normal scores, in place. */
export function toScores(row: usize, n: usize): void {
  for (const end = row + (n << 3); row < end; row += 8) store<f64>(row, normalScore(load<f64>(row)));
}

/** out += factor * row. */
export function addScaled(out: usize, row: usize, factor: f64, n: usize): void {
  for (const end = out + (n << 3); out < end; out += 8) {
    store<f64>(out, load<f64>(out) + factor * load<f64>(row));
    row += 8;
  }
}

/** Standard normal scores become probabilities, in place. */
export function toChances(row: usize, n: usize): void {
  for (const end = row + (n << 3); row < end; row += 8) store<f64>(row, normalCdf(load<f64>(row)));
}
