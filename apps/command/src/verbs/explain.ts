import { explainInParallel } from "@leeway/parallel";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { threadsOf } from "../compute/threadsOf.ts";
import { explainText } from "../text/explainText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

/** Outcomes and what is read from them, on every thread. */
const ROWS_AS_TASKS = 16;

/** Why this much contingency: its causes with their shares, the way there step by step, and one item at a time. */
export function explainVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  const workers = values.count("workers", 64);
  return answerVerb(call, values, {
    options,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const asked = { ...options, ...threadsOf(workers), onProgress };
      const { explanation: answer, problems } = await explainInParallel(plan, asked);
      return { answer, problems };
    },
    text: (answer, page, plan) => explainText(answer, page, plan, options),
    draw: drawing("explain", values),
  });
}
