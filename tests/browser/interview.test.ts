import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fillPlan } from "./support/fillPlan.ts";
import { answerDate, type Notebook } from "./support/notebook.ts";
import { planText } from "./support/planText.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

// The order of the questions is the library's (packages/core/src/estimating/interview/questions.ts, with its sources):
// the basis first, the extremes before the likely value.
describe("an estimate is asked for on the page", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
    await fillPlan(notebook.page, smallPlan);
  });

  const text = () => planText(notebook.page);
  const question = (words: RegExp) =>
    notebook.page.locator(".interview .question", { hasText: words }).waitFor();
  const answer = async (words: string) => {
    await notebook.page.keyboard.press("Control+A");
    await notebook.page.keyboard.type(words);
    await notebook.page.keyboard.press("Enter");
  };
  const begin = async () => {
    const { page } = notebook;
    await page.getByRole("button", { name: "Begin", exact: true }).waitFor();
    await page.locator(".interview [data-first]").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
  };
  /** A sentence, and on to the next question by keys. */
  const sentence = async (words: string) => {
    const { page } = notebook;
    if (words !== "") await page.keyboard.type(words);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
  };

  it("one question after the other, by keys alone, and written as one step", async () => {
    const { page } = notebook;
    const before = await text();
    const date = await answerDate(page);
    await page.getByRole("button", { name: "Ask somebody for their estimate" }).focus();
    await page.keyboard.press("Enter");
    await begin();
    await question(/Why would you know about “Dig the trench”/);
    await sentence("Dug the last two");
    await question(/Which number of working days would only one of the ten exceed/);
    await answer("soon");
    await page.locator(".interview .message", { hasText: "not a plain number" }).waitFor();
    expect(await page.locator(".interview input.field").inputValue()).toBe("soon");
    await answer("9");
    await question(/the other end/);
    await answer("3");
    await question(/most likely/);
    await answer("12");
    await page.locator(".interview .message", { hasText: "lies between the ends" }).waitFor();
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await violations(page, ".interview")).toEqual([]);
    }
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.locator(".interview input.field").focus();
    await answer("4");
    await question(/do not agree with/);
    await sentence("");
    await question(/Is that what Ann Quill means/);
    // What was said is read back: the one-in-ten values are those that were asked for.
    await expect
      .poll(() => page.locator(".interview .figure-title").textContent())
      .toMatch(/less than 3.working.days, one in ten more than 9;/);
    expect(await violations(page, ".interview")).toEqual([]);
    await page.getByRole("button", { name: "Write it down" }).focus();
    await page.keyboard.press("Enter");
    await page.locator(".interview .rows-told", { hasText: "Ann Quill on “Dig the trench”" }).waitFor();
    const [dig] = parse(await text()).tasks;
    expect(dig.opinions).toMatchObject([
      { by: "ann", low: 3, likely: 4, high: 9, bounds: "p10-p90", basis: "Dug the last two" },
    ]);
    expect(dig.opinions[0].order).toEqual(["basis", "high", "low", "likely", "dissent"]);
    expect(dig.opinions[0].date).toMatch(/^\d{4}-\d\d-\d\d$/);
    // Talk moves no number: the task's estimate is settled on its own.
    expect(dig.duration).toEqual([3, 4, 8]);
    expect(await answerDate(page)).toBe(date);
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(text).toBe(before);
  });

  it("asks next about what they have not spoken of, goes back, and may settle it at once", async () => {
    const { page } = notebook;
    await page.getByLabel("About").selectOption({ label: "Raise the frame, working days" });
    await begin();
    await question(/“Raise the frame”/);
    await sentence("Three frames");
    await question(/exceed/);
    await answer("15");
    await question(/the other end/);
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await question(/exceed/);
    expect(await page.locator(".interview input.field").inputValue()).toBe("15");
    await answer("14");
    await answer("6");
    await answer("8");
    await question(/do not agree with/);
    await sentence("The ground is softer than the plan says");
    await page.getByLabel("It becomes the task's estimate too").check();
    await page.getByRole("button", { name: "Write it down" }).click();
    await page.locator(".interview .rows-told", { hasText: "It is the task's estimate now" }).waitFor();
    const frame = parse(await text()).tasks[2];
    expect(frame.duration).toEqual({ low: 6, likely: 8, high: 14, bounds: "p10-p90" });
    expect([frame.estimatedBy, frame.basis]).toEqual(["ann", "Three frames"]);
    expect(frame.opinions[0].dissent).toBe("The ground is softer than the plan says");
    await page.getByRole("button", { name: "Undo" }).click();
    await expect.poll(text).toBe(smallPlan);
    expect(notebook.troubles).toEqual([]);
  });
});
