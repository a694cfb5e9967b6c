import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
const names = ["Roof", "Walls", "Floor", "Paint"];
const plan = `format: 1
title: Shed
start: 2027-02-01
purpose: { goals: { id: dry, statement: It is dry } }
risks: { id: storm, name: A storm, probability: 0.2, impacts: { tasks: roof, delay: [1, 2, 4] } }
tasks:
${names.map((name) => `  - { id: ${name.toLowerCase()}, name: ${name}, duration: [2, 3, 6] }`).join("\n")}
  - { id: done, name: Done, milestone: true, after: [roof, walls, floor, paint] }
`;

// Where somebody who follows a remark wants to arrive is judgement, no source.
describe("what is worth a look", () => {
  const served = servedPage();

  it("is one line for tasks alike, each name a way to the field, and speaks the words of the page", async () => {
    const { page, troubles, close } = await served.open();
    await fillPlan(page, plan);
    await page.locator("h1", { hasText: "Shed" }).waitFor(slow);
    await settled(page);
    const work = page.locator("#work .findings");
    await work.locator("summary").first().click(slow);
    const line = work.locator("li", { hasText: "4 tasks wait for nothing" });
    await line.waitFor(slow);
    expect(await line.locator("a").allTextContents()).toEqual(names);
    expect(await line.textContent()).toContain("“Waits for”");
    const notes = await work.locator(":scope > ul > li").count();
    const counted = await page.locator('.outline a[href="#work"] .looks span').first().textContent();
    expect(Number.parseInt(counted ?? "", 10)).toBe(notes);
    const at = () => page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    await line.getByRole("link", { name: "Walls" }).press("Enter");
    await expect.poll(at, slow).toBe("Walls: waits for these tasks, by name or id");
    const basis = work.locator("li", { hasText: "does not say what it rests on" });
    await basis.getByRole("link", { name: "Floor" }).press("Enter");
    await expect.poll(at, slow).toBe("Floor: low, in working days");
    // A row of a list is arrived at too.
    const purpose = page.locator("#purpose .findings");
    await purpose.locator("summary").click();
    await purpose.locator("li", { hasText: "It is dry" }).getByRole("link", { name: "Show" }).press("Enter");
    await expect.poll(at, slow).toBe("goal “It is dry”: what is reached");
    const register = page.locator("#register .findings");
    await register.locator("summary").click();
    const borne = register.locator("li", { hasText: "No response" });
    expect(await borne.textContent()).toContain("say in “Note” that it is borne");
    await register
      .locator("li", { hasText: "Nobody owns" })
      .getByRole("link", { name: "Show" })
      .press("Enter");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent), slow)
      .toContain("Owner, dates");
    for (const { id, all } of await page
      .locator(".findings a")
      .evaluateAll((links) =>
        links.map((link) => ({ id: link.getAttribute("href") ?? "", all: link.outerHTML })),
      ))
      expect(await page.locator(id).count(), all).toBe(1);
    expect(await violations(page, "#work")).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  });
});
