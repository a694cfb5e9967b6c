import {
  nearest,
  type PeopleLoadOptions,
  type Plan,
  type Problem,
  readPlan,
  scenarioNotes,
} from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { answerAside } from "../compute/answerAside.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { progressLine } from "../compute/progressLine.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { peopleText } from "../text/peopleText.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
const LONGEST_ABSENCE = 366;

function readOptions(values: OptionValues): { engine: PeopleLoadOptions; problems: Problem[] } {
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const confidence = values.chance("confidence");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
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
    problems: [...values.problems, ...problems],
    engine: {
      ...(iterations === undefined ? {} : { iterations }),
      ...(seed === undefined ? {} : { seed }),
      ...(confidence === undefined ? {} : { confidence }),
      ...(design === undefined ? {} : { design }),
      ...(taken === undefined ? {} : { with: taken }),
      ...(left === undefined ? {} : { without: left }),
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
export async function peopleVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const wanted = values.text("person");
  const { engine, problems: wrong } = readOptions(values);
  if (wrong.length > 0) {
    printProblems(wrong);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const { plan, problems } = readPlan(document.text);
  if (problems.length > 0) printProblems(problems, document.name);
  if (plan === undefined) return exitCodes.invalid;
  const tooLarge = memoryProblem(plan.tasks.length + 8, engine.iterations ?? plan.iterations);
  const strangers = strangerProblem(plan, wanted);
  if (tooLarge !== undefined || strangers.length > 0) {
    printProblems([...strangers, ...(tooLarge === undefined ? [] : [tooLarge])], document.name);
    return exitCodes.invalid;
  }
  const line = progressLine();
  const result = await answerAside({ kind: "people", plan, options: engine }, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, engine), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.people === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("people", result.people, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(engine), ...result.people });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(peopleText(result.people, page, shellWord(document.name), engine, wanted));
  }
  return exitCodes.done;
}
