import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, type Notebook } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
/** One task that hangs together with nothing, as added by hand. */
const plan = smallPlan.replace(
  "risks:",
  `  - { id: paint, name: Paint the walls, phase: Roof, duration: [1, 2, 3], people: bo }
  - { id: party, name: Open the doors, phase: Roof, duration: 1, people: ann, after: tiles }
risks:`,
);

// Common practice, no source: what is to be known at a row is seen there, once, and what can be pressed looks so.
describe.each([1280, 390])("a row of a table at %i px", (width) => {
  const served = servedPage();
  let notebook: Notebook;
  let page: Page;
  beforeAll(async () => {
    notebook = await served.open({ viewport: { width, height: 760 } });
    page = notebook.page;
    await fillPlan(page, plan);
  });

  it("tells where a task waits for nothing and nothing waits for it, until it hangs together", async () => {
    const told = page.locator("#work .loose");
    const links = cell(page, "Paint the walls: waits for these tasks, by name or id");
    await told.waitFor(slow);
    expect(await told.allTextContents()).toEqual(["It waits for nothing and nothing waits for it."]);
    expect(await page.locator("#task-paint .loose").count()).toBe(1);
    expect(await links.getAttribute("aria-describedby")).toBe(await told.getAttribute("id"));
    expect(await links.getAttribute("aria-invalid")).toBeNull();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(await violations(page, "#work")).toEqual([]);
    await links.fill("Raise the frame");
    await links.press("Enter");
    await told.filter({ hasText: /^Nothing waits for it; the finish of the plan does\.$/ }).waitFor(slow);
    const end = cell(page, "Open the doors: waits for these tasks, by name or id");
    await end.fill("Lay the tiles; Paint the walls");
    await end.press("Enter");
    await told.waitFor({ state: "detached", ...slow });
    await page.keyboard.press("Escape");
  });

  it("says that nothing moves only where the finish of another task is promised, and leads to it", async () => {
    const promised = plan
      .replace("confidence: 0.8,", "confidence: 0.8, finishOf: party,")
      .replace("phase: Roof, duration: [1, 2, 3]", "phase: Roof, after: dig, duration: [1, 2, 3]");
    await fillPlan(page, promised.replace("Boat shed", "Promised"));
    const told = page.locator("#task-paint .loose");
    await told
      .filter({ hasText: /^Nothing waits for it: if it is late, nothing moves\. Should/ })
      .waitFor(slow);
    await fillPlan(
      page,
      promised
        .replace("Boat shed", "Closed")
        .replace(" finishOf: party,", "")
        .replace(
          "name: Open the doors, phase: Roof, duration: 1, people: ann",
          "name: Doors open, phase: Roof, milestone: true",
        ),
    );
    await told
      .filter({ hasText: /the finish of the plan does\. Should “Doors open” wait for it\?$/ })
      .waitFor(slow);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    expect(await violations(page, "#work")).toEqual([]);
    await told.getByRole("link").click();
    const links = cell(page, "Doors open: waits for these tasks, by name or id");
    await expect.poll(() => links.evaluate((one) => one === document.activeElement)).toBe(true);
    await links.fill("Lay the tiles; Paint the walls");
    await links.press("Enter");
    await told.waitFor({ state: "detached", ...slow });
    await fillPlan(page, plan);
  });

  it("gives no dates and no chances of a task that only a response not adopted needs", async () => {
    const needed = plan
      .replace("Boat shed", "Cover")
      .replace("duration: [1, 2, 3]", "duration: [1, 2, 3], onlyIf: tarp, target: 2027-03-12");
    await fillPlan(page, needed);
    const row = page.locator("#task-paint");
    await row.locator(".finish", { hasText: "Not needed: “Rent a cover” is not adopted" }).waitFor(slow);
    expect(await row.locator(".finish, .critical, .when").allTextContents()).not.toContainEqual(
      expect.stringMatching(/%|Mar/),
    );
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await fillPlan(
      page,
      needed.replace("Cover", "Covered").replace("cost: 300,", "cost: 300, adopted: true,"),
    );
    await row.locator(".finish", { hasText: "by 12\u00a0Mar:" }).waitFor(slow);
    await fillPlan(page, plan);
  });

  it("has the panel of its estimate say whose it is, and lie over no row that has the focus", async () => {
    await cell(page, "Dig the trench: low, in working days").focus();
    const names = ["Dig the trench", "Pour the floor", "Raise the frame", "Lay the tiles", "Paint the walls"];
    for (const name of names) {
      const own = page.locator(".curve-cell .curve-of");
      await expect.poll(() => own.textContent()).toBe(name);
      expect(await own.isVisible(), name).toBe(true);
      expect(
        await page.evaluate(() => {
          const row = document.activeElement?.closest("tr")?.getBoundingClientRect();
          const panel = document.querySelector(".curve-cell")?.getBoundingClientRect();
          if (row === undefined || panel === undefined) return "no row or no panel";
          return Math.min(row.bottom, panel.bottom) - Math.max(row.top, panel.top) > 0 ? "covered" : "free";
        }),
      ).toBe("free");
      // A low that fits every row, in place of the old one: beside an entry that waits the panel may stay away.
      await page.keyboard.press("ControlOrMeta+a");
      await page.keyboard.type("1");
      await page.keyboard.press("Enter");
    }
    await page.keyboard.press("Escape");
    expect(await violations(page, "#work")).toEqual([]);
  });

  // At least 24 px high: 2.5.8, Target Size; an edge of 3 to 1: 1.4.11, Non-text Contrast; WCAG 2.2. Recalled.
  it.each(["light", "dark"] as const)("is added by what is seen to be a button: %s", async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    const found = await page.evaluate(() => {
      const light = (colour: string): number => {
        const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
          const share = Number(part) / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      };
      const paper = light(getComputedStyle(document.documentElement).backgroundColor);
      const all = [...document.querySelectorAll<HTMLElement>("#work, #people, #purpose, #register")].flatMap(
        (section) => [...section.querySelectorAll<HTMLButtonElement>("button")],
      );
      const adds = all.filter((one) => /^(Add|Ask) /.test(one.textContent) && one.checkVisibility());
      const faint = adds.flatMap((one) => {
        const style = getComputedStyle(one);
        const worst = Math.min(
          ...(["Top", "Right", "Bottom", "Left"] as const).map((side) => {
            if (Number.parseFloat(style[`border${side}Width`]) < 1) return 0;
            const edge = light(style[`border${side}Color`]);
            return (Math.max(edge, paper) + 0.05) / (Math.min(edge, paper) + 0.05);
          }),
        );
        const { height } = one.getBoundingClientRect();
        return worst >= 3 && height >= 24 ? [] : [`${one.textContent}: ${worst} to 1, ${height} px`];
      });
      return { faint, count: adds.length };
    });
    expect(found.faint).toEqual([]);
    expect(found.count).toBeGreaterThan(8);
  });

  it("says once what a value of a new risk is", async () => {
    await page.emulateMedia({ colorScheme: "light" });
    await page.locator("#register").getByRole("button", { name: "Add a risk" }).press("Enter");
    const said = await page.locator("#register .new-row td.number").evaluateAll((all) =>
      all.map((one) => {
        const label = one.querySelector<HTMLElement>(".cell-label");
        const input = one.querySelector("input");
        const inside = input === null ? "" : getComputedStyle(input, "::placeholder").color;
        return [
          label?.checkVisibility() === true ? label.textContent : "",
          /, 0\)$/.test(inside) ? "" : input?.placeholder,
        ].filter((words) => words !== "");
      }),
    );
    expect(said).toEqual(
      width > 1000
        ? [["Chance it happens, %"], ["low"], ["likely"], ["high"]]
        : [["Chance it happens, %"], ["Low"], ["Likely"], ["High"]],
    );
    expect(await violations(page, "#register")).toEqual([]);
    expect(notebook.troubles).toEqual([]);
  });
});
