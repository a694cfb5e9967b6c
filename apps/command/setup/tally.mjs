import { readFileSync } from "node:fs";

/**
 * Counts the checks of a Vitest JSON report. A file that could not be loaded, and a run that failed for a
 * reason no check shows, count as one failed check each: nothing that went wrong may be counted as nothing.
 *
 * @param {string} path  the report; missing or unreadable counts as one failed check
 * @param {number} code  exit code of the run
 * @returns {{ passed: number, failed: number }}
 */
export function tallyReport(path, code) {
  let report;
  try {
    report = JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return { passed: 0, failed: 1 };
  }
  let failed = report.numFailedTests;
  for (const file of report.testResults) {
    if (file.status === "failed" && file.assertionResults.every((check) => check.status !== "failed"))
      failed++;
  }
  if (failed === 0 && code !== 0) failed = 1;
  return { passed: report.numPassedTests, failed };
}
