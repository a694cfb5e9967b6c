// Stand-in until the engine is exported by @leeway/core; replaced by direct imports then.
import type { Forecast, Plan, Problem } from "@leeway/core";

export interface ForecastOptions {
  iterations?: number;
  seed?: string;
  design?: "plain" | "latin-hypercube";
  confidence?: number;
  tornado?: boolean;
  without?: string[];
  with?: string[];
  onProgress?: (done: number, of: number) => void;
  clock?: () => number;
}
declare const engineStub: {
  readPlan(text: string): { plan?: Plan; problems: Problem[] };
  forecast(
    plan: Plan,
    options: ForecastOptions,
  ): {
    forecast?: Forecast;
    problems: Problem[];
    timing?: Record<"compile" | "simulate" | "summarise", number>;
  };
  planJsonSchema(): object;
  starterPlan(answers: { title: string; start: string; currency: string }): string;
};
export const { readPlan, forecast, planJsonSchema, starterPlan } = engineStub;
