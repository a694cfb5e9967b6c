import type { ResponsesOptions } from "@leeway/core";
import { responsesInParallel } from "@leeway/parallel";
import { engineOptions, given } from "../call/engineOptions.ts";
import { moneyOption } from "../call/moneyOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { threadsOf } from "../compute/threadsOf.ts";
import { responsesText } from "../text/responsesText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

type Aim = Required<Pick<ResponsesOptions, "sum" | "objective">>;

/** Outcomes of sets and what is read from them. */
const ROWS_AS_TASKS = 16;

/** What each response costs and buys, alone and given the others; with `--sum` the best set for that much money. */
export function responsesVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const sum = moneyOption(values, "sum");
  const workers = values.count("workers", 64);
  const options = {
    ...engineOptions(values),
    ...given<Aim>({ sum: sum.value, objective: values.oneOf("aim", ["date", "chance", "worth"]) }),
  };
  return answerVerb(call, values, {
    options,
    problems: sum.problems,
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const asked = { ...options, ...threadsOf(workers), onProgress };
      const { responses: answer, problems } = await responsesInParallel(plan, asked);
      return { answer, problems };
    },
    text: (answer, page, plan) => responsesText(answer, page, plan, options),
    draw: drawing("responses", values),
  });
}
