import type { Problem, WhichFuture } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions, MOST_ITERATIONS } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { futureText } from "../text/futureText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

const ROWS_AS_TASKS = 4;

/** Which of the futures is wanted, when the call says so. */
function readWhich(values: OptionValues): { which: WhichFuture | undefined; problems: Problem[] } {
  const iteration = values.count("iteration", MOST_ITERATIONS);
  const at = values.chance("at");
  const both = values.has("iteration") && values.has("at");
  return {
    which: iteration !== undefined ? { iteration } : at !== undefined ? { at } : undefined,
    problems: both
      ? [
          callProblem(
            "option-both",
            "--at",
            "It chooses a future, and so does --iteration.",
            "Keep one of them.",
          ),
        ]
      : [],
  };
}

/** One future replayed: what occurred, when each task ran and why, what it cost. */
export function futureVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  const { which, problems: wrong } = readWhich(values);
  return answerVerb(call, values, {
    options,
    problems: wrong,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const asked = { ...options, which: which ?? { at: plan.commitment.confidence } };
      const found = await answerAside({ kind: "future", plan, options: asked }, onProgress);
      return { answer: found.future, problems: found.problems };
    },
    text: (answer, page, plan) => futureText(answer, page, plan, options, values.has("draws")),
    draw: drawing("future", values),
  });
}
