import {
  type Comparison,
  driftOf,
  type HistoryAnswer,
  type HistoryStep,
  historyFacts,
  type Plan,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { computeComparison } from "../compute/computeComparison.ts";
import { exitCodes } from "../exitCodes.ts";
import { appendToHistory } from "../history/append.ts";
import { besidePlan } from "../history/besidePlan.ts";
import { computeStanding, type Standing } from "../history/computeStanding.ts";
import { type Kept, keptHistory } from "../history/keptHistory.ts";
import { type PlanFile, planFile, whoProblems } from "../history/planFile.ts";
import { tornNote } from "../history/tornNote.ts";
import { unwritable } from "../history/unwritable.ts";
import { findKept, keepPlan, signedVersion } from "../history/versionsBeside.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { historyText, type Step } from "../text/historyText.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";

/** How the commitment drifted over the forecasts kept beside a plan; with `--add` keeps the present one first. */
export async function historyVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const who = values.text("as");
  const why = values.text("why");
  const workers = values.count("workers", 64);
  const today = dateOption(values, "today", todayOf(new Date()));
  if (values.problems.length + today.problems.length > 0) {
    printProblems([...values.problems, ...today.problems]);
    return exitCodes.invalid;
  }
  const file = await planFile(call.subject ?? "-", "history");
  if (file === undefined) return exitCodes.invalid;
  const strangers = whoProblems(file.plan, who);
  if (strangers.length > 0) {
    printProblems(strangers);
    return exitCodes.invalid;
  }
  const { path, text, plan } = file;
  const signed = signedVersion(path, plan);
  const { standing, problems } = await computeStanding({
    ...{ text, plan, options: {}, workers, signed },
    today: today.value,
  });
  await hearStops();
  if (problems.length > 0) printProblems(problems, path);
  if (standing === undefined) return exitCodes.invalid;
  if (values.has("add")) {
    const occasion = {
      date: today.value,
      what: plan.statusDate === undefined ? "forecast kept" : `forecast kept, status ${plan.statusDate}`,
      ...(who === undefined ? {} : { who }),
      ...(why === undefined ? {} : { why }),
    };
    if (!(await add(file, standing, occasion))) return exitCodes.invalid;
  }
  let kept: Kept;
  try {
    kept = keptHistory(besidePlan(path).history);
  } catch (error) {
    printProblems([unwritable(besidePlan(path).history, error)]);
    return exitCodes.invalid;
  }
  const steps = values.has("explain") ? await stepsOf(file, kept, workers) : undefined;
  const drift = driftOf(kept.entries);
  if (drift !== undefined && charts !== undefined && !(await chartsWritten("history", drift, charts)))
    return exitCodes.invalid;
  if (values.has("json")) {
    const { entries, breaks, torn } = kept;
    printJson<HistoryAnswer>({
      plan: { title: plan.title, sha256: plan.sha256, approvalSha256: plan.approvalSha256 },
      entries,
      chain: {
        holds: breaks.length === 0 && torn === undefined,
        breaks,
        ...(torn === undefined ? {} : { torn }),
      },
      ...(drift === undefined ? {} : { moved: drift.moved }),
      ...(steps === undefined ? {} : { steps: steps.map(stepJson) }),
      triggers: standing.triggers.triggers,
    });
  } else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(historyText({ file, kept, drift, steps, standing }, page, shellWord(path)));
  }
  const amiss = kept.breaks.length > 0 || standing.triggers.triggers.some(({ state }) => state === "tripped");
  return values.has("fail") && amiss ? exitCodes.found : exitCodes.done;
}

async function add(
  { path, text, plan }: PlanFile,
  standing: Standing,
  occasion: Parameters<typeof historyFacts>[3],
): Promise<boolean> {
  const beside = besidePlan(path);
  try {
    keepPlan(path, text);
    const facts = historyFacts(plan, standing.forecast, standing.left, occasion);
    const { tornLine } = await appendToHistory(beside, () => [facts]);
    if (tornLine !== undefined) printNote(tornNote(path, tornLine));
    return true;
  } catch (error) {
    printProblems([unwritable(beside.history, error)]);
    return false;
  }
}

/** What moved from each kept forecast to the next, as far as their versions are at hand. */
async function stepsOf(file: PlanFile, { entries }: Kept, workers: number | undefined): Promise<Step[]> {
  const versions = new Map<string, Plan | undefined>([[file.plan.sha256, file.plan]]);
  const versionOf = (sha256: string) => {
    if (!versions.has(sha256)) versions.set(sha256, findKept(file.path, sha256));
    return versions.get(sha256);
  };
  const steps: Step[] = [];
  for (const [i, entry] of entries.entries()) {
    const before = entries[i - 1];
    if (before === undefined || before.sha256 === entry.sha256) continue;
    const [oldPlan, newPlan] = [versionOf(before.sha256), versionOf(entry.sha256)];
    let comparison: Comparison | undefined;
    if (oldPlan !== undefined && newPlan !== undefined) {
      const job = { oldPlan, newPlan, options: {}, ...(workers === undefined ? {} : { workers }) };
      const result = await computeComparison(job);
      comparison = result.comparison;
    }
    steps.push({ from: before, to: entry, ...(comparison === undefined ? {} : { comparison }) });
  }
  return steps;
}

function stepJson({ from, to, comparison }: Step): HistoryStep {
  return {
    from: from.sha256,
    to: to.sha256,
    ...(comparison === undefined
      ? {}
      : { difference: comparison.difference, moves: comparison.moves, stamp: comparison.stamp }),
  };
}
