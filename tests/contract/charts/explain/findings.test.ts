import {
  confidenceSteps,
  futureBars,
  jointDensity,
  movesDays,
  movesMoney,
  pathBars,
  peopleWeeks,
  responseWorth,
  sharesDays,
  sharesMoney,
  spending,
  tasksAtStake,
  walkDays,
  walkMoney,
} from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { newDocument } from "../newDocument.ts";
import { hardComparisons } from "./hardComparisons.ts";
import { hardConfidences } from "./hardConfidences.ts";
import { hardExplanations } from "./hardExplanations.ts";
import { sampleComparison } from "./sampleComparison.ts";
import { sampleConfidence } from "./sampleConfidence.ts";
import { sampleExplanation, sampleShares, sampleWalk } from "./sampleExplanation.ts";
import { hardFutures, sampleFuture } from "./sampleFuture.ts";
import { hardPaths, samplePaths } from "./samplePaths.ts";
import { hardPeople, samplePeople } from "./samplePeople.ts";
import { hardResponses, sampleResponses } from "./sampleResponses.ts";
import { hardSpendings, sampleSpending } from "./sampleSpending.ts";

// Each title is worked out by hand from the figures of the sample it is of. No outside source exists for wording.

const document = newDocument();
const of = <T>(cases: Record<string, T>, name: string): T => {
  const found = cases[name];
  if (found === undefined) throw new Error(`no case "${name}"`);
  return found;
};

