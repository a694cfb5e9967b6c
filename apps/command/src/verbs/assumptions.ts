import type { AssumptionsTested } from "@leeway/core";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { assumptionsText } from "../text/assumptionsText.ts";
import { answerVerb } from "./answerVerb.ts";

const ROWS_AS_TASKS = 16;

/** What the plan counts on: who watches it, how it would be noticed, and the plan with each of them false. */
export function assumptionsVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const only = values.ids("if-false");
  const options = { ...engineOptions(values), ...(only === undefined ? {} : { only }) };
  return answerVerb<AssumptionsTested>(call, values, {
    options,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const found = await answerAside({ kind: "tested", plan, options }, onProgress);
      return { answer: found.tested, problems: found.problems };
    },
    text: (answer, page, plan) => assumptionsText(answer, page, plan, options),
  });
}
