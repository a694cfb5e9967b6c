/** Colour arithmetic for the palette tests. Colours are "#rrggbb". */
type Rgb = [number, number, number];

/** sRGB to linear light. Source: IEC 61966-2-1:1999; recalled. */
export function linear(hex: string): Rgb {
  const part = (at: number) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [part(1), part(3), part(5)];
}

/** Relative luminance Y. Source: WCAG 2.2, "relative luminance"; recalled. */
export function luminance([r, g, b]: Rgb): number {
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio. Source: WCAG 2.2, "contrast ratio": (L1 + 0.05) / (L2 + 0.05); recalled. */
export function contrast(a: string, b: string): number {
  const [ya, yb] = [luminance(linear(a)), luminance(linear(b))];
  return (Math.max(ya, yb) + 0.05) / (Math.min(ya, yb) + 0.05);
}

/** CIE 1976 L*a*b* for the white point D65. Source: CIE 15:2004; matrices of IEC 61966-2-1; recalled. */
export function lab([r, g, b]: Rgb): Rgb {
  const x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = (0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883;
  const f = (t: number) => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))];
}

/** CIE 1976 colour difference. */
export function difference(a: Rgb, b: Rgb): number {
  const [p, q] = [lab(a), lab(b)];
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

/**
 * What a dichromat sees, in linear light: matrices for severity 1.0 of Machado, Oliveira & Fernandes (2009), A
 * physiologically-based model for simulation of color vision deficiency, IEEE TVCG 15(6), table 1. Recalled,
 * and found the same in several public copies of the table; the paper itself was not read. Each keeps
 * white white, which the tests check.
 */
export const visions: Record<string, [Rgb, Rgb, Rgb]> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** A linear colour seen with a matrix of `visions`, cut to what a screen can show. */
export function seen(matrix: readonly Rgb[], [r, g, b]: Rgb): Rgb {
  const row = (k: number) => {
    const [p, q, s] = matrix[k] ?? [0, 0, 0];
    return Math.max(0, Math.min(1, p * r + q * g + s * b));
  };
  return [row(0), row(1), row(2)];
}
