/** What `confidence` and `people` say in the cases that one example does not show. */
import { describe, expect, it } from "vitest";
import { stopSentences } from "../../../apps/command/src/text/confidenceAnswer.ts";
import { confidenceText } from "../../../apps/command/src/text/confidenceText.ts";
import { peopleText } from "../../../apps/command/src/text/peopleText.ts";
import { peopleLoad, planFromData, whyConfidence } from "../../../packages/core/src/index.ts";

const page = { width: 80, strong: (text: string) => text };

function planOf(document: object) {
  const { plan, problems } = planFromData({ format: 1, title: "T", start: "2027-03-01", ...document });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
const task = {
  id: "work",
  name: "Work",
  duration: {
    outcomes: [
      { value: 10, chance: 0.55 },
      { value: 20, chance: 0.27 },
      { value: 30, chance: 0.18 },
    ],
  },
  costPerDay: 100,
};
function wordsOf(perWeek: number, confidence: number): string {
  const plan = planOf({ calendar: "every-day", tasks: task, lateness: { perWeek, once: 50 } });
  const answer = whyConfidence(plan, { confidence, seed: "reference" }).confidence;
  if (answer === undefined) throw new Error("no answer");
  return stopSentences(answer).join(" ");
}

// The plan of tests/reference/confidence, worked by hand there: where to stop is 50 % at 700 a week, 60 % at 2,800,
// 85 % at 10,000.
describe("where to stop, in words", () => {
  it("below the level committed to", () => {
    const text = wordsOf(700, 0.8);
    expect(text).toContain("By what lateness costs, 50 % would do, the lowest level looked at.");
    expect(text).toMatch(
      /The next step, to 60 %, holds EUR 1,000 more and avoids EUR 4[67]0 of expected lateness\./,
    );
    expect(text).toMatch(/All the steps up to 80 % hold EUR 1,000 more and avoid EUR 4[67]0\./);
    expect(text).toMatch(/where holding EUR 1 costs less than 0\.4[67], that step pays too\./);
  });

  it("at it", () => {
    expect(wordsOf(2800, 0.6)).toContain("By what lateness costs, 60 % is where to stop.");
  });

  it("above it", () => {
    expect(wordsOf(10_000, 0.5)).toMatch(
      /go on to 85 %: it holds EUR 2,000 more than 50 % and avoids EUR [\d,]+ of expected lateness\./,
    );
  });
});

describe("odd plans read well", () => {
  const odd = {
    "nothing uncertain": { tasks: { id: "a", name: "A", duration: 3, cost: 100 } },
    "only a milestone": { tasks: { id: "a", name: "A", milestone: true } },
    "money that is earned": {
      tasks: { id: "a", name: "A", duration: [1, 2, 5] },
      risks: {
        id: "r",
        name: "Grant",
        probability: 0.5,
        impacts: { tasks: "a", cost: -500 },
      },
    },
    "no money, lateness priced": {
      tasks: { id: "a", name: "A", duration: [1, 2, 5] },
      lateness: { after: "2027-03-02", perWeek: [10, 20, 30] },
    },
    "a name that turns the line": {
      title: "\u202eevil\nname",
      people: { id: "p", name: "\u202eP\u0007" },
      tasks: { id: "a", name: "\u202eA\n\tB", duration: [1, 2, 5], people: "p" },
    },
  };
  it.each(Object.entries(odd))("%s", (_, document) => {
    for (const iterations of [1, 2, 3000]) {
      const plan = planOf(document);
      const { confidence } = whyConfidence(plan, { iterations });
      const { people } = peopleLoad(plan, { iterations });
      if (confidence === undefined || people === undefined) throw new Error("no answer");
      const text = confidenceText(confidence, page, "PLAN") + peopleText(people, page, "PLAN");
      expect(text).not.toMatch(/NaN|undefined|Infinity|not known|\[object/);
      for (const letter of ["\u202e", "\u0007", "\t"]) expect(text).not.toContain(letter);
      for (const line of text.split("\n")) expect([...line].length, line).toBeLessThanOrEqual(80);
      expect(JSON.stringify([confidence, people])).not.toMatch(/null/);
    }
  });

  it("keep to a narrow page", () => {
    const plan = planOf({ tasks: task, lateness: { after: "2027-03-20", perWeek: 1000 } });
    const { confidence } = whyConfidence(plan, { iterations: 3000 });
    if (confidence === undefined) throw new Error("no answer");
    const narrow = confidenceText(confidence, { ...page, width: 60 }, "PLAN").split("\n");
    expect(narrow.filter((line) => [...line].length > 60)).toEqual([]);
  });

  it("every future the same: no level is named that promises less than was asked", () => {
    const { confidence } = whyConfidence(planOf(odd["nothing uncertain"]), { iterations: 3000 });
    if (confidence === undefined) throw new Error("no answer");
    const text = confidenceText(confidence, page, "PLAN").replace(/\s+/g, " ");
    expect(text).toContain(
      "For both together 8 times in 10, promise Wednesday 3 March 2027 and EUR 100: they hold in 100 %.",
    );
  });
});
