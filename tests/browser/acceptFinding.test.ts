import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 15_000 };
const names = ["Roof", "Walls", "Floor"];
const plan = `format: 1
title: Shed
start: 2027-02-01
people: [{ id: mo, name: Mo }]
tasks:
${names.map((name) => `  - { id: ${name.toLowerCase()}, name: ${name}, duration: [2, 3, 6] }`).join("\n")}
  - { id: done, name: Done, milestone: true, after: [roof, walls, floor] }
# what was looked at
risks:
  - { id: storm, name: A storm, probability: 0.3, status: occurred, impacts: { tasks: roof, delay: [1, 2, 4], cost: [100, 200, 300] } }
acceptedFindings:
  - { finding: only-threats, who: mo, date: 2027-01-04, why: Not any more. }
`;

// That a contradiction may stay where somebody answers for it by name is common practice, no source.
describe.each([1280, 390])("a finding that may stay, %i px wide", (width) => {
  const served = servedPage();

  it("is accepted by name and with a reason, is counted no longer, and can be taken back", async () => {
    const { page, troubles, close } = await served.open({ viewport: { width, height: 900 } });
    await fillPlan(page, plan);
    await page.locator("h1", { hasText: "Shed" }).waitFor(slow);
    await settled(page);
    const text = () => page.locator("leeway-plan-text textarea").inputValue();
    const work = page.locator("#work .findings");
    await work.locator("summary").first().click(slow);
    const line = work.locator("li", { hasText: "3 tasks wait for nothing" });
    const lines = await work.locator(":scope > ul > li").count();
    await line.getByRole("button", { name: "Let it stand" }).click(slow);
    expect(await page.evaluate(() => document.activeElement?.getAttribute("name"))).toBe("who");
    expect(await violations(page, "#work")).toEqual([]);

    // Both of what is missing is said at once, where it is missing, and nothing is written.
    const form = work.locator("form.accept");
    await form.getByRole("button", { name: "Let it stand" }).click();
    expect(await form.locator(".message").allTextContents()).toEqual([
      "Choose who answers for it.",
      "Write why it may stay: the next reader asks the same.",
    ]);
    expect(await text()).not.toContain("open-start");
    // Left by its key, the reader is back at the button.
    await form.locator("textarea").press("Escape");
    expect(await form.count()).toBe(0);
    await page.keyboard.press("Enter");
    await form.locator("select").selectOption({ label: "Mo" });
    await form.locator("textarea").fill('They "all" start at once: three crews');
    await form.getByRole("button", { name: "Let it stand" }).press("Enter");
    const stands = work.locator(".stand li", { hasText: "three crews" });
    await stands.waitFor(slow);
    expect(await stands.textContent()).toMatch(/And 2 more like it\.\s+Accepted by\sMo, /);
    expect(await line.count()).toBe(0);
    expect(await work.locator(":scope > ul:first-of-type > li").count()).toBe(lines - 1);
    const outlined = page.locator('.outline a[href="#work"] .looks span').first();
    expect(Number.parseInt((await outlined.textContent()) ?? "0", 10)).toBe(lines - 1);
    const written = await text();
    expect(written).toContain("# what was looked at");
    expect(written).toMatch(/finding: open-start/);
    expect(written).toMatch(/ids: \[\s*roof, walls, floor\s*\]|- roof\s+- walls\s+- floor/);
    expect(await violations(page, "#work")).toEqual([]);

    await stands.getByRole("button", { name: "No longer accept it" }).click();
    await line.waitFor(slow);
    expect(await text()).toBe(plan);
    expect(troubles).toEqual([]);
    await close();
  });

  it("that is found no longer is told of where decisions are, and goes", async () => {
    const { page, troubles, close } = await served.open({ viewport: { width, height: 900 } });
    await fillPlan(page, plan);
    await page.locator("h1", { hasText: "Shed" }).waitFor(slow);
    await settled(page);
    const signOff = page.locator("#sign-off .findings");
    await signOff.locator("summary").click(slow);
    const unused = signOff.locator("li", { hasText: "only-threats" });
    await unused.getByRole("button", { name: "No longer accept it" }).click(slow);
    await unused.waitFor({ state: "detached", timeout: 15_000 });
    expect(await page.locator("leeway-plan-text textarea").inputValue()).not.toContain("acceptedFindings");
    expect(troubles).toEqual([]);
    await close();
  });

  it("may be mended in the note of an entry, and what occurred is told in facts", async () => {
    const { page, troubles, close } = await served.open({ viewport: { width, height: 900 } });
    await fillPlan(page, plan);
    await page.locator("h1", { hasText: "Shed" }).waitFor(slow);
    await settled(page);
    const text = () => page.locator("leeway-plan-text textarea").inputValue();
    await page.locator("#register .more summary").first().click(slow);
    const type = async (label: string, words: string) => {
      const field = page.getByLabel(label, { exact: true });
      await field.fill(words);
      await field.press("Enter");
    };
    await type("A storm: working days it took", "3.5");
    await expect.poll(text, slow).toMatch(/days: 3\.5/);
    await type("A storm: what it cost, EUR", "12,000");
    await expect.poll(text, slow).toMatch(/cost: 12000\b/);
    // In the text at once, and in the plan once that was read.
    const cost = page.getByLabel("A storm: what it cost, EUR", { exact: true });
    const known = (words: string) => page.locator(`.entry-value[data-text="${words}"]`).filter({ has: cost });
    await known("12,000").waitFor(slow);
    await type("A storm: note", "Borne: the crew waited");
    await expect.poll(text, slow).toMatch(/note: ['"]Borne: the crew waited['"]/);
    expect(await violations(page, "#register")).toEqual([]);
    await type("A storm: what it cost, EUR", "a lot");
    await page.locator("#register .message", { hasText: "a sum of money" }).waitFor(slow);
    await type("A storm: what it cost, EUR", "");
    // The last of the facts takes their place with it; the first has to be known to be gone.
    await known("").waitFor(slow);
    await type("A storm: working days it took", "");
    await type("A storm: note", "");
    await expect.poll(text, slow).toBe(plan);
    expect(troubles).toEqual([]);
    await close();
  });
});
