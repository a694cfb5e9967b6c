import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { firstDay } from "../../apps/notebook/src/beginning/firstDay.ts";
import { ownPlan } from "../../apps/notebook/src/beginning/ownPlan.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };

// That a first visit teaches, and that nothing is asked twice, is common practice, no source.
describe("beginning", () => {
  const served = servedPage();

  it("shows three things to try under an answered example, until they are put away for good", async () => {
    const { page, troubles, close } = await served.open();
    const links = page.locator(".tour a");
    const targets = await links.evaluateAll((all) => all.map((one) => one.getAttribute("href") ?? ""));
    for (const target of targets) expect(await page.locator(target).count()).toBe(1);
    await page.getByRole("button", { name: "Put these away" }).press("Enter");
    expect(await page.locator(".tour").count()).toBe(0);
    await page.reload();
    await settled(page);
    expect(await page.locator(".tour").count()).toBe(0);
    // The reload may cut short what the page was still fetching.
    expect(troubles.filter((one) => !one.endsWith("net::ERR_ABORTED"))).toEqual([]);
    await close();
  });

  // Which weekday a date is says the platform; which days are worked is read from the plan that comes of it.
  it.each([
    ["2027-02-05", "2027-02-05"],
    ["2027-02-06", "2027-02-08"],
    ["2027-02-07", "2027-02-08"],
    ["2027-02-08", "2027-02-08"],
    ["2027-12-31", "2027-12-31"],
    ["2028-01-01", "2028-01-03"],
  ])("offers on %s the first day on which work happens: %s", (day, first) => {
    expect(firstDay(day)).toBe(first);
    const days = { low: "1", likely: "2", high: "3" };
    const made = ownPlan({
      title: "T",
      start: firstDay(day),
      finish: "",
      strands: [{ name: "S", ...days }],
      worries: [],
    });
    const { plan } = readPlan("text" in made ? made.text : "");
    const works = plan?.calendars.get(plan.calendar)?.workdays ?? [];
    const weekday = (iso: string) =>
      new Date(`${iso}T12:00Z`)
        .toLocaleDateString("en-GB", { weekday: "short", timeZone: "UTC" })
        .toLowerCase();
    expect(works).toContain(weekday(first));
    expect((works as string[]).includes(weekday(day))).toBe(day === first);
  });

  it("takes the first day as dates are typed everywhere, and says what it cannot read beside all else", () => {
    const answers = { title: "T", finish: "", worries: [] };
    const strands = [{ name: "S", low: "1", likely: "2", high: "3" }];
    const made = ownPlan({ ...answers, start: " 1 Feb 2027 ", strands });
    expect("text" in made ? readPlan(made.text).plan?.start : made.problems).toBe("2027-02-01");
    const refused = ownPlan({ ...answers, start: "02/01/2027", strands: [] });
    expect("problems" in refused ? refused.problems : []).toEqual([
      expect.stringMatching(/^First day: “02\/01\/2027” is not a date read here/),
      "Name at least one strand of work.",
    ]);
  });

  it("offers no Sunday to whoever begins on one", async () => {
    const { page, close } = await served.open();
    await page.clock.setFixedTime(new Date(2027, 1, 7, 12));
    await page.reload();
    await page.locator(".begin summary").click();
    expect(await page.locator("form.own [name=start]").inputValue()).toMatch(/^8\s?Feb\s2027$/);
    await close();
  });

  it.each([1280, 390])(
    "leads at %i px from each of its links to a section in sight, folded or not",
    async (width) => {
      const { page, troubles, close } = await served.open({ viewport: { width, height: 844 } }, () => {
        const folded = ["work", "drivers", "changes", "responses", "hand-over"];
        localStorage.setItem("leeway-folded", JSON.stringify(folded));
      });
      page.setDefaultTimeout(90_000);
      const links = page.locator(".tour a");
      const titles: Record<string, string> = {
        "Change an estimate": "Work",
        "what drives it": "What drives it",
        "why it moved": "Changes",
        "Adopt a response": "Responses",
        "hand over the brief": "Hand over",
      };
      expect((await links.allTextContents()).map((words) => words.trim())).toEqual(Object.keys(titles));
      for (const [words, title] of Object.entries(titles)) {
        const link = links.filter({ hasText: words });
        const target = page.locator((await link.getAttribute("href")) ?? "nowhere");
        expect(await target.count()).toBe(1);
        await link.press("Enter");
        const heading = target.locator("h2 button").first();
        await expect.poll(() => heading.evaluate((one) => one === document.activeElement), slow).toBe(true);
        expect((await heading.textContent())?.trim()).toBe(title);
        expect(await heading.getAttribute("aria-expanded")).toBe("true");
        expect(await target.locator(".fold-body").first().isVisible()).toBe(true);
        // In the window, and not under what stays at its top.
        await expect
          .poll(
            () =>
              heading.evaluate((one) => {
                const { left, top, height, width: wide } = one.getBoundingClientRect();
                return one.contains(document.elementFromPoint(left + wide / 2, top + height / 2));
              }),
            slow,
          )
          .toBe(true);
      }
      expect(troubles).toEqual([]);
      await close();
    },
  );

  it("makes a plan that forecasts from five answers, and says at once what is missing", async () => {
    const { page, troubles, close } = await served.open({
      viewport: { width: 390, height: 900 },
    });
    await page.locator(".begin summary").press("Enter");
    const own = page.locator(".own");
    await own.getByRole("button", { name: "Make the plan" }).press("Enter");
    await own.getByRole("alert").waitFor();
    expect(await own.getByRole("alert").locator("li").count()).toBe(2);
    expect(await violations(page)).toEqual([]);
    const title = `Shed </script><img src=x onerror=alert(1)>: "roof"`;
    const fill = (name: string, text: string) => own.locator(`input[name="${name}"]`).fill(text);
    await fill("title", title);
    await fill("start", "1 Feb 2027");
    await fill("finish", "Roof is tight");
    await fill("strand-1-name", "Strip the old roof");
    for (const [cell, days] of Object.entries({ low: "1.5", likely: "3", high: "5.5" }))
      await fill(`strand-1-${cell}`, days);
    // What low and high mean is said where they are asked for, to who sees it and to who hears it.
    const means = "Low: one time in ten it takes less. High: one time in ten it takes more.";
    for (const at of [0, 1]) {
      const said = await own
        .locator("fieldset")
        .nth(at)
        .evaluate((set) => document.getElementById(set.getAttribute("aria-describedby") ?? "")?.textContent);
      expect(said).toContain(means);
    }
    // Low, likely and high are beside each other on a telephone too.
    for (const of of ["strand", "worry"]) {
      const tops = await own
        .locator(`input[name^="${of}-1-"].own-days`)
        .evaluateAll((all) => all.map((one) => Math.round(one.getBoundingClientRect().top)));
      expect(tops.length).toBeGreaterThanOrEqual(3);
      expect(new Set(tops).size).toBe(1);
    }
    // The way on stands out from what is something else.
    const make = await own.getByRole("button", { name: "Make the plan" }).boundingBox();
    const other = page.getByText("Another example", { exact: true });
    const example = page.getByRole("button", { name: "Open: a clinic opens" });
    expect(((await other.boundingBox())?.y ?? 0) - (make?.y ?? 0) - (make?.height ?? 0)).toBeGreaterThan(16);
    const weight = (one: Element): number => Number(getComputedStyle(one).fontWeight);
    expect(await own.getByRole("button", { name: "Make the plan" }).evaluate(weight)).toBeGreaterThan(
      await example.evaluate(weight),
    );
    await own.getByRole("button", { name: "Make the plan" }).press("Enter");
    await page.locator("h1", { hasText: "Shed" }).waitFor();
    await settled(page);
    expect(await page.locator("h1").textContent()).toBe(title);
    expect(await page.locator("#plan-text").inputValue()).toContain("Roof is tight");
    // Nobody opened a file.
    const told = await page.locator("leeway-file").textContent();
    expect(told).toMatch(/Made shed\S*\.plan\.yaml from your answers\. Save writes it to a file\./);
    expect(told).not.toContain("Opened");
    // As the form says, low and high are what it is below and above one time in ten: the second and the sixth working
    // day from Monday 1 February 2027, by hand. As the least and the most they would be the third and the fifth.
    await expect
      .poll(() => page.locator("#task-strand-1 .finish").textContent(), slow)
      .toMatch(/^\s*2\sFeb\s–\s8\sFeb/);
    expect(await page.locator("#work").textContent()).toContain(
      "Low (P10) is beaten one time in ten, high (P90) is exceeded one time in ten.",
    );
    expect(await page.locator(".sentence .date").textContent()).toContain("February 2027");
    // It is in sight, says nothing of money where there is none, and is not compared with the plan that was there before.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("title");
    const sentence = await page.locator(".sentence").boundingBox();
    expect(sentence?.y).toBeGreaterThan(0);
    expect(sentence?.y).toBeLessThan(600);
    expect(await page.locator("leeway-answer").textContent()).not.toMatch(/EUR|Was/);
    // It was begun here: nobody opened it.
    await page.locator("#changes").scrollIntoViewIfNeeded();
    await page.locator(".versions th[scope=row]", { hasText: "as begun here" }).waitFor(slow);
    expect(await page.locator("#changes").textContent()).toContain("What moved since this plan was begun.");
    expect(await page.locator("#changes").textContent()).not.toContain("opened");
    expect(troubles).toEqual([]);
    await close();
  });

  it("opens another example", async () => {
    const { page, close } = await served.open();
    const before = await page.locator("h1").textContent();
    await page.locator(".begin summary").click();
    await page.getByRole("button", { name: "Open: a ferry sells tickets" }).click();
    await page.locator("h1", { hasText: "Ostrel" }).waitFor();
    await settled(page);
    expect(await page.locator("h1").textContent()).not.toBe(before);
    await close();
  });
});
