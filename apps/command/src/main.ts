import { version } from "@leeway/core";
import { type Call, parseCall } from "./call/parseCall.ts";
import { exitCodes } from "./exitCodes.ts";
import { printAnswer, printNote, printProblems } from "./output.ts";
import { handleStops } from "./stopping.ts";
import { approvalsVerb } from "./verbs/approvals.ts";
import { assumptionsVerb } from "./verbs/assumptions.ts";
import { briefVerb } from "./verbs/brief.ts";
import { changeVerb } from "./verbs/change.ts";
import { checkVerb } from "./verbs/check.ts";
import { compareVerb } from "./verbs/compare.ts";
import { confidenceVerb } from "./verbs/confidence.ts";
import { detailVerb } from "./verbs/detail.ts";
import { explainVerb } from "./verbs/explain.ts";
import { exportVerb } from "./verbs/export.ts";
import { forecastVerb } from "./verbs/forecast.ts";
import { futureVerb } from "./verbs/future.ts";
import { helpVerb, overviewText, verbText } from "./verbs/help.ts";
import { historyVerb } from "./verbs/history.ts";
import { importVerb } from "./verbs/import.ts";
import { informVerb } from "./verbs/inform.ts";
import { interviewVerb } from "./verbs/interview.ts";
import { moneyVerb } from "./verbs/money.ts";
import { newVerb } from "./verbs/new.ts";
import { objectVerb } from "./verbs/object.ts";
import { openVerb } from "./verbs/open.ts";
import { pathsVerb } from "./verbs/paths.ts";
import { peopleVerb } from "./verbs/people.ts";
import { poolVerb } from "./verbs/pool.ts";
import { reachVerb } from "./verbs/reach.ts";
import { recordVerb } from "./verbs/record.ts";
import { responsesVerb } from "./verbs/responses.ts";
import { rolesVerb } from "./verbs/roles.ts";
import { schemaVerb } from "./verbs/schema.ts";
import { scorecardVerb } from "./verbs/scorecard.ts";
import { sheetVerb } from "./verbs/sheet.ts";
import { signVerb } from "./verbs/sign.ts";
import { triggersVerb } from "./verbs/triggers.ts";
import { upliftVerb } from "./verbs/uplift.ts";
import { whyVerb } from "./verbs/why.ts";

function run(call: Call): number | Promise<number> {
  switch (call.verb.name) {
    case "forecast":
      return forecastVerb(call);
    case "explain":
      return explainVerb(call);
    case "confidence":
      return confidenceVerb(call);
    case "responses":
      return responsesVerb(call);
    case "assumptions":
      return assumptionsVerb(call);
    case "reach":
      return reachVerb(call);
    case "money":
      return moneyVerb(call);
    case "people":
      return peopleVerb(call);
    case "paths":
      return pathsVerb(call);
    case "why":
      return whyVerb(call);
    case "future":
      return futureVerb(call);
    case "compare":
      return compareVerb(call);
    case "brief":
      return briefVerb(call);
    case "record":
      return recordVerb(call);
    case "history":
      return historyVerb(call);
    case "triggers":
      return triggersVerb(call);
    case "check":
      return checkVerb(call);
    case "interview":
      return interviewVerb(call);
    case "pool":
      return poolVerb(call);
    case "sheet":
      return sheetVerb(call);
    case "detail":
      return detailVerb(call);
    case "scorecard":
      return scorecardVerb(call);
    case "uplift":
      return upliftVerb(call);
    case "export":
      return exportVerb(call);
    case "import":
      return importVerb(call);
    case "inform":
      return informVerb(call);
    case "roles":
      return rolesVerb(call);
    case "schema":
      return schemaVerb(call.subject);
    case "sign":
      return signVerb(call);
    case "approvals":
      return approvalsVerb(call);
    case "object":
      return objectVerb(call);
    case "change":
      return changeVerb(call);
    case "open":
      return openVerb(call);
    case "new":
      return newVerb(call);
    default:
      return helpVerb(call.subject);
  }
}

/**
 * The command. Reads the call, does what it says and returns the exit code; text goes to standard output,
 * problems to standard error.
 *
 * @param words  What stands after `leeway`.
 */
export async function main(words: readonly string[]): Promise<number> {
  handleStops();
  const parsed = parseCall(words);
  switch (parsed.kind) {
    case "version":
      printAnswer(`${version}\n`);
      return exitCodes.done;
    case "help":
      printAnswer(parsed.about === undefined ? overviewText() : verbText(parsed.about));
      return exitCodes.done;
    case "problems":
      printProblems(parsed.problems);
      return exitCodes.invalid;
    case "call":
      try {
        return await run(parsed.call);
      } catch (error) {
        const trace = error instanceof Error ? error.stack : String(error);
        printNote(
          `Something went wrong inside leeway ${version}, not in your plan. Please report this:\n${trace}`,
        );
        return exitCodes.broken;
      }
  }
}
