import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { findWho } from "../../apps/notebook/src/plan/findWho.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { cell } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { typeOver } from "./support/typeOver.ts";
import { violations } from "./support/violations.ts";

// Exactly one is accountable for a piece of work: the rule of the responsibility matrix, common practice, no source.
/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

describe("who is told what, and who answers for what", () => {
  const served = servedPage();

  it("names are found by their parts; somebody unknown is told", () => {
    const who = [
      { id: "ann", name: "Ann Quill" },
      { id: "bo", name: "Bo Marsh" },
    ];
    expect(findWho("marsh; Ann Quill", who)).toEqual({ ids: ["bo", "ann"] });
    expect(findWho("Eve", who)).toMatchObject({
      words: expect.stringMatching(/Nobody in this plan is called “Eve”/),
    });
  });

  it("is edited by keyboard, at both widths, and two who answer for one thing are refused in words", async () => {
    const { page, troubles, close } = await served.open();
    const text = page.locator("#plan-text");
    await fillPlan(page, smallPlan);
    const inPlan = async () => parse(await text.inputValue());
    const type = (label: string, words: string) => typeOver(page, label, words);
    const of = (what: string) => `stakeholder “Harbour office”: ${what}`;
    await cell(page, of("stance")).selectOption("resists");
    await type(of("told what"), "When the quay is closed");
    await type(of("how"), "A letter");
    await cell(page, of("how often")).selectOption("two-weeks");
    await type(of("from"), "8 Feb 2027");
    await cell(page, of("by whom")).selectOption("ann");
    const inform = {
      what: "When the quay is closed",
      how: "A letter",
      every: "two-weeks",
      from: "2027-02-08",
      owner: "ann",
    };
    await expect
      .poll(async () => (await inPlan()).stakeholders[0], slow)
      .toMatchObject({ stance: "resists", inform });
    expect(await text.inputValue()).toContain("# decides");

    const answers = "phase “Roof”: answers for it";
    await type(answers, "Ann Quill; Bo Marsh");
    const told = (words: RegExp) => page.locator("#people .message", { hasText: words }).waitFor();
    await told(/Exactly one answers for “Roof”: “Ann Quill” and “Bo Marsh” are 2/);
    expect(await cell(page, answers).getAttribute("aria-invalid")).toBe("true");
    expect((await inPlan()).phases[1].accountable).toBe("ann");
    expect(await violations(page, "#people")).toEqual([]);
    await type(answers, "");
    await told(/Exactly one answers for “Roof”. Write who/);
    await type(answers, "harbour");
    await expect.poll(async () => (await inPlan()).phases[1].accountable, slow).toBe("harbour");

    await page.setViewportSize({ width: 390, height: 900 });
    await page.locator(".by-task > summary").focus();
    await page.keyboard.press("Enter");
    await type("task “Lay the tiles”: is told after", "Bo Marsh; Harbour office");
    await expect.poll(async () => (await inPlan()).tasks[3].informed, slow).toEqual(["bo", "harbour"]);
    expect(await violations(page, "#people")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(troubles).toEqual([]);
    await close();
  });
});
