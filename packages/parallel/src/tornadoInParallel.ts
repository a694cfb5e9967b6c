import { type Draw, type Forecast, sortedBars, type TornadoBar, tornado } from "@leeway/core";
import { shareOut, withCrew } from "./crew.ts";
import type { Subject } from "./forecastInParallel.ts";
import type { ParallelOptions } from "./options.ts";
import { progressOf } from "./progressOf.ts";
import { threadsFor, tornadoFactor, workOf } from "./share.ts";

/** Parts per thread: items differ much in what they reach, and a part's rows are in memory at once. */
const partsPerThread = 4;

/** The tornado, its bars shared out over threads where that pays; the same bars, to the bit. */
export async function tornadoInParallel(
  { plan, model, asWritten }: Subject,
  draw: Draw,
  { committed }: Forecast,
  options: ParallelOptions & { onProgress?: (done: number, total: number) => void },
): Promise<TornadoBar[]> {
  const { pool, signal } = options;
  const n = draw.iterations;
  const work = workOf(plan, n) * tornadoFactor(plan);
  const threads = threadsFor(work, Number.POSITIVE_INFINITY, options);
  if (pool !== undefined && threads > 0) {
    const run = { seed: draw.seed, design: draw.design, ...(signal === undefined ? {} : { signal }) };
    const bars = await withCrew({ pool, threads, plan, options: run }, async (crew) => {
      const of = threads * partsPerThread;
      const found: { at: number; bar: TornadoBar }[] = [];
      const progress = progressOf(n * of, (done) => options.onProgress?.(Math.floor(done / of), n));
      const parts = Array.from({ length: of }, (_, part) => part);
      const shared = await shareOut(crew, parts, async (helper, part) => {
        const request = { kind: "tornado", draw, committed, part, of } as const;
        const answer = await helper.ask(request, [], (done) => progress.during(helper, done));
        if (answer.kind !== "bars") throw new Error(`Asked for bars, got "${answer.kind}".`);
        found.push(...answer.bars);
        progress.after(helper, n);
      });
      return shared ? sortedBars(found) : undefined;
    });
    if (bars !== undefined) return bars;
  }
  return tornado(model, draw, asWritten, committed, options.onProgress);
}
