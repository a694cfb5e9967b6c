import { nearest, type PeopleLoadOptions, type Plan, type Problem } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { peopleText } from "../text/peopleText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

const LONGEST_ABSENCE = 366;

/** Who is away for how long, when the call says so. */
function readLoss(values: OptionValues): {
  loss: Pick<PeopleLoadOptions, "lose" | "loseEach">;
  problems: Problem[];
} {
  const person = values.text("lose");
  const days = values.count("days", LONGEST_ABSENCE);
  const from = values.text("from");
  const part = values.chance("part");
  const problems: Problem[] = [];
  const each = values.has("lose-each");
  if (person === undefined && !each) {
    for (const name of ["days", "from", "part"].filter((each) => values.has(each))) {
      problems.push(
        callProblem(
          "option-alone",
          `--${name}`,
          "It belongs to --lose or --lose-each.",
          "Say who: --lose ID.",
        ),
      );
    }
  } else if (!values.has("days")) {
    problems.push(
      callProblem(
        "option-missing",
        each ? "--lose-each" : "--lose",
        "It needs --days.",
        "Write e.g. --days 10.",
      ),
    );
  }
  const absence =
    days === undefined
      ? undefined
      : { days, ...(from === undefined ? {} : { from }), ...(part === undefined ? {} : { part }) };
  return {
    problems,
    loss: {
      ...(person === undefined || absence === undefined ? {} : { lose: { person, ...absence } }),
      ...(!each || absence === undefined ? {} : { loseEach: absence }),
    },
  };
}

/** Whether a person asked for by id is in the plan. */
function strangerProblem(plan: Plan, id: string | undefined): Problem[] {
  const ids = plan.people.map((person) => person.id).sort();
  if (id === undefined || ids.includes(id)) return [];
  const near = nearest(id, ids);
  const known = ids.length === 0 ? "This plan names no people." : `Name one of: ${ids.join(", ")}.`;
  const remedy = near === undefined ? known : `Did you mean ${near}?`;
  return [callProblem("unknown-id", `--person ${id}`, "There is nobody of that id in the plan.", remedy)];
}

/** Load against capacity, who waits for whom, and what it does when somebody is away. */
export function peopleVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const wanted = values.text("person");
  const { loss, problems: wrong } = readLoss(values);
  const options = { ...engineOptions(values), ...loss };
  return answerVerb(call, values, {
    options,
    problems: wrong,
    rowsAsTasks: (plan) => plan.tasks.length + 8,
    unfit: (plan) => strangerProblem(plan, wanted),
    async ask(plan, onProgress) {
      const found = await answerAside({ kind: "people", plan, options }, onProgress);
      return { answer: found.people, problems: found.problems };
    },
    text: (answer, page, plan) => peopleText(answer, page, plan, options, wanted),
    draw: drawing("people", values),
  });
}
