import { describe, expect, it } from "vitest";
import { answerDate, answerSum, cell, dayOf, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const permit = (part: string) => `Building permit decided: ${part}, in working days`;

// What follows from an edit is common sense, no source: a task on the critical path that can take longer cannot
// bring the finish forward, and taking the edit back must give the very same answer.
describe("editing the plan by keyboard", () => {
  const served = servedPage();

  it("moves the date, keeps the old answer beside it, and undo brings it back", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const before = { date: await answerDate(page), sum: await answerSum(page) };
    const text = await page.locator("#plan-text").inputValue();

    await cell(page, permit("high")).focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("120");
    await page.keyboard.press("Enter");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);

    const after = await answerDate(page);
    expect(dayOf(after)).toBeGreaterThan(dayOf(before.date) + 7);
    const was = await page.locator(".aside-line").textContent();
    expect(was).toContain(`Was ${before.date.replace(/^\w+ (\d+ \w{3})\w* /, "$1 ")}`);
    expect(was).toContain(before.sum);
    // Both units, so that it can be held against the dates and added up with what Changes tells.
    const [, working = "", calendar] =
      /([\d.]+) working days \((\d+) calendar days\) later/.exec(was ?? "") ?? [];
    expect(Number(calendar)).toBe(dayOf(after) - dayOf(before.date));
    await page.locator("#changes").evaluate((section) => section.scrollIntoView());
    await page.locator("#changes .finding", { hasText: `: ${working} working days later` }).waitFor();

    // Only the number changed in the document: every comment and line stays.
    const edited = await page.locator("#plan-text").inputValue();
    const changed = edited.split("\n").filter((line, at) => line !== text.split("\n")[at]);
    expect(changed).toHaveLength(1);
    expect(changed[0]).toMatch(/120\]/);
    expect(edited.split("\n")).toHaveLength(text.split("\n").length);

    // The reader who listens hears it.
    const said = await page.locator("#announcement").textContent();
    expect(said).toContain(after.replace(/^\w+ (\d+ \w{3})\w* /, "$1 "));

    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await answerDate(page)).toBe(before.date);
    expect(await answerSum(page)).toBe(before.sum);
    expect(await page.locator("#plan-text").inputValue()).toBe(text);

    await page.keyboard.press("Control+Shift+Z");
    await settled(page);
    expect(await answerDate(page)).toBe(after);
    await page.keyboard.press("Control+Z");
    await page.keyboard.press("Control+Y");
    await settled(page);
    expect(await answerDate(page)).toBe(after);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });

  it("walks the table with arrows, Enter, Tab and Escape", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    const likely = cell(page, permit("likely"));
    await likely.focus();
    await likely.selectText();
    await page.keyboard.press("ArrowRight");
    expect(await focused()).toBe(permit("high"));
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowLeft");
    expect(await focused()).toBe(permit("low"));
    await page.keyboard.press("ArrowUp");
    expect(await focused()).toMatch(/: low, in working days$/);
    expect(await focused()).not.toBe(permit("low"));
    await page.keyboard.press("ArrowDown");
    expect(await focused()).toBe(permit("low"));
    await page.keyboard.press("Tab");
    expect(await focused()).toBe(permit("likely"));

    // Within the text the arrows move the caret.
    await page.keyboard.press("End");
    await page.keyboard.press("ArrowLeft");
    expect(await focused()).toBe(permit("likely"));

    await page.keyboard.press("Control+A");
    await page.keyboard.type("99");
    await page.keyboard.press("Escape");
    expect(await likely.inputValue()).toBe("25");
    await page.keyboard.press("Enter");
    expect(await focused()).toMatch(/: likely, in working days$/);
    expect(await page.locator(".aside-line u").count()).toBe(0);
    await notebook.close();
  });

  it("lets the newest of quick edits win", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const before = await answerDate(page);
    for (const high of ["200", "150", "45.5"]) {
      await cell(page, permit("high")).fill(high);
      await page.keyboard.press("Enter");
    }
    await settled(page);
    expect(await cell(page, permit("high")).inputValue()).toBe("45.5");
    expect(Math.abs(dayOf(await answerDate(page)) - dayOf(before))).toBeLessThanOrEqual(4);
    await notebook.close();
  });

  it("never writes an answer over what is being typed", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const high = cell(page, permit("high"));
    await high.fill("150");
    await page.keyboard.press("Enter");
    await high.focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("6");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(await high.inputValue()).toBe("6");
    await page.keyboard.type("0");
    await page.keyboard.press("Escape");
    expect(await high.inputValue()).toBe("150");
    await notebook.close();
  });

  it("stops a long computation when asked, says so, and takes it up again", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const before = await answerDate(page);
    const area = page.locator("#plan-text");
    const text = await area.inputValue();
    await area.fill(
      text
        .replace("currency: EUR", "currency: EUR\niterations: 400000")
        .replace("[20, 25, 45]", "[20, 25, 120]"),
    );
    const bar = page.locator(".bar-progress progress");
    await bar.waitFor();
    await page.getByRole("button", { name: "Stop", exact: true }).click();
    await bar.waitFor({ state: "detached" });
    expect(await page.locator(".answer .stale-mark").textContent()).toMatch(/You stopped the computation/);
    await page.getByRole("button", { name: "Compute", exact: true }).click();
    await bar.waitFor();
    expect(await page.locator(".answer .stale-mark").count()).toBe(0);

    // A newer plan does not wait for it.
    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await area.inputValue()).toBe(text);
    expect(await answerDate(page)).toBe(before);
    await notebook.close();
  });

  it("stops the re-runs behind the tornado when asked, and works them out on request", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const area = page.locator("#plan-text");
    await area.fill((await area.inputValue()).replace("currency: EUR", "currency: EUR\niterations: 120000"));
    const stop = page.getByRole("button", { name: "Stop re-running" });
    await page.locator(".stamp", { hasText: "120,000" }).waitFor();
    await stop.click();
    const start = page.getByRole("button", { name: "Work it out" });
    await start.waitFor();
    await start.click();
    await stop.waitFor();
    expect(await page.locator(".tornado-status progress").count()).toBe(1);
    await notebook.close();
  });

  it("takes a response into the plan with a tick, and a level from the commitment", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const before = await answerDate(page);
    await page.getByLabel(/Show the layout to the permit office before filing/).focus();
    await page.keyboard.press("Space");
    await page.locator(".aside-line u").first().waitFor();
    await settled(page);
    expect(dayOf(await answerDate(page))).toBeLessThan(dayOf(before));
    expect(await page.locator("#plan-text").inputValue()).toMatch(/probability: 0\.12\s+adopted: true/);

    const shown = await answerDate(page);
    await cell(page, "Level committed to, % of futures").fill("50");
    await page.keyboard.press("Enter");
    await page.locator(".sentence", { hasText: "50" }).waitFor();
    await settled(page);
    expect(dayOf(await answerDate(page))).toBeLessThan(dayOf(shown));
    await notebook.close();
  });
});
