// What a brief may leave out and what it may not. Common practice, no source: whoever signs stands on the sheet; what is
// left out is counted; a condition that is met is said to be met; words do not contradict each other.
import { type Block, briefSheet, type Room, sheetMarkdown } from "@leeway/charts/brief";
import type { Brief } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { sentence } from "../../../packages/charts/src/brief/sheet/build.ts";
import { rooms } from "../../../packages/charts/src/brief/sheet/rooms.ts";
import { briefed, fullPlan, planOf } from "./plans.ts";

const { brief } = briefed(planOf(fullPlan), 200);
const withPlan = (from: string, to: string) => {
  if (!fullPlan.includes(from)) throw new Error(`not in the plan: ${from}`);
  return sheetMarkdown(briefSheet(briefed(planOf(fullPlan.replace(from, to)), 200).brief));
};
const section = (of: Brief, key: string, room?: Room) => {
  const found = briefSheet(of, room).sections.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no section ${key}`);
  return found;
};
const wordsOf = (blocks: readonly Block[]) => JSON.stringify(blocks);

describe("those who decide", () => {
  const [one] = brief.outcome.approvers;
  if (one === undefined) throw new Error("the plan has approvers");
  const many = (count: number): Brief => ({
    ...brief,
    outcome: {
      approvers: Array.from({ length: count }, (_, i) => ({ ...one, id: `p${i}`, name: `Person ${i}` })),
    },
  });

  it.each([1, 2, 3, 4])("all stand on the sheet where they are %i, however little room there is", (count) => {
    for (const room of rooms) {
      const words = wordsOf(section(many(count), "outcome", room).blocks);
      for (let i = 0; i < count; i++) expect(words).toContain(`Person ${i}`);
      expect(words).not.toContain("more approver");
    }
  });

  it("are told where all of them stand, where they are too many", () => {
    const least = rooms[rooms.length - 1] as Room;
    const words = wordsOf(section(many(60), "outcome", least).blocks);
    expect(words).toContain(`and ${60 - least.approvers} more approvers`);
    expect(words).toContain("leeway approvals");
  });
});

describe("responses that are left out", () => {
  it("are counted with what they cost together", () => {
    const [response] = brief.responses.worthBuying;
    if (response === undefined) throw new Error("the plan has a response worth buying");
    const five = [10, 20, 400, 500, 600].map((cost, i) => ({ ...response, id: `r${i}`, cost }));
    const room = { ...(rooms[0] as Room), responses: 2 };
    const of = { ...brief, responses: { ...brief.responses, worthBuying: five } };
    expect(wordsOf(section(of, "responses", room).blocks)).toContain("and 3 more, EUR 1,500 together");
  });
});

describe("objections", () => {
  it("that are all settled are told as such, and none of them under a heading of open ones", () => {
    const said = withPlan(
      "text: It is too dear, state: open",
      "text: It is too dear, answer: It pays, state: answered",
    );
    expect(said).not.toContain("Open objections");
    expect(said).toContain("## Objections: none open, 2 settled");
    expect(said).toContain("**Bo Reed:** It is too dear. Answered: It pays.");
  });
  it("that somebody accepted are told with their name, the answer and the evidence, before those only answered", () => {
    const said = withPlan(
      "text: It is too dear, state: open",
      "text: It is too dear, answer: It pays, evidence: The ledger of 2026, state: accepted, acceptedBy: cy",
    );
    expect(said).toContain(
      "**Bo Reed:** It is too dear. Accepted by Cy Marsh: It pays. Evidence: The ledger of 2026.",
    );
    expect(said.indexOf("**Bo Reed:**")).toBeLessThan(said.indexOf("**Cy Marsh:** It is too late"));
    expect(withPlan("text: It is too dear, state: open", "text: It is too dear, state: accepted")).toContain(
      "It is too dear. Accepted; nobody is named.",
    );
  });
  it("carry who accepted and who reopened them in the document, with names", () => {
    const text = fullPlan.replace(
      "text: It is too dear, state: open",
      "text: It is too dear, state: accepted, acceptedBy: cy, reopenedBy: ada",
    );
    const found = briefed(planOf(text), 100).brief.objections.settled.find(({ id }) => id === "dear");
    expect(found?.acceptedBy).toEqual({ id: "cy", name: "Cy Marsh", role: "Safety officer" });
    expect(found?.reopenedBy?.name).toBe("Ada Finch");
  });
  it("that are open are counted apart from those that are settled", () => {
    expect(section(brief, "objections").title).toBe("Objections: 1 open, 1 settled");
  });
});

describe("conditions of an approval", () => {
  const on = (more: string) =>
    withPlan("conditions: A harness is worn }", `conditions: A harness is worn${more} }`);
  it("are told with the day by which they are to be met, and with the day on which they were", () => {
    expect(on(", conditionsBy: 2027-02-05")).toContain(
      "subject to: A harness is worn (to be met by 5 Feb 2027)",
    );
    expect(on(", conditionsBy: 2027-02-05, conditionsMet: 2027-02-03")).toContain(
      "subject to: A harness is worn (met on 3 Feb 2027)",
    );
  });
  it("are still told to be met where there is little room for their words", () => {
    const text = fullPlan.replace(
      "conditions: A harness is worn }",
      "conditions: A harness is worn by everybody who goes up to the roof, conditionsMet: 2027-02-03 }",
    );
    const { brief: found } = briefed(planOf(text), 100);
    for (const room of rooms)
      expect(wordsOf(section(found, "outcome", room).blocks)).toContain("(met on 3 Feb 2027)");
    expect(found.outcome.approvers.at(-1)?.conditionsMet).toBe("2027-02-03");
  });
  it("are told with who signed in their place", () => {
    expect(on(", by: bo")).toContain("decided on 18 Jan 2027 by Bo Reed in their place");
  });
});

describe("conditions under which the plan comes back", () => {
  const agreed = (trigger: string) => withPlan("people:\n", `returnTriggers: [${trigger}]\npeople:\n`);
  const already = "already so at this forecast";
  it.each([
    ["a finish that is later", "{ id: t, finishLaterThan: 2027-02-02 }"],
    ["a sum that is above", "{ id: t, costAbove: 500 }"],
  ])("say that they are met: %s", (_what, trigger) => {
    expect(agreed(trigger)).toContain(already);
  });
  it.each([
    ["a finish that is not later", "{ id: t, finishLaterThan: 2028-02-02 }"],
    ["a sum that is not above", "{ id: t, costAbove: 50000 }"],
    ["a sign not seen", "{ id: t, signpost: dry-wood }"],
    ["a chance, which is measured against what is signed", "{ id: t, chanceOfDateBelow: 0.1 }"],
  ])("do not say so of %s", (_what, trigger) => {
    expect(agreed(trigger)).not.toContain(already);
  });
  it("say of a sign that it was seen", () => {
    const text = fullPlan
      .replace("signpost: A knife goes in", "signpost: A knife goes in\n    tripped: 2027-02-02")
      .replace("start: 2027-02-01", "start: 2027-02-01\nstatusDate: 2027-02-02")
      .replace("people:\n", "returnTriggers: [{ id: t, signpost: dry-wood }]\npeople:\n");
    const { brief: seen } = briefed(planOf(text), 200);
    expect(wordsOf(section(seen, "back").blocks)).toContain("already so");
  });
  it("name the date and the sum that are signed", () => {
    const said = agreed("{ id: t, chanceOfDateBelow: 0.1 }, { id: u, chanceOfBudgetBelow: 0.2 }");
    expect(said).toContain("the chance of finishing by 18 Feb 2027, the date you sign, falls below 10 %");
    expect(said).toMatch(/the chance of keeping within EUR 2,\d+, the sum you sign, falls below 20 %/);
  });
  it("are all told on one page where five are agreed, in short before any is left out", () => {
    const five = [1, 2, 3, 4, 5].map((k) => `{ id: t${k}, name: Name ${k}, costAbove: ${k}0000 }`).join(", ");
    const { brief: found } = briefed(
      planOf(fullPlan.replace("people:\n", `returnTriggers: [${five}]\npeople:\n`)),
      100,
    );
    for (const room of rooms.slice(0, -3)) {
      const words = wordsOf(section(found, "back", room).blocks);
      for (const k of [1, 2, 3, 4, 5]) expect(words).toContain(`above EUR ${k}0,000`);
      expect(words.includes("Name 1")).toBe(room.unnamed !== true);
    }
  });
  it("stand first where they are met and not all have room", () => {
    const text = fullPlan.replace(
      "people:\n",
      "returnTriggers: [{ id: a, costAbove: 50000 }, { id: b, finishLaterThan: 2027-02-02 }]\npeople:\n",
    );
    const { brief: two } = briefed(planOf(text), 200);
    const room = { ...(rooms[0] as Room), triggers: 1 };
    expect(wordsOf(section(two, "back", room).blocks)).toContain(already);
  });
});

describe("a plan that starts on a day off", () => {
  // 31 January 2027 is a Sunday, on which nobody works here.
  it("is not said to begin its work on it", () => {
    const said = withPlan("start: 2027-02-01", "start: 2027-01-31").replace(/\s+/g, " ");
    expect(said).not.toContain("work begins Sun");
    const open = fullPlan.replace("start: 2027-02-01", "start: 2027-01-31").replace("  by: 2027-01-25\n", "");
    const words = wordsOf(section(briefed(planOf(open), 200).brief, "decision").blocks);
    expect(words).toContain("the plan starts Sun 31 Jan 2027");
  });
});

describe("words that are cut", () => {
  const rule =
    "The lead releases up to 5,000 at a time for a risk that has occurred, and tells the director; more than that she releases.";
  it.each([
    [200, rule],
    [64, "The lead releases up to 5,000 at a time for a risk that has occurred …"],
    [90, "The lead releases up to 5,000 at a time for a risk that has occurred, and tells the director …"],
    [40, "The lead releases up to 5,000 at a time…"],
  ])("end with a whole clause where one ends in the second half of %i characters", (most, words) => {
    expect(sentence(rule, most)).toBe(words);
  });
  it("keep the mark that a sentence ends with", () => {
    expect(sentence("No task is padded. The weeks are what the ranges add up to.", 24)).toBe(
      "No task is padded. …",
    );
  });
  it("cut a role of somebody who decides at a clause", () => {
    const [one] = brief.outcome.approvers;
    if (one === undefined) throw new Error("the plan has approvers");
    const role = "Safety officer, two days a week, on leave in March";
    const words = wordsOf(
      section({ ...brief, outcome: { approvers: [{ ...one, role }] } }, "outcome").blocks,
    );
    expect(words).toContain(`${one.name}, Safety officer, two days a week …`);
  });
});

describe("the table of the commitment", () => {
  it("says of what was asked for that it was given, where sampling puts limits to the rest", () => {
    const words = wordsOf(section(brief, "commitment").blocks);
    expect(words).toContain('"as given"');
    expect(words).not.toContain('"stated"');
  });
});