describe("sharesDays(explanation), sharesMoney(explanation)", () => {
  // 14.2 + 11.3 + 8.4 + 7.6 + 6.1 + 9.9 + 3.2 - 4.7 = 56.0 days
  it("name the largest share and the contingency", () => {
    expect(sharesDays(sampleExplanation(), { document }).title).toBe(
      "“Permit decided” makes 14 of 56 working days of contingency, the largest single share",
    );
    expect(sharesMoney(sampleExplanation(), { document }).title).toBe(
      "“Quay wall needs pinning” makes EUR 18,400 of EUR 48,800 of contingency, the largest single share",
    );
  });
  it("name a single cause even where causes gathered together make more", () => {
    const shares = sampleShares.map((share) =>
      share.id === "other-spread" ? { ...share, workingDays: 40 } : share,
    );
    expect(sharesDays(sampleExplanation(shares), { document }).title).toMatch(
      /^“Permit decided” makes 14 of 86/,
    );
  });
  it.each([
    ["no cause at all", "No contingency: the committed date is that of the plan as written"],
    ["causes that come to nothing", "No contingency: the committed date is that of the plan as written"],
    ["zero contingency", "No contingency: what “Tide too low” adds, 5 working days, the rest saves"],
    ["one cause", "All 4 working days of contingency come from “Permit decided”"],
    ["all equal", "No cause stands out: each of 5 makes 4 working days of 20 working days"],
    [
      "negative shares",
      "The committed date is 56 working days before the plan as written: “Permit decided” saves most, 14 working days",
    ],
  ])("%s", (name, title) => expect(sharesDays(of(hardExplanations(), name), { document }).title).toBe(title));
  it("table all shares and their sum, however many are drawn", () => {
    const { table, svg } = sharesDays(of(hardExplanations(), "forty causes"), { document });
    expect(table.rows).toHaveLength(41);
    expect(table.rows[40]?.[0]).toBe("Contingency");
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("26 smaller ones");
    expect(words).toContain("Cause number 14");
    expect(words).not.toContain("Cause number 15");
  });
  it("say how orders were taken, and mark no limits where all were", () => {
    const sampled = sharesDays(sampleExplanation(), { document });
    expect(sampled.subtitle).toContain("95 % limits");
    expect(sampled.summary).toContain("400 orders of the causes were sampled");
    const exact = sharesDays(of(hardExplanations(), "one cause"), { document });
    expect(exact.subtitle).not.toContain("limits");
    expect(exact.summary).toContain("every order of the causes was taken");
  });
  it("show a sum to the place its limits support", () => {
    // Half the width of the limits is 3,000: thousands.
    const limits = {
      lowDate: "2027-10-29",
      highDate: "2027-11-03",
      low: { workingDays: 194, money: 644_000 },
      high: { workingDays: 197, money: 650_000 },
    };
    const { svg } = sharesMoney(sampleExplanation(undefined, { limits }), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("EUR 598,000");
    expect(words).toContain("EUR 647,000 · 80 %");
  });
});

describe("walkDays(explanation), walkMoney(explanation)", () => {
  // Of 56 days the largest step is 31 %, of EUR 48,800 it is 42 %.
  it("name the largest step", () => {
    expect(walkDays(sampleExplanation(), { document }).title).toBe(
      "The 80 % date is 56 working days later than the plan as written; the largest step is “Risks and assumptions”, 17 working days",
    );
    expect(walkMoney(sampleExplanation(), { document }).title).toBe(
      "The 80 % sum is EUR 48,800 more than the plan as written; the largest step is “Risks and assumptions”, EUR 20,500",
    );
  });
  it.each([
    ["no cause at all", "Nothing lies between the plan as written and the 80 % date"],
    [
      "a walk that turns back",
      "The 80 % date is 56 working days later than the plan as written; the largest step is “Merging of paths”, 30 working days earlier",
    ],
  ])("%s", (name, title) => expect(walkDays(of(hardExplanations(), name), { document }).title).toBe(title));
  it("name the only step", () => {
    const walk = sampleWalk(56, 48_800)
      .slice(0, 1)
      .map((step) => ({ ...step, workingDays: 56 }));
    expect(walkDays(sampleExplanation(undefined, { walk }), { document }).title).toBe(
      "The 80 % date is 56 working days later than the plan as written, all of it by one step: “Spread along the driving path”",
    );
  });
  it("keep the steps in their order and add them up", () => {
    const { table } = walkDays(sampleExplanation(), { document });
    expect(table.rows.map((row) => row[0])).toEqual([
      "Spread along the driving path",
      "Merging of paths",
      "Limited people",
      "Risks and assumptions",
      "From the mean to 80 %",
      "Contingency",
    ]);
    expect(table.rows[4]?.[2]).toBe("+56.0");
  });
});

describe("movesDays(comparison), movesMoney(comparison)", () => {
  // 8.3 + 3.1 - 6.2 + 2.4 + 1.2 = 8.8 days; 4200 + 900 - 14,300 + 7600 + 3100 = 1500 euro.
  it("say how far, where to, and what moved most", () => {
    expect(movesDays(sampleComparison(), { document }).title).toBe(
      "The committed date moves 8.8 working days later, to 14 Nov 2027, most by “Permit decided”, 8.3 working days",
    );
    expect(movesMoney(sampleComparison(), { document }).title).toBe(
      "The committed sum rises by EUR 1,500, to EUR 656,900, most by “Risk “Quay wall needs pinning” closed”, EUR 14,300 cheaper",
    );
  });
  it.each([
    ["no change", "The committed date stays 2 Nov 2027: nothing moved it"],
    ["changes that move nothing", "The committed date stays 2 Nov 2027: nothing moved it"],
    ["one change", "The committed date moves 8.3 working days later, to 14 Nov 2027: “Permit decided”"],
    [
      "changes that cancel out",
      "The committed date stays 2 Nov 2027: changes cancel out, the largest “Permit decided”, 8.3 working days later",
    ],
  ])("%s", (name, title) => expect(movesDays(of(hardComparisons(), name), { document }).title).toBe(title));
  it("leave out of the picture what moves no date, and keep it in the table", () => {
    const { svg, table } = movesDays(sampleComparison(), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).not.toContain("Rate of the electrician");
    expect(table.rows.map((row) => row[0])).toContain("Rate of the electrician");
  });
});

describe("confidenceSteps(confidence)", () => {
  it.each([
    ["no lateness left", "Beyond 50 % a step costs more than it avoids, and the plan commits to 80 %"],
    [
      "not to be told apart",
      "Stopping near 80 % is worth most, as far as 80 % and its neighbours can be told apart",
    ],
    [
      "stop before the committed level",
      "Beyond 50 % a step costs more than it avoids, and the plan commits to 80 %",
    ],
    ["stop after the committed level", "Going on from 80 % to 90 % avoids more lateness than it holds"],
    ["the last step is worth it too", "Even the step to 95 % avoids more lateness than it holds in money"],
    ["one level", "Even the step to 80 % avoids more lateness than it holds in money"],
    ["every level on one day, for one sum", "The step from 80 % to 85 % takes no day and no money"],
  ])("%s", (name, start) => {
    const { title } = confidenceSteps(of(hardConfidences(), name), { document });
    expect(title.slice(0, start.length)).toBe(start);
  });
  it("say what the next step takes where lateness has no price", () => {
    // ln(0.85/0.15) - ln(0.8/0.2) = 0.34831 and of the squares 1.08697: 16.5 and 1.2 times these are 7.051 days, 5.04
    // working days; 17,200 times 0.34831 is 5,991 euro.
    expect(confidenceSteps(of(hardConfidences(), "lateness not priced"), { document }).title).toBe(
      "The step from 80 % to 85 % takes 5 working days and EUR 6,000",
    );
  });
  it("mark the committed level in words and table every level", () => {
    const { svg, table } = confidenceSteps(sampleConfidence(), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("committed, pays up to here");
    expect(table.rows.map((row) => row[0])).toEqual(
      [50, 60, 65, 70, 75, 80, 85, 90, 95].map((p) => `${p} %`),
    );
  });
});

describe("jointDensity(confidence)", () => {
  it("says what holds together and what it would take", () => {
    const { joint } = sampleConfidence();
    const { title } = jointDensity(sampleConfidence(), { document });
    expect(title).toMatch(
      /^The committed date and sum hold together in \d\d % of futures; to hold both in 80 % takes /,
    );
    expect(title).toContain(`in ${Math.round(joint.committed.both * 100)} % of futures`);
  });
  it("asks for no more where date and sum rise as one", () =>
    expect(jointDensity(of(hardConfidences(), "date and sum rise as one"), { document }).title).toBe(
      "The committed date and sum hold together in 80 % of futures",
    ));
});

describe("responseWorth(responses)", () => {
  it("names what is worth most", () =>
    expect(responseWorth(sampleResponses(), { document }).title).toBe(
      "“Pre-application meeting” is worth most: EUR 2,000 buys 4.1 working days, EUR 9,800 net",
    ));
  it.each([
    ["no responses", "The plan names no responses"],
    [
      "one response",
      "“Pre-application meeting” is worth its cost: EUR 2,000 buys 4.1 working days, EUR 9,800 net",
    ],
    ["one response, not worth it", "“Pre-application meeting” is not worth its cost: EUR 2,000 buys no day"],
    [
      "none worth it",
      "No response is worth its cost; nearest comes “Papers checked before filing”: EUR 1,000 buys no day",
    ],
  ])("%s", (name, title) => expect(responseWorth(of(hardResponses(), name), { document }).title).toBe(title));
  it("counts those it does not draw", () => {
    const { svg, table } = responseWorth(of(hardResponses(), "forty responses"), { document });
    expect(table.rows).toHaveLength(40);
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("and 28 more, none worth more than those above");
  });
});

describe("spending(forecast)", () => {
  it.each([
    ["no months", "The plan has no money by month"],
    ["no funds named", "Spending peaks in Jun 2027, at EUR 200,000 on average"],
    [
      "always covered",
      "Money released covers the spending to the end of every month in at least 80 % of futures",
    ],
    [
      "short from the first month",
      "Money runs short by the end of Feb 2027: what is released covers 2 % of futures, not 80 %",
    ],
  ])("%s", (name, title) => expect(spending(of(hardSpendings(), name), { document }).title).toBe(title));
  it("marks the first month that is not covered, and tables every month", () => {
    const { title, table } = spending(sampleSpending(), { document });
    expect(title).toBe(
      "Money runs short by the end of Oct 2027: what is released covers 68 % of futures, not 80 %",
    );
    expect(table.rows).toHaveLength(13);
  });
});

describe("futureBars(future)", () => {
  // The last task ends at the end of day 255, 13 October 2027; 255 x 5/7 - 140 = 42.1 working days.
  it("says what occurs and when it ends", () => {
    const { title, table, subtitle } = futureBars(sampleFuture(), { document });
    expect(title).toBe(
      "In this future 2 events of the register occur and the plan finishes on Wed 13 Oct 2027, 42 working days after the plan as written",
    );
    expect(subtitle).toMatch(/^Future 4,711 of 10,000: /);
    const happened = Object.fromEntries(table.rows.map((row) => [row[0], row[8]]));
    expect(happened["Roof and windows"]).toBe("Quay wall needs pinning");
    expect(happened["Builder chosen"]).toBe("waits for Ilse Marr");
    expect(happened["Shelving and desks"]).toBe(""); // the storm that would have struck it did not occur
  });
  it.each([
    [
      "as written to the day",
      "In this future 2 events of the register occur and the plan finishes as written, on Fri 13 Aug 2027",
    ],
    [
      "nothing occurs",
      "In this future nothing of the register occurs and the plan finishes on Wed 13 Oct 2027, 42 working days after the plan as written",
    ],
  ])("%s", (name, title) => expect(futureBars(of(hardFutures(), name), { document }).title).toBe(title));
});

describe("pathBars(paths), tasksAtStake(paths)", () => {
  it("tell the most frequent path from the next by a task of its own", () => {
    expect(pathBars(samplePaths(), { document }).title).toBe(
      "The path over “Roof and windows” sets the finish most often, in 42 % of futures; the first 5 together in 88 %",
    );
    expect(pathBars(of(hardPaths(), "a path within another"), { document }).title).toMatch(
      /^One path sets the finish most often, in 50 % of futures/,
    );
    expect(pathBars(of(hardPaths(), "one path in every future"), { document }).title).toBe(
      "One path sets the finish in every future",
    );
    expect(pathBars(of(hardPaths(), "no path"), { document }).title).toBe("No path sets the finish");
  });
  it("count what is left", () => {
    const { svg } = pathBars(samplePaths(), { document });
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words).toContain("26 other paths set it in the remaining 12 %"); // 1 - 0.884
  });
  it("rank tasks by days at stake, not by how often they are critical", () => {
    const { title, svg } = tasksAtStake(samplePaths(), { document });
    expect(title).toBe(
      "“Permit decided” has most at stake: 13 working days, were it never to take longer than written",
    );
    const words = Array.from(svg.querySelectorAll("text"), (each) => each.textContent);
    expect(words.indexOf("Permit decided")).toBeLessThan(words.indexOf("Doors open"));
    expect(tasksAtStake(of(hardPaths(), "nothing at stake"), { document }).title).toMatch(
      /^No single task has days/,
    );
    expect(tasksAtStake(of(hardPaths(), "no path"), { document }).title).toBe("No task is ever critical");
  });
});

describe("peopleWeeks(load)", () => {
  // 7.5 sin(k / 5) is most at k = 8: 7.4968; weeks with more than 5.05: k = 4 to 11, and 3.54 < k < 12.17 makes k = 12.
  it("names who is asked for too much, and how often", () =>
    expect(peopleWeeks(samplePeople(), { document }).title).toBe(
      "“Ilse Marr” is asked for too much in 9 weeks, most from 29 Mar 2027: 7.5 days, 2.5 too many; one other is overloaded too",
    ));
  it.each([
    ["nobody", "No task names a person"],
    ["nobody asked for anything", "No task names a person"],
    ["nobody overloaded", "Nobody is asked for more than there is of them"],
    ["one week", "“Ada Brandt” is asked for too much in 1 week, most from 1 Feb 2027: 6 days, 1.0 too many"],
  ])("%s", (name, title) => expect(peopleWeeks(of(hardPeople(), name), { document }).title).toBe(title));
});
