import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { drawn } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };
/** Px of CSS: 96 an inch. */
const mm = 96 / 25.4;

// ISO 216: a sheet of A4 is 210 by 297 mm. What belongs on it: common practice, no source.
describe("the page on paper", () => {
  const served = servedPage();

  it("is a report: headings, whole charts, tables with repeated heads, all words, and nothing to press", async () => {
    const { page, close } = await served.open();
    await drawn(page);
    await page.locator("#level").evaluate((section) => section.scrollIntoView());
    await page.locator("#level [answered]").waitFor();
    await page.emulateMedia({ media: "print" });
    // Between margins of 16 mm a sheet is this wide; the rules for narrow screens are not those of paper.
    await page.setViewportSize({ width: Math.floor((210 - 32) * mm), height: 900 });

    const paper = await page.evaluate(() => {
      const shown = (one: Element) => one.getBoundingClientRect().height > 0;
      const all = (selector: string) => [...document.querySelectorAll(selector)];
      const display = (selector: string) => all(selector).map((one) => getComputedStyle(one).display);
      return {
        titles: all("h2")
          .filter(shown)
          .map((one) => one.textContent?.trim()),
        pressed: all("button:not(.source, .fold), select, summary, textarea, progress, input[type=checkbox]")
          .filter(shown)
          .filter((one) => !one.matches(".problem textarea, .response input, .findings > summary"))
          .map((one) => one.outerHTML.slice(0, 80)),
        lists: [...new Set(display(".list-table"))],
        heads: [...new Set(display(".list-table thead, .stated thead, .levels thead"))],
        told: getComputedStyle(
          document.querySelector(
            '[data-text="What moved the opening since last time, and which decision is wanted"]',
          ) ?? document.body,
          "::before",
        ).content,
        missing: getComputedStyle(
          document.querySelector("leeway-one-future:not([answered])") ?? document.body,
          "::before",
        ).content,
        left: all("footer p")
          .filter(shown)
          .map((one) => one.textContent?.trim())
          .at(-1),
        worthALook: all(".findings li").filter(shown).length,
        links: all(".findings a")
          .filter(shown)
          .map((one) => one.textContent?.slice(0, 5)),
        tall: all("figure svg")
          .map((one) => one.getBoundingClientRect().height)
          .filter((height) => height > 0),
        wide: all("main *")
          .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
          .filter((one) => one.closest(".unseen, svg") === null)
          .map((one) => one.outerHTML.slice(0, 80)),
      };
    });
    expect(paper.titles).toEqual(
      expect.arrayContaining(["Futures", "Purpose", "People", "Work", "Register", "Why this level"]),
    );
    expect(paper.titles).not.toContain("Hand over");
    // What was not worked out says so in its place.
    expect(paper.titles).toContain("One future");
    expect(paper.missing).toMatch(/^"Not worked out when this was printed\. /);
    expect(paper.left).toMatch(/^Left out on paper.*plan text.*register.*handing over\.$/);
    expect(paper.worthALook).toBeGreaterThan(0);
    expect(paper.pressed).toEqual([]);
    // Words about keys and buttons have no place where there are none.
    const said = (words: RegExp) => page.locator("main").getByText(words).filter({ visible: true }).count();
    expect(await said(/the dotted one the date asked for\./)).toBe(1);
    expect(await said(/Arrow keys|Escape|Details of a row|Tick what|when you pin it/)).toBe(0);
    expect(paper.links).not.toContain("Show ");
    expect(paper.lists).toEqual(["table"]);
    expect(paper.heads).toEqual(["table-header-group"]);
    expect(paper.told).toMatch(/which decision is wanted/);
    expect(Math.max(...paper.tall)).toBeLessThan((297 - 38) * mm);
    expect(paper.wide).toEqual([]);
    await close();
  });

  it("says once what is set aside: in the section's words, or where it is stated while there are none", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, smallPlan);
    const paper = async () => {
      await page.emulateMedia({ media: "print" });
      const said = await page.evaluate(() => ({
        stated: [...document.querySelectorAll(".budget .entry-value")]
          .filter((one) => (one.closest(".entry-field")?.getBoundingClientRect().height ?? 0) > 0)
          .map((one) => getComputedStyle(one, "::before").content),
        late: document.querySelector(".budget .late")?.getBoundingClientRect().height,
      }));
      const told = page.locator("leeway-money").getByText(/held by Ann Quill|reserve of EUR\s1,500/);
      const words = await told.filter({ visible: true }).count();
      await page.emulateMedia({ media: "screen" });
      return { ...said, words };
    };
    expect(await page.locator("leeway-money[answered]").count()).toBe(0);
    expect(await paper()).toEqual({ stated: ['"1,500"', '"Ann Quill"'], late: 0, words: 0 });
    await page.locator("#money").evaluate((section) => section.scrollIntoView());
    await page.locator("leeway-money[answered]:not([older])").waitFor();
    const { stated, words } = await paper();
    expect(stated).toEqual([]);
    expect(words).toBe(2);
    await close();
  });

  it("prints the charts of sections that were folded when it was opened, and folds them again", async () => {
    const { page, close } = await served.open({}, () => {
      localStorage.setItem("leeway-folded", JSON.stringify(["futures", "drivers", "work"]));
    });
    const charts = () =>
      page.evaluate(() =>
        [
          ...document.querySelectorAll(
            "#futures leeway-figure, #drivers > .fold-body > .figures > leeway-figure",
          ),
        ].map((one) => {
          const drawn = one.querySelector("figure svg")?.getBoundingClientRect();
          return drawn === undefined ? 0 : Math.round(drawn.width);
        }),
      );
    expect(await page.locator("#futures > .fold-body").isVisible()).toBe(false);
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: Math.floor((210 - 32) * mm), height: 900 });
    // Two curves, the dots, the drivers: each as wide as the sheet lets it be.
    await expect.poll(async () => (await charts()).filter((width) => width > 300).length, slow).toBe(4);
    expect(await page.locator("#work tbody tr[id^=task-]").last().isVisible()).toBe(true);
    await page.emulateMedia({ media: "screen" });
    expect(await page.locator("#futures > .fold-body").isVisible()).toBe(false);
    expect(await page.locator(".findings[open]").count()).toBe(0);
    await close();
  });

  it("prints all of a plan of hundreds of tasks at once, while it is still being drawn", async () => {
    const { page, close } = await served.open();
    page.setDefaultTimeout(90_000);
    const long = longPlan(300);
    await page.locator("#plan-text").fill(long);
    await page.locator(".sentence .date").waitFor();
    await page.locator("h1", { hasText: "Long quay" }).waitFor();
    await page.locator('main[data-busy="false"]').waitFor();
    // As the browser does it: first it says that it is about to print.
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    await page.emulateMedia({ media: "print" });
    const paper = await page.evaluate(() => ({
      tasks: document.querySelectorAll("#work tbody tr[id^=task-]").length,
      bars: [...document.querySelectorAll("#work .task-bar")].filter(
        (one) => one.getBoundingClientRect().height > 0,
      ).length,
      charts: [
        ...document.querySelectorAll(
          "#futures leeway-figure, #drivers > .fold-body > .figures > leeway-figure",
        ),
      ].map((one) => one.querySelector("figure svg") !== null),
      // Every section has something under its heading: figures, or words that say what is missing.
      empty: [...document.querySelectorAll("main section[id]")]
        .filter((one) => getComputedStyle(one).display !== "none" && one.querySelector("h2") !== null)
        .filter((one) => (one.querySelector(".fold-body")?.getBoundingClientRect().height ?? 0) < 12)
        .map((one) => one.id),
    }));
    expect(paper.tasks).toBe(300);
    expect(paper.bars).toBe(300);
    // Two of futures and one of drivers: the plan has no money.
    expect(paper.charts).toEqual([true, true, true]);
    expect(paper.empty).toEqual([]);
    await close();
  });
});

/** A chain of tasks, each with a range. */
function longPlan(tasks: number): string {
  const rows = Array.from({ length: tasks }, (_, at) => {
    const after = at === 0 ? "" : `, after: t${at - 1}`;
    return `  - { id: t${at}, name: Pile ${at + 1}, duration: [1, 2, 4]${after} }`;
  });
  return `format: 1\ntitle: Long quay\nstart: 2027-02-01\niterations: 500\ntasks:\n${rows.join("\n")}\n`;
}
