import {
  type PoolAnswer,
  type PooledTask,
  type Pooling,
  type Problem,
  poolOpinions,
  settlePooling,
  type Task,
} from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { type GivenPlan, givenPlan, isProblem, nameIn, taskOf } from "../estimating/givenPlan.ts";
import { outputClash, writeBack, writtenTo } from "../estimating/writeBack.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { changedLines } from "../text/changedLines.ts";
import { pageOf } from "../text/page.ts";
import { type Pooled, poolText } from "../text/poolText.ts";
import { shellWord } from "../text/shellWord.ts";

/** Opinions side by side, pooled; with `--write` one task's estimate is settled by them. */
export async function poolVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const of = values.oneOf("of", ["duration", "effort", "cost"]);
  const write = values.has("write");
  const charts = values.text("charts");
  const problems = [...values.problems, ...(write ? outputClash(call, values) : [])];
  if (write && call.second === undefined) {
    const rule = "One estimate is settled at a time, by somebody who has looked at it.";
    problems.push(callProblem("missing-word", "--write", rule, "Write `leeway pool PLAN TASK --write`."));
  }
  if (problems.length > 0) return refuse(problems);
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const { plan, name } = given;
  const asked = call.second === undefined ? undefined : taskOf(plan, call.second);
  if (asked !== undefined && isProblem(asked)) return refuse([asked], name);
  const tasks = asked === undefined ? plan.tasks : [asked];
  const pooled = tasks.flatMap((task) => poolingsOf(given, task, of));
  if (pooled.length === 0 && asked !== undefined) {
    const rule = "Nobody has said anything about it yet.";
    return refuse([callProblem("no-opinions", asked.id, rule, "Ask with `leeway interview`.")], name);
  }
  const page = pageOf(process.env, process.stdout);
  if (!write) {
    const drawn = { pooled, name: nameIn(plan) };
    if (!(await chartsWritten("pool", drawn, charts))) return exitCodes.invalid;
    if (values.has("json"))
      printJson<PoolAnswer>({ plan: { title: plan.title, sha256: plan.sha256 }, tasks: pooled.map(json) });
    else printAnswer(poolText(plan.title, pooled, page, { name: nameIn(plan), file: shellWord(name) }));
    return exitCodes.done;
  }
  const [first, second] = pooled;
  if (first === undefined || second !== undefined) {
    const kinds = pooled.map(({ pooling }) => pooling.of).join(" and ");
    const rule = `There are opinions on its ${kinds}; one is settled at a time.`;
    return refuse([callProblem("which-estimate", "--write", rule, "Add --of duration or --of cost.")]);
  }
  return settle(given, first, values);
}

async function settle(given: GivenPlan, { task, pooling }: Pooled, values: OptionValues): Promise<number> {
  const nameOf = nameIn(given.plan);
  const edit = settlePooling(given.text, task, pooling, nameOf);
  if (edit.problems.length > 0) return refuse(edit.problems, given.name);
  const dry = values.has("dry-run");
  if (!dry && !(await writeBack(given, edit.text))) return exitCodes.invalid;
  const told = { task: task.id, ...json({ task, pooling, unitWords: "" }), written: !dry, basis: edit.basis };
  if (values.has("json")) {
    printJson<PoolAnswer>(told);
    return exitCodes.done;
  }
  const lines = [
    ...changedLines(given.text, edit.text),
    "",
    dry
      ? "Nothing is written."
      : `${writtenTo(given.name)}. What it does: leeway forecast ${shellWord(given.name)}`,
    "",
  ].join("\n");
  if (given.name === "standard input" && !dry) printNote(lines);
  else printAnswer(lines);
  return exitCodes.done;
}

function poolingsOf({ plan }: GivenPlan, task: Task, only: Pooling["of"] | undefined): Pooled[] {
  const daysPerWeek = plan.calendars.get(task.calendar)?.workdays.length ?? 5;
  return (["duration", "effort", "cost"] as const).flatMap((of) => {
    if ((only !== undefined && of !== only) || task[of] === undefined) return [];
    const pooling = poolOpinions(task.opinions ?? [], { of, daysPerWeek });
    if (pooling === undefined) return [];
    const time = of === "duration" ? "working days" : "person-days";
    const unitWords =
      of === "cost"
        ? plan.currency
        : pooling.unit === "weeks"
          ? time.replace(/(working )?days/, "weeks")
          : time;
    return [{ task, pooling, unitWords }];
  });
}

function json({ task, pooling }: Pooled): PooledTask {
  return { id: task.id, name: task.name, ...pooling };
}

function refuse(problems: readonly Problem[], name?: string): number {
  printProblems(problems, name);
  return exitCodes.invalid;
}
