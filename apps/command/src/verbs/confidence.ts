import { engineOptions, given } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { confidenceText } from "../text/confidenceText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

/** Outcomes, prices of lateness, sorted copies. */
const ROWS_AS_TASKS = 8;

/** Why this confidence and not another: levels side by side, where to stop, date and money together. */
export function confidenceVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = { ...engineOptions(values), ...given({ joint: values.chance("joint") }) };
  return answerVerb(call, values, {
    options,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const found = await answerAside({ kind: "confidence", plan, options }, onProgress);
      return { answer: found.confidence, problems: found.problems };
    },
    text: (answer, page, plan) => confidenceText(answer, page, plan, options),
    draw: drawing("confidence", values),
  });
}
