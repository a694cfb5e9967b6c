import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { whyText } from "../text/whyText.ts";
import { answerVerb } from "./answerVerb.ts";

const ROWS_AS_TASKS = 2;

/** What holds a task's start, link by link and person by person. */
export function whyVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  return answerVerb(call, values, {
    options,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const asked = { ...options, task: call.second ?? "" };
      const found = await answerAside({ kind: "why", plan, options: asked }, onProgress);
      return { answer: found.why, problems: found.problems };
    },
    text: (answer, page, plan) => whyText(answer, page, plan, options),
  });
}
