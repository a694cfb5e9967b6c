import { formatDate, movedSentence, standsSentences } from "@leeway/charts";
import {
  type ChangedLines,
  type Comparison,
  changedLines,
  type HistoryEntry,
  type Plan,
  type Recorded,
} from "@leeway/core";
import type { Standing } from "../history/computeStanding.ts";
import type { PlanFile } from "../history/planFile.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { missingLines } from "./missingLines.ts";
import { mostOf } from "./mostOf.ts";
import { nextLines } from "./nextLines.ts";
import { type Page, wrap } from "./page.ts";
import { plainText, plainTexts } from "./plainText.ts";
import { scoreLine } from "./scoreLine.ts";
import { triggerLines } from "./triggerLines.ts";

/** What `record` has to tell. */
export interface RecordAnswer {
  /** Nothing was written. */
  dry: boolean;
  file: PlanFile;
  recorded: Recorded;
  after: Plan;
  standing: Standing;
  comparison: Comparison;
  /** The last forecast of the history before this one. */
  last: HistoryEntry | undefined;
  /** Versions before this one, as far as they were at hand. */
  versions: readonly Plan[];
}

/** What was written (or would be), what moved, what is missing, which triggers trip. */
export function recordText(answer: RecordAnswer, page: Page, planWord: string): string {
  const { width, strong } = page;
  const { dry, file, recorded, after, versions } = answer;
  const comparison = plainTexts(answer.comparison);
  const triggers = plainTexts(answer.standing.triggers);
  const score = recorded.finished.length === 0 ? undefined : scoreLine(after, versions);
  const lines = changedLines(file.text, recorded.text);
  const count = lines.reduce((sum, { removed, added }) => sum + Math.max(removed.length, added.length), 0);
  const did = `${dry ? "Would change" : "Changed"} ${count === 1 ? "one line" : `${count} lines`} of ${file.path}`;
  const blocks: string[][] = [
    [explanationHead(plainText(after.title), comparison.stamp, page)],
    dry ? [`${did}:`, ...lines.flatMap(lineWords)] : wrap(`${did}; status date ${dayOf(after)}.`, width),
    [
      ...wrap(movedSentence(comparison), width).map(strong),
      ...standsSentences(comparison).flatMap((sentence) => wrap(sentence, width)),
      ...mostOf(comparison).flatMap((sentence) => wrap(sentence, width)),
    ],
    missingLines(recorded.missing, width),
    triggers.triggers.length === 0 ? [] : triggerLines(triggers, page),
    score === undefined ? [] : wrap(score, width),
    nextLines(
      [
        [`leeway history ${planWord}`, "how the commitment drifted"],
        [`leeway explain ${planWord}`, "what the contingency left is held for"],
      ],
      width,
    ),
    wrap(explanationStamp(comparison.stamp), width),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}

function dayOf({ statusDate }: Plan): string {
  return statusDate === undefined ? "" : formatDate(statusDate, "weekday");
}

function lineWords({ line, removed, added }: ChangedLines): string[] {
  const at = String(line).padStart(5);
  return [
    ...removed.map((text, i) => `${i === 0 ? at : "     "} - ${plainText(text)}`),
    ...added.map((text, i) => `${i === 0 && removed.length === 0 ? at : "     "} + ${plainText(text)}`),
  ];
}
