import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { palette } from "@leeway/charts";
import { parse } from "csv-parse/sync";
import ical from "node-ical";
import type { Download, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { levelScript, levelScriptHash } from "../../apps/notebook/src/handing/page/levelScript.ts";
import { contrast, linear, luminance as luminanceOf } from "../contract/charts/colour.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** Markup, a breaking-out of a script, a formula: whoever writes a plan may write any of it. */
const markup = `</script><img src=x onerror=alert(1)>"'`;
const formula = "=HYPERLINK(1)";
const hostile = JSON.stringify({
  format: 1,
  title: `Shed ${markup}`,
  note: markup,
  start: "2027-02-01",
  people: [{ id: "ann", name: `Ann ${markup}`, rate: 100 }],
  approvals: [{ who: "ann", decision: "pending" }],
  risks: [{ id: "rain", name: markup, probability: 0.3, impacts: [{ tasks: "strip", delay: [1, 2, 5] }] }],
  tasks: [
    { id: "strip", name: formula, duration: [2, 3, 6], people: "ann" },
    { id: "done", name: markup, milestone: true, after: "strip" },
  ],
});

const luminance = (hex: string) => luminanceOf(linear(hex));

describe("handing over", () => {
  const served = servedPage();

  // W3C Content Security Policy 3, 6.7.3: a script is allowed by the digest of its text.
  it("names the script of the read-only page by its digest", () => {
    const digest = createHash("sha256").update(levelScript).digest("base64");
    expect(levelScriptHash).toBe(`sha256-${digest}`);
  });

  it("writes files that other programs read, and pages in which a hostile plan is only text", async () => {
    const { page, troubles, close } = await served.open();
    await page.locator("#plan-text").fill(hostile);
    await settled(page);
    await page.locator("h1", { hasText: "Shed" }).waitFor();
    await written(page);

    // RFC 4180 as an independent reader has it; a formula is neutralised (CWE-1236).
    const rows: string[][] = parse(await saved(page, "Tasks"), { bom: true });
    expect(rows.flat()).toContain(`'${formula}`);
    expect(rows.flat()).toContain(markup);

    // RFC 5545 as an independent reader has it.
    const events = Object.values(ical.sync.parseICS(await saved(page, "Milestones")));
    expect(events.some((event) => event?.type === "VEVENT" && event.summary === markup)).toBe(true);

    expect(JSON.parse(await saved(page, "Forecast, JSON"))).toMatchObject({ iterations: 10_000 });
    expect(await saved(page, "Save as Markdown")).not.toMatch(/(?<!\\)<img/);

    for (const name of ["Save as HTML", "Save as one page"]) {
      const html = await saved(page, name);
      const asked: string[] = [];
      const said: string[] = [];
      const reader = await served.browser.newPage();
      reader.on("request", (request) => asked.push(request.url()));
      reader.on("dialog", (dialog) => dialog.dismiss());
      reader.on("console", (message) => said.push(message.text()));
      reader.on("pageerror", (error) => said.push(String(error)));
      await reader.setContent(html);
      expect(await reader.locator("img, link, iframe").count()).toBe(0);
      expect(await reader.locator("h1").textContent()).toContain("<img src=x");
      expect(asked.filter((address) => !address.startsWith("data:"))).toEqual([]);
      expect(said).toEqual([]);
      await reader.close();
    }
    expect(troubles).toEqual([]);
    await close();
  });

  it("moves the level on the read-only page by keys, and says where that comes from", async () => {
    const { page, close } = await served.open();
    await written(page);
    const html = await saved(page, "Save as one page");
    const date = (await page.locator(".sentence .date").textContent()) ?? "";
    const reader = await served.browser.newPage({ viewport: { width: 390, height: 900 } });
    await reader.setContent(html);
    expect(await reader.locator(".answer").textContent()).toContain(date.trim());
    await reader.locator("#level").focus();
    await reader.keyboard.press("ArrowRight");
    expect(await reader.locator("#reading").textContent()).toMatch(/^81\s%/);
    expect(await reader.locator("#read-off").textContent()).toContain("Read off the curve");
    expect(await reader.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    // Nothing on a telephone is cut, and every value of the work has its head beside it.
    await reader.evaluate(() => {
      for (const closed of document.querySelectorAll("details")) closed.open = true;
    });
    expect(
      await reader.evaluate(() =>
        [...document.querySelectorAll(".wide")]
          .filter((room) => room.scrollWidth > room.clientWidth + 1)
          .map((room) => room.getAttribute("aria-label")),
      ),
    ).toEqual([]);
    const first = reader
      .locator("section", { has: reader.locator("h2", { hasText: /^Work$/ }) })
      .locator("tbody tr");
    expect(await first.first().locator("td").first().getAttribute("data-head")).toBe("P10");
    // The tint of the curve ends at P90, which is where the line stands then, in either drawing.
    for (let level = 81; level < 90; level++) await reader.keyboard.press("ArrowRight");
    expect(await reader.locator("#reading").textContent()).toMatch(/^90\s%/);
    for (const width of [390, 1280]) {
      await reader.setViewportSize({ width, height: 900 });
      for (const { line, tint } of await reader.evaluate(lineAndTint)) {
        expect(Math.abs(line - tint), `at ${width} px, of ${tint}`).toBeLessThan(2.5);
      }
      expect(await reader.evaluate(lineAndTint)).toHaveLength(2);
    }
    expect(await violations(reader)).toEqual([]);

    // WCAG 2.2, 1.4.3 and 1.4.11, on a dark screen too: words at 4.5 to 1, what is drawn to be told apart at 3 to 1.
    const seen = await reader.evaluate(colours);
    expect(luminance(seen.paper)).toBeGreaterThan(0.8);
    await reader.emulateMedia({ colorScheme: "dark" });
    const dark = await reader.evaluate(colours);
    expect(luminance(dark.paper)).toBeLessThan(0.05);
    expect(await violations(reader)).toEqual([]);
    expect(dark.words.length).toBeGreaterThan(20);
    for (const word of dark.words) expect(contrast(word, dark.paper), word).toBeGreaterThanOrEqual(4.5);
    expect(contrast(dark.line, dark.paper)).toBeGreaterThanOrEqual(3);
    // Every colour has gone over to the other theme, each to one of its own, in every drawing.
    const [was, is] = [Object.values({ ...palette("light") }), Object.values({ ...palette("dark") })];
    expect(seen.drawn.filter((colour) => !was.includes(colour))).toEqual([]);
    expect(dark.drawn.filter((colour) => !is.includes(colour))).toEqual([]);
    expect(dark.drawn).toEqual(seen.drawn.map((colour) => is[was.indexOf(colour)]));
    // Paper is light, whatever the screen is.
    await reader.emulateMedia({ colorScheme: "dark", media: "print" });
    const printed = await reader.evaluate(colours);
    expect(printed.paper).toBe("#ffffff");
    expect(printed.drawn).toEqual(seen.drawn);
    await reader.emulateMedia({ colorScheme: "light", media: "screen" });

    const still = await served.browser.newPage({ javaScriptEnabled: false });
    await still.setContent(html);
    expect(await still.locator("#mover").isVisible()).toBe(false);
    expect(await still.locator("figure svg").first().isVisible()).toBe(true);
    await close();
  }, 120_000);
});

/** As the reader sees them, "#rrggbb": the page's ground, the words and marks of its drawings, the line over them. */
function colours(): { paper: string; line: string; words: string[]; drawn: string[] } {
  const hex = (colour: string) =>
    `#${(colour.match(/\d+/g) ?? [])
      .slice(0, 3)
      .map((part) => Number(part).toString(16).padStart(2, "0"))
      .join("")}`;
  const of = (element: Element, what: "fill" | "stroke") => hex(getComputedStyle(element)[what]);
  const parts = [...document.querySelectorAll(".drawing svg, .drawing svg *")];
  const line = document.querySelector(".line");
  return {
    paper: hex(getComputedStyle(document.body).backgroundColor),
    line: line === null ? "" : hex(getComputedStyle(line).borderLeftColor),
    words: parts.filter((part) => part.localName === "text").map((part) => of(part, "fill")),
    drawn: parts.flatMap((part) =>
      (["fill", "stroke"] as const).flatMap((what) =>
        (part.getAttribute(what) ?? "none") === "none" ? [] : [of(part, what)],
      ),
    ),
  };
}

/** Of each curve that is seen: where its line stands, and where the narrowest of its tints ends; px of the window. */
function lineAndTint(): { line: number; tint: number }[] {
  return [...document.querySelectorAll<HTMLElement>(".drawing")].flatMap((drawing) => {
    const line = drawing.querySelector("[data-line]");
    if (line === null || !drawing.checkVisibility()) return [];
    const boxes = [...drawing.querySelectorAll("path")].map((path) => path.getBoundingClientRect());
    const narrowest = boxes.sort((a, b) => a.width - b.width).find(({ width }) => width > 40);
    return [{ line: line.getBoundingClientRect().left, tint: narrowest?.right ?? Number.NaN }];
  });
}

/** Goes to the end of the page and waits until the brief is there. */
async function written(page: Page): Promise<void> {
  await page.locator("#hand-over").evaluate((section) => section.scrollIntoView());
  await page.getByRole("button", { name: "Save as one page", disabled: false }).waitFor({ timeout: 100_000 });
}

async function saved(page: Page, name: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.locator("leeway-hand-over").getByRole("button", { name }).first().click(),
  ]);
  return textOf(download);
}

async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), "utf8");
}
