import {
  confidenceSteps,
  futureBars,
  jointDensity,
  pathBars,
  peopleWeeks,
  responseWorth,
  spending,
  tasksAtStake,
} from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { newDocument } from "../newDocument.ts";
import { hardConfidences } from "./hardConfidences.ts";
import { sampleConfidence } from "./sampleConfidence.ts";
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
  it("names no level below the chance that the pair of equal levels holds", () => {
    // As where every future is the same: the first of them is at the level of all.
    const answer = sampleConfidence();
    const equal = { ...answer.joint.equal, level: 0.0001, both: 1 };
    const { summary } = jointDensity({ ...answer, joint: { ...answer.joint, equal } }, { document });
    expect(summary).toContain("on it both hold in 100 % at");
    expect(summary).not.toContain("under 1 %");
  });

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
    expect(words).toContain("26 other paths set it in the rest of futures, 12 %"); // 1 - 0.884
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
