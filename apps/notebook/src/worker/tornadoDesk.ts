import { compile, planAsWritten, tornadoSteps } from "@leeway/core";
import type { Leave, Reply, Request } from "./messages.ts";

/** At most this many progress messages a second. */
const progressPerSecond = 10;

/** A slice takes about this long, in ms: so long does an edit wait for a processor at most. */
const sliceLength = 15;

type TornadoRequest = Extract<Request, { kind: "tornado" }>;

/**
 * Works out the bars of the tornado, the newest request first. It listens while it works: a worker that is ended in the
 * middle of a long call goes on for seconds in some browsers, and takes a processor from the answer it was ended for.
 *
 * @param breathe  Resolves after messages that have arrived meanwhile were taken.
 * @param slice  Ms between two of these.
 */
export function tornadoDesk(
  post: (reply: Reply) => void,
  breathe: () => Promise<void>,
  slice = sliceLength,
): (message: Request | Leave) => void {
  let wanted = 0;

  async function compute({ run, plan, from }: TornadoRequest, turn: number): Promise<void> {
    let told = 0;
    const model = compile(plan);
    const steps = tornadoSteps(model, from, planAsWritten(model), from.committed, (done, total) => {
      const now = performance.now();
      if (now - told < 1000 / progressPerSecond && done < total) return;
      told = now;
      post({ kind: "progress", run, stage: "tornado", done, total });
    });
    let since = performance.now();
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        post({ kind: "tornado", run, bars: step.value });
        post({ kind: "done", run, problems: [] });
        return;
      }
      if (performance.now() - since < slice) continue;
      await breathe();
      if (turn !== wanted) return;
      since = performance.now();
    }
  }

  return (message) => {
    const turn = ++wanted;
    if (message.kind !== "tornado") return;
    post({ kind: "begun", run: message.run });
    compute(message, turn).catch((error: unknown) => {
      if (turn !== wanted) return;
      const words = error instanceof Error ? error.message : String(error);
      post({ kind: "failed", run: message.run, words });
    });
  };
}
