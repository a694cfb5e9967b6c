import { type Forecast, forecast, readLevel, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { levelsOf } from "../../apps/notebook/src/handing/page/levels.ts";
import { announcement, withSum } from "../../apps/notebook/src/words/answerWords.ts";
import { levelInShort, readContingencyWords, spokenOf } from "../../apps/notebook/src/words/levelWords.ts";
import { movedWords } from "../../apps/notebook/src/words/movedWords.ts";
import { type SourceKey, sourceOf } from "../../apps/notebook/src/words/sourceWords.ts";
import { plainPlan } from "./support/plainPlan.ts";

function answered(text: string): Forecast {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const { forecast: answer } = forecast(plan);
  if (answer === undefined) throw new Error("No forecast.");
  return answer;
}

const plain = answered(plainPlan);
const later = answered(plainPlan.replace("[5, 7, 12]", "[9, 12, 20]"));
const paid = answered(plainPlan.replace("[5, 7, 12]", "[5, 7, 12], cost: [1000, 1200, 1500]"));
const budgeted = answered(plainPlan.replace("holder: ann", "holder: ann, budget: 9000"));
const place = { width: 100, x: (value: number) => value };
const ofMoney: SourceKey[] = ["sum", "money", "budget", "both", "writtenSum", "kept"];

/** What the page says of one answer in words alone, at its level and at another. */
function words(now: Forecast, was: Forecast): string[] {
  const reading = readLevel(now, 0.85);
  return [
    announcement(now, undefined),
    announcement(now, was),
    movedWords(now, was, true),
    levelInShort(now),
    levelInShort(spokenOf(now, reading)),
    readContingencyWords(now, reading),
    ...levelsOf(now, { broad: place, slim: place }, { broad: place, slim: place }).levels.flatMap((level) => [
      level.words,
      level.limits,
    ]),
  ];
}

// That no sum is told where there is none, and that one is told where there is: common practice, no source.
describe("what is said of a plan without money", () => {
  it("is its dates and days, in whole sentences", () => {
    for (const said of words(later, plain))
      expect(said).not.toMatch(/EUR|\bsum\b|cost| and \.|, \.|undefined/);
    expect(announcement(later, plain)).toMatch(/^New answer at 80\s%: \d+ \w+ 2027\. It was \d+ \w+ 2027\.$/);
    expect(movedWords(later, plain, true)).toMatch(/^\S+ working days \(\d+ calendar days\) later$/);
    expect(movedWords(plain, plain, true)).toBe("the same date");
    expect(levelInShort(plain)).toMatch(/^80\s%: \w+ \d+ \w+ 2027$/);
    expect(readContingencyWords(plain, readLevel(plain, 0.85))).toMatch(/^\d+ calendar days$/);
    expect(withSum(plain, "Friday")).toBe("Friday");
  });

  it("has no source for a sum, and has one for its dates and days", () => {
    expect(ofMoney.filter((key) => sourceOf(key, plain) !== undefined)).toEqual([]);
    for (const key of ["date", "days", "finishBy", "writtenDate"] as const)
      expect(JSON.stringify(sourceOf(key, plain))).not.toMatch(/EUR|\bsum\b/);
  });

  it.each([
    ["a cost", paid],
    ["a budget alone", budgeted],
  ])("is told again with %s", (_name, now) => {
    for (const said of words(now, plain).filter((one) => !/^(Read off|This is)/.test(one)))
      expect(said).toMatch(/EUR|the same sum/);
    expect(sourceOf("sum", now)?.title).toMatch(/^EUR /);
    expect(withSum(now, "Friday", { between: ", " })).toMatch(/^Friday, EUR /);
  });

  it("says of either of two answers what it has", () => {
    expect(announcement(paid, plain)).toMatch(/ and EUR [\d,]+\. It was [^E]*$/);
    expect(movedWords(paid, plain, true)).toMatch(/^the same date, EUR [\d,]+ more$/);
    expect(movedWords(plain, paid, true)).toMatch(/^the same date, EUR [\d,]+ less$/);
  });
});
