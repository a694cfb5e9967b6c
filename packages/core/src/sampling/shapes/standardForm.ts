/**
 * A law in standard form. Every range estimate is one of these, moved and stretched:
 * value = shift + scale * standard value.
 *
 * `lower(u)` is the quantile at u and `upper(w)` the quantile at 1 - w, each exact for tiny arguments; both take
 * numbers in [0, 1] and never leave [min, max], which may be infinite. `min` and `max` are as `shapeRules` says of the
 * shape: `both` [0, 1], `above-nought` [0, Infinity], `none` [-Infinity, Infinity]. The program in the kernel counts on it.
 */
export interface StandardLaw {
  readonly min: number;
  readonly max: number;
  readonly mean: number;
  readonly sd: number;
  readonly mode: number | undefined;
  lower(u: number): number;
  upper(w: number): number;
  cdf(z: number): number;
}
