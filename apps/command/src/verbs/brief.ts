import { briefSheet, preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { type Brief, type BriefAnswers, type PreBrief, preBriefOf } from "@leeway/core";
import { approverProblems } from "../brief/approverProblem.ts";
import { computeBrief, computeExtras } from "../brief/computeBrief.ts";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { planSince } from "../brief/sinceOption.ts";
import { writeSheet } from "../brief/writeSheet.ts";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { traceText } from "../text/traceText.ts";
import { answerVerb } from "./answerVerb.ts";

/** Outcomes of sets and variants, and what is read from them. */
const ROWS_AS_TASKS = 16;

/** What an approver reads: one page, the answer first; with `--for`, what this person will ask, answered. */
export async function briefVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  const who = values.text("for");
  const out = values.text("out");
  // A page named as HTML and filled with Markdown would be opened by whoever gets it, and read as neither.
  const format =
    values.oneOf("format", ["markdown", "html"]) ?? (/\.html?$/i.test(out ?? "") ? "html" : "markdown");
  const traced = values.text("trace");
  const workers = values.count("workers", 64);
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [...today.problems, ...clashes(values, call)];
  const { since, wrong } =
    values.problems.length + problems.length > 0 ? { wrong: false } : await planSince(values.text("since"));
  if (wrong) return exitCodes.invalid;
  let answers: BriefAnswers | undefined; // what the charts are drawn from, once it is there
  let html = "";
  return answerVerb<Brief | PreBrief>(call, values, {
    options,
    problems,
    rowsAsTasks: () => ROWS_AS_TASKS,
    unfit: (plan) => approverProblems(plan, who),
    async ask(plan, onProgress) {
      const job = { plan, options, workers };
      const share = who === undefined ? 1 : 0.75;
      const computed = await computeBrief({
        ...job,
        today: today.value,
        onProgress: (done, total) => onProgress(Math.floor((1000 * share * done) / total), 1000),
      });
      const { brief } = computed;
      answers = computed.answers;
      if (brief === undefined || answers === undefined || who === undefined) {
        return { answer: brief, problems: computed.problems };
      }
      const { extras, problems: more } = await computeExtras(
        {
          ...job,
          onProgress: (done, total) =>
            onProgress(Math.floor(1000 * (share + ((1 - share) * done) / Math.max(1, total))), 1000),
        },
        since,
      );
      return {
        answer: more.length > 0 ? undefined : preBriefOf(plan, brief, answers, who, extras),
        problems: [...computed.problems, ...more],
      };
    },
    async draw(answer) {
      if (format === "html" && answers !== undefined) {
        // Loaded only here: drawing needs a document and half a second that an answer does not.
        const { pageOfBrief } = await import("../brief/pageOfBrief.ts");
        html = pageOfBrief(answer, answers);
      }
      return out === undefined || writeSheet(out, textOf(answer), values.has("force"));
    },
    text(answer, page, planWord) {
      if (traced === undefined) return out === undefined ? textOf(answer) : "";
      return traceText("brief" in answer ? answer.brief : answer, traced, page, planWord);
    },
  });

  function textOf(answer: Brief | PreBrief): string {
    if (format === "html") return html;
    return sheetMarkdown("brief" in answer ? preBriefSheet(answer) : briefSheet(answer));
  }
}

/** Options that cannot stand together. */
function clashes(values: OptionValues, call: Call) {
  const wrong = [];
  if (values.has("json")) {
    for (const name of ["format", "out", "force"]) {
      if (!values.has(name)) continue;
      const rule = "--json prints one JSON document on standard output.";
      wrong.push(callProblem("option-clash", `--${name}`, rule, "Leave one of them out."));
    }
  }
  for (const name of ["format", "out", "json"]) {
    if (!values.has("trace") || !values.has(name)) continue;
    const rule =
      "--trace prints where figures come from, in place of the page; with --json the answer has it as `trace`.";
    wrong.push(callProblem("option-clash", `--${name}`, rule, "Leave one of them out."));
  }
  if (values.has("force") && !values.has("out")) {
    wrong.push(
      callProblem("option-clash", "--force", "Nothing is written without --out.", "Add --out FILE."),
    );
  }
  if (values.has("since") && !values.has("for")) {
    const rule = "What changed since a version is told to one approver.";
    wrong.push(
      callProblem("option-clash", "--since", rule, "Add --for APPROVER, or see `leeway compare OLD NEW`."),
    );
  }
  if (values.text("since") === "-" && call.subject === "-") {
    const rule = "Standard input can be one of the plans only.";
    wrong.push(callProblem("repeated-plan", "--since -", rule, "Name a file for the other."));
  }
  return wrong;
}
