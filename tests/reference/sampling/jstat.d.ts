// jstat ships no types (1.9.6): only what the cross-checks call.
declare module "jstat" {
  const jstat: {
    beta: {
      inv(p: number, alpha: number, beta: number): number;
      cdf(x: number, alpha: number, beta: number): number;
    };
    normal: {
      inv(p: number, mean: number, sd: number): number;
      cdf(x: number, mean: number, sd: number): number;
    };
    triangular: { inv(p: number, low: number, high: number, mode: number): number };
    lognormal: { inv(p: number, mu: number, sigma: number): number };
  };
  export default jstat;
}
