import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
const plan = `${smallPlan}  - { id: storm, name: A storm, probability: 0.2, impacts: { tasks: frame, delay: [1, 2, 4] } }
`;
const floor = "Pour the floor: high, in working days";

// Each of these stopped somebody who saw the page for the first time. What a newcomer looks for is judgement, no source.
describe("somebody who sees the page for the first time", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  /** The plan as it is, at that width. */
  const open = async (width: number): Promise<Page> => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 800 });
    await page.locator("#plan-text").fill(plan);
    await page.locator("h1", { hasText: "Boat shed" }).waitFor();
    await expect.poll(() => cell(page, floor).inputValue(), slow).toBe("6");
    await settled(page);
    return page;
  };
  const outline = (page: Page, name: RegExp) =>
    page.getByRole("navigation", { name: "Sections" }).getByRole("link", { name });

  it.each([1280, 390])("at %i px takes the keys along when following a link", async (width) => {
    const page = await open(width);
    await outline(page, /^Register/).click();
    await expect.poll(() => focused(page)).toBe("Register");
    // What drives the answer leads to the figure that can be changed.
    await outline(page, /^Answer/).press("Enter");
    await expect.poll(() => focused(page)).toBe("Boat shed");
    // What adds most on average need not have the largest share of the contingency.
    expect(await page.locator(".adds-rest").textContent()).toMatch(/first in\s+Contingency/);
    await page.locator(".adds-most a", { hasText: "Raise the frame" }).press("Enter");
    await expect.poll(() => focused(page)).toBe("Raise the frame: low, in working days");
    expect(await page.evaluate(inSight)).toBe(true);
    expect(await violations(page, "#answer")).toEqual([]);
    expect(notebook.troubles).toEqual([]);
  });

  it("goes from section to section by keys, and is told so where it works", async () => {
    const page = await open(1280);
    await cell(page, floor).focus();
    const curve = page.locator(".curve-cell");
    await curve.waitFor();
    // What Escape gives up, it gives up first, one at a time: what was typed, its curve, then the place.
    await page.keyboard.type("9");
    await page.keyboard.press("Escape");
    expect(await cell(page, floor).inputValue()).toBe("6");
    expect(await curve.isVisible()).toBe(true);
    await page.keyboard.press("Escape");
    await curve.waitFor({ state: "detached" });
    expect(await focused(page)).toBe(floor);
    await page.keyboard.press("Escape");
    expect(await focused(page)).toBe("Work");
    const hint = page.locator("#work .section-keys");
    expect(await hint.getAttribute("data-words")).toContain("Escape");
    expect(await hint.isVisible()).toBe(true);
    expect(await violations(page, "#work")).toEqual([]);
    await page.keyboard.press("ArrowDown");
    expect(await focused(page)).toBe("Register");
    expect(await hint.isVisible()).toBe(false);
    expect(await page.evaluate(inSight)).toBe(true);
    await page.keyboard.press("End");
    expect(await focused(page)).toBe("Plan text");
    await page.keyboard.press("Home");
    expect(await focused(page)).toBe("Boat shed");
    await page.keyboard.press("ArrowDown");
    expect(await focused(page)).toBe("Futures");
  });

  it("passes a table in the stops of one row, whichever it is, and misses no control", async () => {
    const page = await open(1280);
    const stops = async (from: string, to: string): Promise<string[]> => {
      await page.getByRole("button", { name: from, exact: true }).focus();
      const names: string[] = [];
      while (names.length < 60) {
        await page.keyboard.press("Tab");
        const name = await focused(page);
        if (name === to) return names;
        names.push(name);
      }
      throw new Error(`No ${to} within 60 stops after ${from}: ${names.join("; ")}`);
    };
    expect(await stops("Work", "Register")).not.toContain("Raise the frame: name");
    await cell(page, "Raise the frame: name").focus();
    const then = await stops("Work", "Register");
    // The row with all its controls, its phase, and nothing of the other rows and phases.
    expect(then.slice(0, 13)).toEqual([
      "Name of the phase Roof",
      "Raise the frame: name",
      "Raise the frame: low, in working days",
      "Raise the frame: likely, in working days",
      "Raise the frame: high, in working days",
      "Raise the frame: waits for these tasks, by name or id",
      "Details of Raise the frame",
      "Phase of Raise the frame",
      "Up: Raise the frame",
      "Down: Raise the frame",
      "Remove: Raise the frame",
      "As a table",
      "Add a task to Roof",
    ]);
    // The arrows lead to every row, and so to the controls of each.
    await cell(page, "Dig the trench: name").focus();
    const seen: string[] = [];
    for (let row = 0; row < 4; row++) {
      seen.push(await focused(page));
      await page.keyboard.press("ArrowDown");
    }
    expect(seen).toEqual(
      ["Dig the trench", "Pour the floor", "Raise the frame", "Lay the tiles"].map((name) => `${name}: name`),
    );
    const register = await stops("Register", "Add a text below Register");
    expect(register).toContain("A week of rain: chance it happens, in per cent");
    expect(register).toContain("Add a risk");
    expect(register).not.toContain("A storm: chance it happens, in per cent");
    expect(await violations(page, "#work")).toEqual([]);
    expect(notebook.troubles).toEqual([]);
  });

  it.each([1280, 390])("at %i px learns what Enter does, and why the date moved", async (width) => {
    const page = await open(width);
    // What it is compared with later: the page was opened on another plan.
    await page.getByLabel("Name this version").fill(`At ${width} px`);
    await page.keyboard.press("Enter");
    await page.locator(".versions", { hasText: `At ${width} px` }).waitFor(slow);
    await settled(page);
    await cell(page, floor).focus();
    const keys = page.locator(".curve-keys");
    expect(await keys.textContent()).not.toContain("Not in the plan yet");
    // Another figure at each width: an answer that is known already would be no new one.
    const high = width > 1000 ? "16" : "26";
    await cell(page, floor).fill(high);
    await expect
      .poll(() => keys.textContent())
      .toContain("Not in the plan yet: Enter or leaving the cell takes it in");
    const line = page.locator(".bar-answer");
    await cell(page, floor).press("Enter");
    await expect.poll(() => page.locator("#plan-text").inputValue(), slow).toContain(`[2, 3, ${high}]`);
    await settled(page);
    const why = page.locator(".bar-why");
    await why.waitFor(slow);
    await settled(page);
    // Date and sum are whole beside it.
    expect(
      await line.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth),
    ).toBeLessThanOrEqual(0);
    expect(await violations(page, "leeway-bar")).toEqual([]);
    await why.press("Enter");
    await expect.poll(() => focused(page)).toBe("Changes");
    // Which number, from what to what, is the one that was typed.
    await page
      .locator("#changes figure", { hasText: new RegExp(`Pour the floor.*6 to ${high}`, "s") })
      .first()
      .waitFor(slow);
    // From the sentence at the top as well.
    await page.locator(".aside-line a", { hasText: "Why it moved" }).press("Enter");
    await expect.poll(() => focused(page)).toBe("Changes");
    expect(notebook.troubles).toEqual([]);
  });

  it.each([1280, 390])("at %i px adopts the best response where its worth is told", async (width) => {
    const page = await open(width);
    await outline(page, /^Responses/).press("Enter");
    const choice = page.locator("#responses").getByRole("checkbox", { name: /^Rent a cover/ });
    await choice.waitFor(slow);
    expect(await page.locator("#responses label", { hasText: "Rent a cover" }).textContent()).toMatch(
      /against “A week of rain”, (worth|costs) EUR/,
    );
    await expect.poll(() => page.locator("#responses .settling").count(), slow).toBe(0);
    const before = await choice.boundingBox();
    await choice.press("Space");
    await expect
      .poll(() => page.locator("#plan-text").inputValue(), slow)
      .toMatch(/id: tarp,.*adopted: true/);
    // The same response in the register, and the whole of it once it has been run again.
    expect(
      await page
        .locator("#register")
        .getByRole("checkbox", { name: /^Rent a cover/ })
        .isChecked(),
    ).toBe(true);
    await page.locator("#responses .note", { hasText: /(?<!none )adopted/ }).waitFor(slow);
    await expect.poll(() => page.locator("#responses .settling").count(), slow).toBe(0);
    expect(await choice.evaluate((one) => one === document.activeElement)).toBe(true);
    // A page is scrolled by whole pixels, and rows have halves.
    const moved = ((await choice.boundingBox())?.y ?? 1e6) - (before?.y ?? 0);
    expect(Math.abs(moved)).toBeLessThanOrEqual(1);
    expect(await violations(page, "#responses")).toEqual([]);
    expect(notebook.troubles).toEqual([]);
  });

  it.each([1280, 390])(
    "at %i px asks for the brief at once, and sees beside the button what came of it",
    async (width) => {
      const page = await open(width);
      const file = page.waitForEvent("download", slow);
      const save = page.locator("#hand-over").getByRole("button", { name: /^Save as HTML/ });
      await outline(page, /^Hand over/).press("Enter");
      await save.press("Enter");
      const told = page.locator("#hand-over .handed").first();
      expect((await file).suggestedFilename()).toMatch(/\.brief\.html$/);
      await told.filter({ hasText: "was handed to your downloads" }).waitFor(slow);
      const [button, words] = [await save.boundingBox(), await told.boundingBox()];
      expect((words?.y ?? 1e6) - (button?.y ?? 0)).toBeLessThan(120);
      expect(await page.locator("#hand-over").textContent()).toContain("From 2,048 futures");
      expect(await violations(page, "#hand-over")).toEqual([]);
      expect(notebook.troubles).toEqual([]);
    },
  );

  // Success criterion 2.4.1, Bypass Blocks, WCAG 2.2; that they are seen with the focus is 2.4.7. Recalled.
  it.each([1280, 390])("at %i px skips to the answer and to the first estimate", async (width) => {
    const own = await served.open({ viewport: { width, height: 800 } });
    const { page } = own;
    // A milestone has no estimate: the first that has one is skipped to, also where the work is folded.
    await fillPlan(page, plan.replace("tasks:\n", "tasks:\n  - { id: go, name: Agreed, milestone: true }\n"));
    const fold = page.getByRole("button", { name: "Work", exact: true });
    const first = await page.evaluate(
      () => document.querySelector("a[href], button, input, select")?.textContent,
    );
    expect(first).toBe("Skip to the answer");
    for (const [stops, words, to] of [
      [0, "Skip to the answer", "Boat shed"],
      [1, "Skip to the estimates", "Dig the trench: low, in working days"],
      [2, "Skip to the work", "Work"],
    ] as const) {
      if (stops > 0) await fold.click();
      await page.locator("a.skip").first().focus();
      for (let stop = 0; stop < stops; stop++) await page.keyboard.press("Tab");
      expect(await focused(page)).toBe(words);
      expect(await page.evaluate(inSight)).toBe(true);
      expect(await violations(page, "a.skip:focus")).toEqual([]);
      await page.keyboard.press("Enter");
      await expect.poll(() => focused(page)).toBe(to);
      expect(await page.evaluate(inSight)).toBe(true);
    }
    expect(own.troubles).toEqual([]);
    await own.close();
  });

  it.each([1280, 390])(
    "at %i px passes the outline in one stop, and goes through it by arrows",
    async (width) => {
      const page = await open(width);
      const links = page.getByRole("navigation", { name: "Sections" }).getByRole("link");
      // All of them are links still, to those who look and to those who listen.
      expect(await links.count()).toBe(await page.locator("main section[id]").count());
      const at = () => page.evaluate(() => document.activeElement?.getAttribute("href") ?? "elsewhere");
      const stop = () => page.locator(".outline a[tabindex='0']").getAttribute("href");
      await page.locator("a.skip").last().focus();
      // Having written the plan's text, the reader is there until the page has seen that they are at its top again.
      await expect.poll(stop).toBe("#answer");
      await page.keyboard.press("Tab");
      expect(await at()).toBe("#answer");
      const told = page.locator(".outline-keys");
      expect(await told.isVisible()).toBe(true);
      expect(await told.textContent()).toMatch(/Arrow keys .* Enter/);
      expect(await page.locator(".outline a[href='#answer']").getAttribute("aria-describedby")).toBe(
        await told.getAttribute("id"),
      );
      await page.keyboard.press("Tab");
      expect(await at()).toBe("elsewhere");
      expect(await told.isVisible()).toBe(false);
      await page.keyboard.press("Shift+Tab");
      for (const [key, to] of [
        ["ArrowDown", "#futures"],
        ["ArrowRight", "#drivers"],
        ["ArrowUp", "#futures"],
        ["End", "#text"],
        ["ArrowDown", "#text"],
        ["Home", "#answer"],
        ["ArrowLeft", "#answer"],
        ["ArrowDown", "#futures"],
      ] as const) {
        await page.keyboard.press(key);
        expect(await at()).toBe(to);
        await expect.poll(stop).toBe(to);
        expect(await page.locator(".outline a[tabindex='0']").count()).toBe(1);
      }
      expect(await violations(page, "leeway-outline")).toEqual([]);
      await page.keyboard.press("Enter");
      await expect.poll(() => focused(page)).toBe("Futures");
      // Whoever comes back is where they are by now.
      await expect.poll(stop).toBe("#futures");
      expect(notebook.troubles).toEqual([]);
    },
  );

  it("finds in the outline where it is, and what its small figures count", async () => {
    const page = await open(1280);
    await page.locator(".outline-note", { hasText: "findings" }).waitFor(slow);
    expect(await page.locator(".outline-note").isVisible()).toBe(true);
    await page.setViewportSize({ width: 390, height: 800 });
    await page.locator(".aside-line a").click();
    const current = page.locator(".outline [aria-current]");
    await current.filter({ hasText: "Changes" }).waitFor(slow);
    const [bar, link] = [await page.locator(".outline").boundingBox(), await current.boundingBox()];
    expect(link?.x).toBeGreaterThanOrEqual((bar?.x ?? 0) - 1);
    expect((link?.x ?? 0) + (link?.width ?? 1e6)).toBeLessThanOrEqual((bar?.x ?? 0) + (bar?.width ?? 0) + 1);
  });
});

/** Name of what has the focus; of nothing, "nothing". */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const one = document.activeElement;
    if (!(one instanceof HTMLElement) || one === document.body) return "nothing";
    const label =
      one instanceof HTMLSelectElement
        ? [...(one.labels?.[0]?.childNodes ?? [])]
            .filter((node) => node !== one)
            .map((node) => node.textContent)
        : [one.getAttribute("aria-label") ?? one.textContent];
    return label.join("").replace(/\s+/g, " ").replace(/ :/g, ":").trim();
  });
}

/** What has the focus is in the window and nothing lies over it. */
function inSight(): boolean {
  const one = document.activeElement;
  if (one === null) return false;
  const { left, top, width, height } = one.getBoundingClientRect();
  const on = document.elementFromPoint(left + Math.min(8, width / 2), top + height / 2);
  const upper = document.elementFromPoint(left + Math.min(8, width / 2), top + 1);
  return one.contains(on) && one.contains(upper);
}
