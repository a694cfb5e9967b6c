import {
  type Problem,
  STAGE_UPLIFTS,
  type StageKind,
  stageUplift,
  UPLIFT_BOUNDS,
  type UpliftAsked,
  type UpliftKind,
  type UpliftMix,
  upliftFor,
} from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";

const isKind = (word: string): word is UpliftKind => Object.hasOwn(UPLIFT_BOUNDS, word);
const isStageKind = (word: string): word is StageKind => Object.hasOwn(STAGE_UPLIFTS, word);
const ALL_KINDS = [...Object.keys(UPLIFT_BOUNDS), ...Object.keys(STAGE_UPLIFTS)];

/**
 * Reads `--kind KIND` or `--kind KIND=PART` (repeated), `--mitigated` and `--stage`; everything that is wrong at once.
 *
 * @param mitigated  As it was written.
 */
export function upliftOption(
  kinds: readonly string[],
  mitigated: string | undefined,
  stage: string | undefined,
): { asked?: UpliftAsked; problems: Problem[] } {
  const problems: Problem[] = [];
  const wrong = (word: string, rule: string, remedy: string) =>
    problems.push(callProblem("option-value", word, rule, remedy));
  const share = mitigated === undefined ? 0 : decimal(mitigated);
  if (!(share >= 0 && share <= 1)) {
    wrong(`--mitigated ${mitigated}`, "It must be a part from 0 to 1.", "Write e.g. --mitigated 0.4.");
  }
  if (kinds.length === 0) wrong("--kind", "What is built?", `Kinds: ${ALL_KINDS.join(", ")}.`);
  const parts = kinds.map((text) => {
    const [word = "", part] = text.split("=");
    return { word, part: part === undefined ? 1 : decimal(part), text };
  });
  for (const { word, text } of parts) {
    if (isKind(word) || isStageKind(word)) continue;
    const near = nearest(word, ALL_KINDS);
    const remedy = near === undefined ? `Kinds: ${ALL_KINDS.join(", ")}.` : `Did you mean ${near}?`;
    wrong(`--kind ${text}`, "There is no such kind.", remedy);
  }
  if (problems.length > 0) return { problems };
  const staged = parts.filter(({ word }) => isStageKind(word));
  if (staged.length > 0 || stage !== undefined) return atStage(parts, mitigated, stage);
  const sum = parts.reduce((total, { part }) => total + part, 0);
  if (parts.some(({ part }) => !(part > 0)) || Math.abs(sum - 1) > 1e-9) {
    const words = kinds.map((kind) => `--kind ${kind}`).join(" ");
    wrong(words, "The parts must be above 0 and sum to 1.", "Write e.g. --kind standard-buildings=0.7.");
    return { problems };
  }
  const mix = parts.flatMap(({ word, part }): UpliftMix[] => (isKind(word) ? [{ kind: word, part }] : []));
  const uplift = upliftFor(mix, share);
  if (uplift.capital === undefined) {
    const rule = "The table has no uplift of duration or capital cost for all of these kinds.";
    wrong(`--kind ${kinds.join(" --kind ")}`, rule, "It is of running costs; a plan has none of those.");
    return { problems };
  }
  return { asked: { table: "bounds", mix, mitigated: share, uplift }, problems };
}

function atStage(
  parts: readonly { word: string; text: string }[],
  mitigated: string | undefined,
  stage: string | undefined,
): { asked?: UpliftAsked; problems: Problem[] } {
  const [only, second] = parts;
  const problem = (word: string, rule: string, remedy: string) => ({
    problems: [callProblem("option-value", word, rule, remedy)],
  });
  const kind = only?.word ?? "";
  if (second !== undefined || !isStageKind(kind)) {
    const names = Object.keys(STAGE_UPLIFTS).join(", ");
    return problem("--stage", "Uplifts by stage are of one kind.", `Kinds with stages: ${names}.`);
  }
  const at = ([1, 2, 3] as const).find((each) => String(each) === stage);
  if (at === undefined) {
    const remedy = "Write --stage 1 (earliest), 2 or 3.";
    return problem(`--stage${stage === undefined ? "" : ` ${stage}`}`, "This kind needs its stage.", remedy);
  }
  if (mitigated !== undefined) {
    const rule = "Uplifts by stage hold what a later stage has settled already.";
    return problem("--mitigated", rule, "Leave it out, or use a kind without stages.");
  }
  const capital = stageUplift(kind, at);
  if (capital === undefined) {
    return problem(`--stage ${stage}`, "The table has no value there.", "Use the stage before or after.");
  }
  return { asked: { table: "stages", kind, stage: at, capital }, problems: [] };
}

function decimal(text: string): number {
  return /^(\d+(\.\d+)?|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
}
