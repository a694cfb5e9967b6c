import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { pathsText } from "../text/pathsText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

const ROWS_AS_TASKS = 16;
/** Every future may have a path of its own: 5 bytes a task against the 16 of `memoryProblem`. */
const PATH_PART = 1 / 3;

/** Which chains of tasks set the finish, how often, and what is at stake near them. */
export function pathsVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  return answerVerb(call, values, {
    options,
    rowsAsTasks: (plan) => Math.ceil(ROWS_AS_TASKS + PATH_PART * plan.tasks.length),
    async ask(plan, onProgress) {
      const found = await answerAside({ kind: "paths", plan, options }, onProgress);
      return { answer: found.paths, problems: found.problems };
    },
    text: (answer, page, plan) => pathsText(answer, page, plan, options, values.has("indices")),
    draw: drawing("paths", values),
  });
}
