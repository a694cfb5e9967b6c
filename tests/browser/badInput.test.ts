import { describe, expect, it } from "vitest";
import { answerDate, answerSum, cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

// WCAG 2.2, success criteria 3.3.1 (an error is described in text and its field identified) and 3.3.3 (a
// suggestion is made); recalled from memory.
describe("input that cannot be right", () => {
  const served = servedPage();

  it.each([
    ["not a number", "high", "soon", /“soon” is not a number.*such as/],
    ["a decimal comma", "high", "45,5", /45\.5/],
    ["out of order", "low", "60", /out of order/],
    ["nothing where something is needed", "likely", "", /likely/],
    ["half a range", "low", "", /both a low and a high/],
  ])(
    "says what is wrong with %s at its field and keeps the old answer",
    async (_name, part, typed, words) => {
      const notebook = await served.open();
      const { page } = notebook;
      const before = { date: await answerDate(page), sum: await answerSum(page) };
      const text = await page.locator("#plan-text").inputValue();
      const input = cell(page, `Building permit decided: ${part}, in working days`);
      await input.fill(typed);
      await input.press("Enter");

      const message = page.locator(".message");
      await message.waitFor();
      expect(await message.textContent()).toMatch(words);
      expect(await input.getAttribute("aria-invalid")).toBe("true");
      expect(await input.getAttribute("aria-describedby")).toBe(await message.getAttribute("id"));
      expect(await input.inputValue()).toBe(typed);
      expect(await answerDate(page)).toBe(before.date);
      expect(await answerSum(page)).toBe(before.sum);
      expect(await page.locator(".answer .stale-mark").textContent()).toMatch(/leaves out 1 entry/);
      expect(await page.locator(".outline a", { hasText: "Work" }).textContent()).toContain("1");
      expect(await page.locator("#plan-text").inputValue()).toBe(text);

      await input.focus();
      await page.keyboard.press("Escape");
      await message.waitFor({ state: "detached" });
      expect(await page.locator(".answer .stale-mark").count()).toBe(0);
      expect(notebook.troubles).toEqual([]);
      await notebook.close();
    },
  );

  it("refuses a link that would close a loop, and one to a task that is not there", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const waits = cell(page, "Lease terms agreed: waits for these tasks, by name or id");
    await waits.fill("lease-signed");
    await waits.press("Enter");
    expect(await page.locator(".message").textContent()).toMatch(/loop/i);
    await waits.fill("lease-sined");
    await waits.press("Enter");
    await page.locator(".message", { hasText: "lease-sined" }).waitFor();
    expect(await page.locator(".message").textContent()).toMatch(
      /No task has the name or id “lease-sined”.*“Landlord consents, lease signed”/,
    );
    await notebook.close();
  });

  it("lists what is wrong with the text by line, keeps the answer, and undo puts it right", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const before = await answerDate(page);
    const area = page.locator("#plan-text");
    const text = await area.inputValue();
    await area.fill(text.replace("confidence: 0.8", "confidence: 8"));
    await page.locator(".problems li.error").first().waitFor();
    const line = text.split("\n").findIndex((one) => one.includes("confidence: 0.8")) + 1;
    expect(await page.locator(".problems li.error").first().textContent()).toContain(`line ${line}`);
    await settled(page);
    expect(await answerDate(page)).toBe(before);
    expect(await page.locator(".answer .stale-mark").textContent()).toMatch(/last good answer/);
    expect(
      await cell(page, "Building permit decided: high, in working days").getAttribute("readonly"),
    ).not.toBeNull();

    await page.locator(".line-button").first().click();
    const picked = await area.evaluate((element) =>
      element instanceof HTMLTextAreaElement
        ? element.value.slice(element.selectionStart, element.selectionEnd)
        : "",
    );
    expect(picked).toContain("confidence: 8");

    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await area.inputValue()).toBe(text);
    expect(await page.locator(".answer .stale-mark").count()).toBe(0);
    await notebook.close();
  });

  it("shows text from a plan as text, never as markup", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const name = page.locator("#task-lease-terms .name .field");
    await name.fill('<img src=x onerror="document.title=1"><b>terms</b>');
    await name.press("Enter");
    await settled(page);
    expect(await name.inputValue()).toContain("<b>terms</b>");
    expect(await page.locator("leeway-page img").count()).toBe(0);
    expect(await page.title()).toMatch(/Leeway$/);
    expect(notebook.troubles).toEqual([]);
    await notebook.close();
  });
});
