import { reachInParallel } from "@leeway/parallel";
import { engineOptions, given } from "../call/engineOptions.ts";
import { moneyOption } from "../call/moneyOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { threadsOf } from "../compute/threadsOf.ts";
import { reachText } from "../text/reachText.ts";
import { answerVerb } from "./answerVerb.ts";

/** Outcomes of sets and what is read from them. */
const ROWS_AS_TASKS = 16;

/** What it would take to make a date, a sum or both: responses to adopt, scope to drop, capacity to add. */
export function reachVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const sum = moneyOption(values, "sum");
  const workers = values.count("workers", 64);
  const options = {
    ...engineOptions(values),
    ...given({ sum: sum.value, finishBy: values.text("by") }),
  };
  return answerVerb(call, values, {
    options,
    problems: sum.problems,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const asked = { ...options, ...threadsOf(workers), onProgress };
      const { reach: answer, problems } = await reachInParallel(plan, asked);
      return { answer, problems };
    },
    text: (answer, page, plan) => reachText(answer, page, plan, options),
  });
}
