import { approvalsState, readPlan, type Signature, signPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import {
  conditionsMet,
  type DecisionCells,
  recordDecision,
} from "../../apps/notebook/src/plan/recordDecision.ts";
import { kindOf, limitText, readLimit } from "../../apps/notebook/src/plan/triggerEntry.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

const plan = smallPlan
  .replace(
    "{ id: harbour, name: Harbour office }",
    "{ id: harbour, name: Harbour office, approvesUpTo: 9500, delegate: ann }",
  )
  .replace(
    "tasks:\n",
    "objections: { id: padding, text: It is padded, who: bo, date: 2027-01-02 }\ntasks:\n",
  );

function readOf(text: string) {
  const { plan: read, problems } = readPlan(text);
  if (read === undefined) throw new Error(JSON.stringify(problems));
  return { read, stated: parse(text) as unknown };
}

// What a sign-off has to keep is the trade's: an approval is of one version, a limit counts, an objection is answered or
// accepted by name (common practice, no source). The command's own way of signing is held beside the page's: another
// code that writes the same document.
describe("a decision recorded on the page", () => {
  const cells: DecisionCells = {
    who: "harbour",
    decision: "approve-subject-to",
    date: "20 Jan 2027",
    conditions: "The slipway stays open",
    conditionsBy: "2027-03-01",
    by: "",
    accepts: ["padding"],
  };
  const asked = { sum: 9000, errors: [], today: "2027-01-19" };
  const signature: Signature = {
    who: "harbour",
    decision: "approve-subject-to",
    date: "2027-01-20",
    conditions: "The slipway stays open",
    conditionsBy: "2027-03-01",
    accepts: ["padding"],
    sum: 9000,
  };

  it.each([
    ["nobody was asked", plan],
    ["one was asked, without a list", plan.replace("tasks:\n", "approvals: { who: harbour }\ntasks:\n")],
    [
      "they decided before, on other conditions",
      plan.replace(
        "tasks:\n",
        "approvals:\n  - { who: bo }\n  - { who: harbour, decision: approve-subject-to, date: 2027-01-05, conditions: None, conditionsBy: 2027-02-01, conditionsMet: 2027-01-06, note: by letter }\ntasks:\n",
      ),
    ],
  ])("makes the document that the command makes: %s", (_, text) => {
    const { read, stated } = readOf(text);
    const made = recordDecision(read, stated, cells, asked);
    if ("refusals" in made) throw new Error(JSON.stringify(made));
    const edited = applyEdits(text, made.edits);
    expect(edited.problems).toEqual([]);
    const theirs = signPlan(text, read, signature);
    expect(theirs.refusals).toEqual([]);
    // A single entry may stand without a list.
    const listed = (document: { approvals?: unknown; objections?: unknown }) => ({
      ...document,
      approvals: [document.approvals].flat(),
      objections: [document.objections].flat(),
    });
    expect(listed(parse(edited.text))).toEqual(listed(parse(theirs.text ?? "")));
    const state = approvalsState(readOf(edited.text).read, 9000, "2027-02-01");
    expect(state.approvers.find(({ who }) => who === "harbour")?.state).toBe("covers");
    expect(state.open).toEqual([]);
    const after = readOf(edited.text);
    const met = applyEdits(edited.text, conditionsMet(after.read, after.stated, "harbour", "2027-02-03"));
    expect([parse(met.text).approvals].flat().at(-1)).toMatchObject({ conditionsMet: "2027-02-03" });
  });

  it("is refused for all reasons at once, and nothing is written", () => {
    const { read, stated } = readOf(plan);
    const refused = (change: Partial<DecisionCells>, sum = 9000) => {
      const made = recordDecision(read, stated, { ...cells, ...change }, { ...asked, sum });
      return "refusals" in made ? made.refusals.map(({ rule }) => rule).join(" ") : "";
    };
    expect(refused({ decision: "", date: "03/04/2027", conditionsBy: "soon" })).toMatch(
      /Nothing is decided.*day of the decision.*conditions are met/,
    );
    expect(refused({ date: "03/04/2027" }, 12_000)).toMatch(/day of the decision.*may approve up to/);
    expect(refused({ accepts: [] }, 12_000)).toMatch(/may approve up to EUR 9,500.*“?It is padded/);
    expect(refused({ conditions: " " })).toContain("subject to conditions");
    expect(refused({ by: "bo" })).toContain("does not sign in place of");
    expect(refused({ by: "ann" })).toBe("");
    expect(refused({ decision: "rework", conditions: "", conditionsBy: "", accepts: [] }, 12_000)).toBe("");
  });
});

// The conditions are the published format's; a limit is read as it is shown.
describe("what brings a plan back", () => {
  it.each([
    ["finishLaterThan", "1 May 2027", "2027-05-01"],
    ["costAbove", "9,500", 9500],
    ["chanceOfDateBelow", "65", 0.65],
    ["chanceOfBudgetBelow", "62.5", 0.625],
    ["contingencyCoverBelow", "1", 1],
    ["signpost", "The ground is dry", "dry"],
  ] as const)("%s: %s", (kind, text, value) => {
    const { read } = readOf(
      plan.replace(
        "tasks:\n",
        "assumptions: { id: dry, statement: The ground is dry, chanceWrong: 0.1 }\ntasks:\n",
      ),
    );
    expect(readLimit(kind, text, read)).toEqual({ value });
    const trigger = { id: "one", [kind]: value };
    expect(kindOf(trigger)).toBe(kind);
    expect(limitText(trigger, read)).toBe(text);
    expect(readLimit(kind, "?!", read)).toHaveProperty("words");
  });
});

describe("the sign-off, by keyboard", () => {
  const served = servedPage();

  it.each([1280, 390])(
    "asks, records, answers and logs, and the approval covers that plan alone: %i px",
    async (width) => {
      const { page, troubles, close } = await served.open();
      await page.setViewportSize({ width, height: 900 });
      await fillPlan(page, plan);
      const text = page.locator("#plan-text");
      const written = async () => parse(await text.inputValue());
      const section = page.locator("#sign-off");
      const stands = section.locator(".finding").first();
      const add = (words: string) => section.getByRole("button", { name: words }).press("Enter");
      await section.scrollIntoViewIfNeeded();

      await typeOver(page, "The decision: in one sentence", "Build it this spring");
      await add("Ask somebody to decide");
      await page.keyboard.type("nobody of ours");
      await page.keyboard.press("Enter");
      await section.locator(".message", { hasText: "Nobody in this plan is called" }).waitFor();
      await cell(page, "New approver: who").fill("harbour");
      await page.keyboard.press("Enter");
      await expect
        .poll(async () => (await written()).approvals, slow)
        .toEqual([{ who: "harbour", decision: "pending" }]);
      await page.keyboard.press("Escape");
      await expect.poll(() => stands.textContent(), slow).toBe("Waiting for Harbour office.");
      expect((await written()).decision).toEqual({ ask: "Build it this spring" });

      // All that is in the way is said at once; nothing is recorded, nothing typed is lost.
      const form = section.locator("form.decision");
      await section.getByRole("button", { name: /^Record a decision\s*of Harbour office/ }).press("Enter");
      await form.waitFor();
      expect(await violations(page, "#sign-off")).toEqual([]);
      await form.getByLabel("Decision").selectOption("approve-subject-to");
      await form.getByLabel("On", { exact: true }).fill("20 Jan 2027");
      await form.getByRole("button", { name: "Record it" }).press("Enter");
      await form.locator(".message").nth(1).waitFor();
      const refused = (await form.locator(".message").allTextContents()).join(" ");
      expect(refused).toMatch(/they must be said/);
      expect(refused).toMatch(/It is padded.* is open/);
      expect((await written()).approvals).toEqual([{ who: "harbour", decision: "pending" }]);
      expect(await violations(page, "#sign-off")).toEqual([]);

      // Nor is anything while an entry waits: it would be left out of what is decided on.
      await typeOver(page, "Dig the trench: likely, in working days", "some");
      await page.locator("#work .message", { hasText: "“some” is not a number" }).waitFor();
      await form.getByRole("button", { name: "Record it" }).press("Enter");
      await form.locator(".message", { hasText: "The answer is not up to date" }).waitFor(slow);
      await cell(page, "Dig the trench: likely, in working days").press("Escape");
      await page.locator("#work .message").waitFor({ state: "detached" });

      await form.getByLabel("Conditions, or what to change").fill("The slipway stays open");
      await form.getByLabel("It is padded").check();
      await form.getByRole("button", { name: "Record it" }).press("Enter");
      await expect
        .poll(async () => (await written()).approvals, slow)
        .toMatchObject([{ who: "harbour", decision: "approve-subject-to", date: "2027-01-20" }]);
      expect((await written()).objections).toMatchObject({ state: "accepted", acceptedBy: "harbour" });
      await expect
        .poll(() => stands.textContent(), slow)
        .toContain("Approved by all as the plan is now, on conditions");
      // The focus is where it came from, and the version can be compared with.
      expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Record a decision");
      await page.locator("#changes .versions", { hasText: "Approved by Harbour office" }).waitFor(slow);
      await section.getByRole("button", { name: /^The conditions are met/ }).press("Enter");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Record a decision");
      await expect.poll(() => stands.textContent(), slow).toContain("Approved by all, as the plan is now.");

      // What is agreed is of one version.
      await typeOver(page, "Dig the trench: high, in working days", "20");
      await expect
        .poll(() => stands.textContent(), slow)
        .toContain("The plan has changed since Harbour office approved it");
      // It changes by decision: until that is logged nobody approves it again, and the way out is the page's own.
      const again = async (): Promise<void> => {
        await section.getByRole("button", { name: /^Record a decision\s*of Harbour office/ }).press("Enter");
        await form.getByLabel("Decision").selectOption("approve");
        await form.getByLabel("On", { exact: true }).fill("22 Jan 2027");
        await form.getByRole("button", { name: "Record it" }).press("Enter");
      };
      const unlogged = section.locator(".findings li", {
        hasText: "differs from what Harbour office approved",
      });
      await unlogged.waitFor({ state: "attached", ...slow });
      await again();
      const told = form.locator(".message", { hasText: "differs from what Harbour office approved" });
      await told.waitFor();
      expect(await told.textContent()).toMatch(/Log it under\sSign-off, in “Log of changes”/);
      await form.press("Escape");
      await add("Add a change");
      await page.keyboard.type("The trench may take a month");
      await page.keyboard.press("Tab");
      await page.keyboard.type("Rock was found");
      await page.keyboard.press("Tab");
      await page.keyboard.type("ann");
      await page.keyboard.press("Tab");
      await page.keyboard.type("harbour");
      await page.keyboard.press("Enter");
      await expect
        .poll(async () => (await written()).changes, slow)
        .toMatchObject([
          { what: "The trench may take a month", why: "Rock was found", who: "ann", approvedBy: "harbour" },
        ]);
      await page.keyboard.press("Escape");
      await typeOver(page, "change “The trench may take a month”: on", "21 Jan 2027");
      await unlogged.waitFor({ state: "detached", ...slow });
      await again();
      await expect
        .poll(async () => (await written()).approvals, slow)
        .toMatchObject([{ decision: "approve", date: "2027-01-22" }]);
      await expect.poll(() => stands.textContent(), slow).toContain("Approved by all, as the plan is now.");

      await add("Add an objection");
      await page.keyboard.type("The floor is too thin");
      await page.keyboard.press("Enter");
      await expect.poll(async () => (await written()).objections.length, slow).toBe(2);
      await page.keyboard.press("Escape");
      const state = section.getByLabel("objection “The floor is too thin”: state");
      await state.selectOption("answered");
      await section.locator(".message", { hasText: "There is no answer yet" }).waitFor();
      await typeOver(page, "objection “The floor is too thin”: answer", "It is 20 cm thick");
      await expect
        .poll(async () => (await written()).objections[1], slow)
        .toMatchObject({ text: "The floor is too thin", answer: "It is 20 cm thick", state: "answered" });
      await state.selectOption("accepted bo");
      await expect
        .poll(async () => (await written()).objections[1], slow)
        .toMatchObject({ state: "accepted", acceptedBy: "bo" });

      await add("Add a return trigger");
      await cell(page, "New return trigger: it comes back when").selectOption("finishLaterThan");
      await cell(page, "New return trigger: limit").fill("never");
      await page.keyboard.press("Enter");
      await section.locator(".message", { hasText: "is not a date" }).waitFor();
      await cell(page, "New return trigger: limit").fill("30 Apr 2027");
      await page.keyboard.press("Enter");
      await expect
        .poll(async () => (await written()).returnTriggers, slow)
        .toMatchObject([{ finishLaterThan: "2027-04-30" }]);
      await page.keyboard.press("Escape");
      await section.locator(".quiet", { hasText: /^It is .*\s2027/ }).waitFor(slow);

      expect(await violations(page, "#sign-off")).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect(readPlan(await text.inputValue()).problems).toEqual([]);
      expect(troubles).toEqual([]);
      await close();
    },
  );
});
