/**
 * A law in standard form. Every range estimate is one of these, moved and stretched:
 * value = shift + scale * standard value.
 *
 * `lower(u)` is the quantile at u and `upper(w)` the quantile at 1 - w, each exact for tiny arguments; both take
 * numbers in [0, 1] and never leave [min, max], which may be infinite.
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
