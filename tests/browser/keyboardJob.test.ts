import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };

describe("the whole job by keyboard", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
    const { page } = notebook;
    await page.locator("#plan-text").fill(smallPlan);
    await page.locator("h1", { hasText: "Boat shed" }).waitFor();
    await settled(page);
  });

  it("goes from a purpose to the brief, and the focus is never lost", async () => {
    const { page } = notebook;
    const { press, type, section, tabTo } = hands(page);
    const plan = async () => parse(await page.locator("#plan-text").inputValue());
    const read = <T>(what: (plan: Awaited<ReturnType<typeof parse>>) => T) =>
      expect.poll(async () => what(await plan()), slow);

    /** A new row is drawn in a turn of its own. */
    const arrives = (name: string) => expect.poll(() => focused(page), slow).toBe(name);

    await section("Purpose");
    await tabTo("What is wrong today");
    await type("The boats lie in the rain.");
    await press("Tab");
    await read(({ purpose }) => purpose?.problem).toBe("The boats lie in the rain.");

    await section("Changes");
    await tabTo("Name this version");
    await type("As agreed");
    await press("Enter");
    await page.locator(".versions", { hasText: "As agreed" }).waitFor(slow);

    // A milestone, and a task that is linked by name, each in a new row at the end.
    await section("Work");
    await tabTo("Dig the trench: name");
    await press("ArrowDown", 3);
    await press("Enter");
    await arrives("New task: name");
    await type("Keys handed over");
    await press("Enter");
    await arrives("New task: likely, in working days");
    await type("0");
    await press("Enter");
    await read(({ tasks }) => tasks.length).toBe(5);
    await arrives("New task: name");
    await type("Paint the walls");
    for (const days of ["2", "3", "7"]) {
      await press("Tab");
      await type(days);
    }
    await press("Tab");
    await type("raise");
    await press("ArrowDown");
    await press("Enter");
    await press("Enter");
    await read(({ tasks }) => tasks.length).toBe(6);
    await press("Escape");
    const [milestone, task] = (await plan()).tasks.slice(4);
    expect(milestone).toMatchObject({ name: "Keys handed over", duration: 0 });
    expect(task).toMatchObject({ name: "Paint the walls", duration: [2, 3, 7], after: "frame" });

    // Three points for what was there already.
    await section("Work");
    await tabTo(/^(Dig|Pour|Raise|Lay|Keys|Paint).*: name$/);
    while ((await focused(page)) !== "Pour the floor: name") await press("ArrowUp");
    for (const days of ["3", "5", "11"]) {
      await press("ArrowRight");
      await type(days);
    }
    await press("Enter");
    await read(({ tasks }) => tasks[1].duration).toEqual([3, 5, 11]);

    await section("Register");
    await tabTo("Add a risk");
    await press("Enter");
    await arrives("New risk: what may happen");
    await type("The crane is late");
    await press("Tab");
    await type("raise");
    await press("ArrowDown");
    await press("Enter");
    for (const figure of ["25", "2", "4", "9"]) {
      await press("Tab");
      await type(figure);
    }
    await press("Enter");
    await read(({ risks }) => risks[1]).toMatchObject({
      name: "The crane is late",
      probability: 0.25,
      impacts: { tasks: "frame", delay: [2, 4, 9] },
    });
    await press("Escape");

    await section("Responses");
    await page.locator("#responses .adopt").waitFor(slow);
    await tabTo(/^Rent a cover/);
    await press("Space");
    await read(({ risks }) => risks[0].responses[0].adopted).toBe(true);

    await section("Futures");
    await tabTo("Level committed to, on the curve of finishes");
    await press("ArrowRight", 5);
    await press("Enter");
    await read(({ commitment }) => commitment.confidence).toBe(0.85);

    await section("Changes");
    await page.locator("#changes .note", { hasText: "since “As agreed”" }).waitFor(slow);
    await page.locator("#changes figure", { hasText: "Pour the floor" }).first().waitFor(slow);

    const file = page.waitForEvent("download", slow);
    await section("Hand over");
    await tabTo(/^Save as HTML/);
    await press("Enter");
    expect((await file).suggestedFilename()).toBe("boat-shed.brief.html");
    expect(await focused(page)).toMatch(/^Save as HTML/);
    expect(await violations(page)).toEqual([]);
    expect(notebook.troubles).toEqual([]);
  });
});

/** What a reader without a pointer has: keys. After each the focus is somewhere, in the window, and can be seen. */
function hands(page: Page) {
  const press = async (key: string, times = 1): Promise<void> => {
    for (let i = 0; i < times; i++) {
      await page.keyboard.press(key);
      expect(await page.evaluate(seesFocus), `after ${key}`).toBe("seen");
    }
  };
  const tabTo = async (name: string | RegExp): Promise<void> => {
    for (let stops = 0; stops < 40; stops++) {
      await press("Tab");
      const now = await focused(page);
      if (typeof name === "string" ? name === now : name.test(now)) return;
    }
    throw new Error(`${name} is not within 40 stops; now at ${await focused(page)}.`);
  };
  return {
    press,
    tabTo,
    type: async (text: string): Promise<void> => {
      await page.keyboard.type(text);
      expect(await page.evaluate(seesFocus), `after typing ${text}`).toBe("seen");
    },
    /** By Escape to the heading of the section, and by the arrows to the one that is wanted. */
    section: async (name: string): Promise<void> => {
      for (let i = 0; i < 3 && !(await page.evaluate(atHeading)); i++) await press("Escape");
      await press("Home");
      for (let i = 0; i < 20 && (await focused(page)) !== name; i++) await press("ArrowDown");
      expect(await focused(page)).toBe(name);
    },
  };
}

function atHeading(): boolean {
  return document.activeElement?.matches("h1, h2 > button") ?? false;
}

function seesFocus(): string {
  const one = document.activeElement;
  if (one === null || one === document.body) return "nothing has the focus";
  const { top, bottom } = one.getBoundingClientRect();
  if (bottom <= 0 || top >= innerHeight) return "the focus is out of the window";
  return one.matches(":focus-visible") && getComputedStyle(one).outlineStyle !== "none"
    ? "seen"
    : "not drawn";
}

/** Name of what has the focus. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const one = document.activeElement;
    const label =
      one instanceof HTMLInputElement || one instanceof HTMLTextAreaElement ? one.labels?.[0] : null;
    const name = one?.getAttribute("aria-label") ?? label?.textContent ?? one?.textContent ?? "";
    return name.replace(/\s+/g, " ").replace(/ :/g, ":").trim();
  });
}
