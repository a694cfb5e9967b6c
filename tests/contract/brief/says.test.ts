// What a brief says and what it says to be missing. Source of the parts: the published description of the one-page brief
// (decision and deadline; recommendation with "do nothing"; commitment; benefit against cost; scope; five drivers;
// responses; assumptions with signposts; open objections; return triggers; run stamp; outcome).
import { briefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { brief } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { briefed, fullPlan, planOf, today } from "./plans.ts";

const full = planOf(fullPlan);
const markdown = (text: string) => sheetMarkdown(briefSheet(briefed(planOf(text), 200).brief));

describe("a plan that says everything", () => {
  const said = markdown(fullPlan);
  it.each([
    ["the decision in the plan's words", "**Have the shed closed before the spring rain.**"],
    ["its deadline", "Decide by Mon 25 Jan 2027."],
    ["the recommendation", "**Recommended:** Approve, and hire the tarpaulin."],
    ["what doing nothing means", "**Doing nothing:** The tools rust."],
    ["what doing nothing forgoes", "EUR 120 a month; 2 quiet nights a week"],
    ["an alternative", "**A tarpaulin alone:** It lasts one winter."],
    ["the holder", "held by Ada Finch (Carpenter)"],
    ["the reserve apart", "**Reserve:** EUR 300, apart; no figure here spends it."],
    ["the cost of delay", "**EUR 700 a week** after 19 Feb 2027, and EUR 350 once when late at all"],
    ["scope that can be left out", "**Can be left out:** A gutter. Lost then: The path stays wet."],
    ["scope that is out", "**Out:** The floor."],
    ["a response with its owner and day", "Ada Finch, by 1 Feb 2027."],
    ["how likely an assumption is wrong", "20 % likely to be wrong: "],
    ["a signpost with its owner and review", "Signpost: A knife goes in. Ada Finch, review 2 Feb 2027."],
    ["an open objection", "## Objections: 1 open, 1 settled"],
    ["the words of it", "**Bo Reed:** It is too dear. Open, no answer yet."],
    ["triggers that are only proposed", "## We come back to you when (proposed)"],
    ["a limit that is too low", "pending; may approve up to EUR 2,000, not enough"],
    ["what an approval is subject to", "subject to: A harness is worn"],
    ["that a decision is bound to no version", "decided on 18 Jan 2027, bound to no version"],
    ["the caution", "your own rules and competent people decide"],
    ["the run", "Run: seed leeway, 200 futures, drawn evenly (Latin hypercube)"],
  ])("tells %s", (_what, words) => {
    expect(said).toContain(words);
  });

  it("ticks the box of a decision that was taken, and no other", () => {
    const row = said.split("\n").find((line) => line.startsWith("| Cy Marsh")) ?? "";
    expect(row.match(/[☐☒]/g)).toEqual(["☐", "☒", "☐"]);
  });
});

describe("the least plan", () => {
  const said = markdown("format: 1\ntitle: T\nstart: 2027-01-04\ntasks: [{ id: a, name: A, duration: 3 }]\n");
  it.each([
    ["no decision", "The plan states no decision: this one is made from its commitment."],
    ["no recommendation", "the plan states no recommendation"],
    ["no benefit", "no benefit is stated"],
    ["no price of lateness", "the plan does not say what finishing late costs"],
    ["no scope", "The plan states no scope"],
    ["nothing uncertain", "Nothing in the plan is uncertain"],
    ["no response", "The plan states no response"],
    ["no assumption", "The plan states no assumption."],
    ["no objection", "No objection is recorded."],
    ["no approver", "The plan names no approver."],
    ["no holder", "no holder is stated"],
  ])("has it said that there is %s", (_what, words) => {
    expect(said).toContain(words);
  });

  // Three working days from Monday 4 January 2027 end with Wednesday 6.
  it("still says what to commit to", () => {
    expect(said).toContain("Approve committing to finishing by Wednesday 6 January 2027.");
  });

  it("speaks of no money where the plan has none", () => {
    expect(said).not.toMatch(/EUR|Reserve|Sum/);
  });
});

describe("signatures and triggers", () => {
  it("knows a signature of this plan from that of another version", () => {
    const hash = full.approvalSha256;
    const signed = (bound: string) =>
      markdown(
        fullPlan.replace(
          "conditions: A harness is worn }",
          `conditions: A harness is worn, plan: "${bound}" }`,
        ),
      );
    expect(signed(hash)).toContain("decided on 18 Jan 2027, this plan");
    expect(signed("0".repeat(64))).toContain("decided on 18 Jan 2027, another version of the plan");
  });

  it("reads triggers that the plan has agreed on in place of proposals", () => {
    const agreed = `${fullPlan}returnTriggers: [{ id: slipping, name: It slips, chanceOfDateBelow: 0.6 }, { id: soft, signpost: dry-wood }]\n`;
    const { triggers } = briefed(planOf(agreed), 100).brief;
    expect(triggers.map(({ id, proposed }) => [id, proposed])).toEqual([
      ["slipping", false],
      ["soft", false],
    ]);
    expect(markdown(agreed)).toContain("this is seen: A knife goes in");
  });

  it("proposes the chance of the date, of the sum, contingency, and signposts that bear load", () => {
    const { triggers } = briefed(full, 100).brief;
    expect(triggers).toEqual([
      { proposed: true, chanceOfDateBelow: 0.7 },
      { proposed: true, chanceOfBudgetBelow: 0.7 },
      { proposed: true, contingencyCoverBelow: 1 },
      {
        proposed: true,
        signpost: { assumption: "dry-wood", statement: "The rafters are dry", text: "A knife goes in" },
      },
    ]);
  });
});

describe("problems", () => {
  it("are values: an unknown id of a scenario, a task beyond the calendar", () => {
    const scenario = brief(full, { today, iterations: 50, without: ["nobody"] });
    expect(scenario.brief).toBeUndefined();
    expect(scenario.problems.map(({ code }) => code)).toEqual(["unknown-id"]);
    const endless = planOf(fullPlan.replace("duration: [4, 5, 9]", "duration: [4, 5, 90000]"));
    expect(brief(endless, { today, iterations: 50 }).problems.length).toBeGreaterThan(0);
  });
});
