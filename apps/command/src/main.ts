import { version } from "@leeway/core";
import { type Call, parseCall } from "./call/parseCall.ts";
import type { VerbName } from "./call/verbs.ts";
import { exitCodes } from "./exitCodes.ts";
import { printAnswer, printNote, printProblems } from "./output.ts";
import { handleStops } from "./stopping.ts";
import { helpVerb, overviewText, verbText } from "./verbs/help.ts";

/** A verb is read when it is called for: most of the program is about other verbs. */
const verbs: Readonly<Record<VerbName, (call: Call) => number | Promise<number>>> = {
  forecast: async (call) => (await import("./verbs/forecast.ts")).forecastVerb(call),
  explain: async (call) => (await import("./verbs/explain.ts")).explainVerb(call),
  confidence: async (call) => (await import("./verbs/confidence.ts")).confidenceVerb(call),
  responses: async (call) => (await import("./verbs/responses.ts")).responsesVerb(call),
  assumptions: async (call) => (await import("./verbs/assumptions.ts")).assumptionsVerb(call),
  reach: async (call) => (await import("./verbs/reach.ts")).reachVerb(call),
  money: async (call) => (await import("./verbs/money.ts")).moneyVerb(call),
  people: async (call) => (await import("./verbs/people.ts")).peopleVerb(call),
  paths: async (call) => (await import("./verbs/paths.ts")).pathsVerb(call),
  why: async (call) => (await import("./verbs/why.ts")).whyVerb(call),
  future: async (call) => (await import("./verbs/future.ts")).futureVerb(call),
  compare: async (call) => (await import("./verbs/compare.ts")).compareVerb(call),
  brief: async (call) => (await import("./verbs/brief.ts")).briefVerb(call),
  record: async (call) => (await import("./verbs/record.ts")).recordVerb(call),
  history: async (call) => (await import("./verbs/history.ts")).historyVerb(call),
  triggers: async (call) => (await import("./verbs/triggers.ts")).triggersVerb(call),
  check: async (call) => (await import("./verbs/check.ts")).checkVerb(call),
  interview: async (call) => (await import("./verbs/interview.ts")).interviewVerb(call),
  pool: async (call) => (await import("./verbs/pool.ts")).poolVerb(call),
  sheet: async (call) => (await import("./verbs/sheet.ts")).sheetVerb(call),
  detail: async (call) => (await import("./verbs/detail.ts")).detailVerb(call),
  scorecard: async (call) => (await import("./verbs/scorecard.ts")).scorecardVerb(call),
  uplift: async (call) => (await import("./verbs/uplift.ts")).upliftVerb(call),
  export: async (call) => (await import("./verbs/export.ts")).exportVerb(call),
  import: async (call) => (await import("./verbs/import.ts")).importVerb(call),
  inform: async (call) => (await import("./verbs/inform.ts")).informVerb(call),
  roles: async (call) => (await import("./verbs/roles.ts")).rolesVerb(call),
  schema: async (call) => (await import("./verbs/schema.ts")).schemaVerb(call.subject),
  sign: async (call) => (await import("./verbs/sign.ts")).signVerb(call),
  approvals: async (call) => (await import("./verbs/approvals.ts")).approvalsVerb(call),
  object: async (call) => (await import("./verbs/object.ts")).objectVerb(call),
  change: async (call) => (await import("./verbs/change.ts")).changeVerb(call),
  open: async (call) => (await import("./verbs/open.ts")).openVerb(call),
  new: async (call) => (await import("./verbs/new.ts")).newVerb(call),
  help: (call) => helpVerb(call.subject),
};

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
        return await verbs[parsed.call.verb.name](parsed.call);
      } catch (error) {
        const trace = error instanceof Error ? error.stack : String(error);
        printNote(
          `Something went wrong inside leeway ${version}, not in your plan. Please report this:\n${trace}`,
        );
        return exitCodes.broken;
      }
  }
}
