import {
  type HistoryEntry,
  type HistoryFacts,
  historyFacts,
  type RecordedAnswer,
  recordProgress,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { computeComparison } from "../compute/computeComparison.ts";
import { exitCodes } from "../exitCodes.ts";
import { appendToHistory } from "../history/append.ts";
import { besidePlan } from "../history/besidePlan.ts";
import { computeStanding } from "../history/computeStanding.ts";
import { factsOfCall } from "../history/factsOfCall.ts";
import { factsOfFile } from "../history/factsOfFile.ts";
import { keptHistory } from "../history/keptHistory.ts";
import { type PlanFile, planFile, whoProblems } from "../history/planFile.ts";
import { tornNote } from "../history/tornNote.ts";
import { unwritable } from "../history/unwritable.ts";
import { findKept, keepPlan, signedVersion } from "../history/versionsBeside.ts";
import { writePlan } from "../history/writePlan.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { type RecordAnswer, recordText } from "../text/recordText.ts";
import { shellWord } from "../text/shellWord.ts";

/** Writes progress into a plan, keeps the version and the forecast, and says what moved, trips and is missing. */
export async function recordVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const statusDate = values.text("status");
  const who = values.text("as");
  const why = values.text("why");
  const workers = values.count("workers", 64);
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [...values.problems, ...today.problems];
  if (statusDate === undefined) {
    const rule = "It needs the day up to which you report.";
    problems.push(callProblem("option-missing", "--status", rule, "Write e.g. --status 2027-03-05."));
  }
  if (problems.length > 0 || statusDate === undefined) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const file = await planFile(call.subject ?? "-", "record");
  const more = await factsOfFile(values.text("from"));
  if (file === undefined) return exitCodes.invalid;
  const recorded = recordProgress(file.text, { statusDate, facts: [...factsOfCall(call), ...(more ?? [])] });
  const found = [...recorded.problems, ...whoProblems(file.plan, who)];
  if (found.length > 0) printProblems(found);
  const { after } = recorded;
  if (after === undefined || more === undefined || found.some(({ severity }) => severity === "error")) {
    printNote("Nothing was written.");
    return exitCodes.invalid;
  }

  const beside = besidePlan(file.path);
  const entries = entriesOf(beside.history);
  if (entries === undefined) return exitCodes.invalid;
  const last = entries.at(-1);
  const older = (last === undefined ? undefined : findKept(file.path, last.sha256)) ?? file.plan;
  const signed = signedVersion(file.path, after);
  const job = { options: {}, workers, signed, today: today.value };
  const now = await computeStanding({ ...job, text: recorded.text, plan: after });
  const then =
    last === undefined ? await computeStanding({ ...job, text: file.text, plan: file.plan }) : undefined;
  const moved = await computeComparison({
    oldPlan: older,
    newPlan: after,
    options: {},
    ...(workers === undefined ? {} : { workers }),
  });
  await hearStops();
  if (now.problems.length > 0) printProblems(now.problems, file.path);
  if (now.standing === undefined || moved.comparison === undefined) {
    printProblems(moved.problems);
    printNote("Nothing was written.");
    return exitCodes.invalid;
  }

  const occasion = {
    date: today.value,
    what: whatHappened(recorded.changed.length, statusDate),
    ...(who === undefined ? {} : { who }),
    ...(why === undefined ? {} : { why }),
  };
  const { standing } = now;
  const kept = historyFacts(after, standing.forecast, standing.left, occasion);
  const facts: HistoryFacts[] = [kept];
  const start = then?.standing;
  if (start !== undefined) {
    const first = { date: today.value, what: "as planned before progress was first recorded here" };
    facts.unshift(historyFacts(file.plan, start.forecast, start.left, first));
  }
  const dry = values.has("dry-run");
  if (!dry && !(await write(file, recorded.text, facts))) return exitCodes.invalid;

  // Estimates count as they were said before work began, so the first version is asked too.
  const first = recorded.finished.length === 0 ? undefined : findKept(file.path, entries[0]?.sha256 ?? "");
  const answer: RecordAnswer = {
    dry,
    file,
    recorded,
    after,
    standing,
    comparison: moved.comparison,
    last,
    versions: [...new Set([...(first === undefined ? [] : [first]), older, file.plan])],
  };
  if (values.has("json")) printJson<RecordedAnswer>(jsonOf(answer, kept));
  else printAnswer(recordText(answer, pageOf(process.env, process.stdout), shellWord(file.path)));
  return exitCodes.done;
}

/** What is kept already; undefined, with the problem printed, where the file cannot be read. */
function entriesOf(history: string): HistoryEntry[] | undefined {
  try {
    return keptHistory(history).entries;
  } catch (error) {
    printProblems([unwritable(history, error)]);
    printNote("Nothing was written.");
    return undefined;
  }
}

function whatHappened(count: number, statusDate: string): string {
  const what = count === 0 ? "no news" : count === 1 ? "progress of one item" : `progress of ${count} items`;
  return `${what} up to ${statusDate}`;
}

/** Version, plan, history, in this order: a crash between two of them leaves each whole, and the next run says so. */
async function write(file: PlanFile, text: string, facts: readonly HistoryFacts[]): Promise<boolean> {
  const { history } = besidePlan(file.path);
  let at = file.path;
  try {
    keepPlan(file.path, file.text);
    keepPlan(file.path, text);
    if (!(await writePlan(file.path, file.text, text))) {
      const rule = "Somebody changed it while the forecast was computed; nothing was written.";
      printProblems([callProblem("changed-meanwhile", file.path, rule, "Record again.")]);
      return false;
    }
    at = history;
    const { tornLine } = await appendToHistory(besidePlan(file.path), () => facts);
    if (tornLine !== undefined) printNote(tornNote(file.path, tornLine));
    return true;
  } catch (error) {
    printProblems([unwritable(at, error)]);
    if (at === history) printNote(`The plan was written. Then: leeway history ${shellWord(file.path)} --add`);
    return false;
  }
}

function jsonOf(
  { dry, recorded, after, standing, comparison }: RecordAnswer,
  forecast: HistoryFacts,
): RecordedAnswer {
  const { missing, changed, finished } = recorded;
  const { from, to, difference, moves, confidence } = comparison;
  return {
    plan: { title: after.title, sha256: after.sha256, approvalSha256: after.approvalSha256 },
    ...(after.statusDate === undefined ? {} : { statusDate: after.statusDate }),
    written: !dry,
    changed,
    finished,
    missing,
    forecast,
    moved: { confidence, from, to, difference, moves },
    triggers: standing.triggers.triggers,
  };
}
