import { readFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { answerDate, answerSum, dayOf, drawn } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const plan = readFileSync(new URL("../../examples/quillmarsh-clinic.plan.yaml", import.meta.url), "utf8");

describe("the page opens on the example plan", () => {
  const served = servedPage();

  // Same plan, seed and number of futures give the same figures in Node and in a browser's worker: the
  // promise of the plan format ("to the bit"). The library in Node is the other side of the comparison.
  it("shows the date and the sum that the library computes in Node", async () => {
    const read = readPlan(plan);
    if (read.plan === undefined) throw new Error("The example cannot be read.");
    const { forecast: expected } = forecast(read.plan);
    if (expected === undefined) throw new Error("The example cannot be computed.");
    const notebook = await served.open();
    const { page } = notebook;
    expect(dayOf(await answerDate(page))).toBe(Date.parse(expected.committed.date) / 86_400_000);
    const sum = Number((await answerSum(page)).replace(/[^\d]/g, ""));
    expect(sum).toBeGreaterThanOrEqual(expected.committed.costLow);
    expect(sum).toBeLessThanOrEqual(expected.committed.costHigh);
    expect(await answerSum(page)).toMatch(/^EUR \d{3},\d{3}$/);
    const stamp = await page.locator(".stamp").textContent();
    expect(stamp).toContain(expected.plan.sha256);
    expect(stamp).toContain(expected.seed);
    expect(stamp?.replace(/\D/g, "")).toContain(String(expected.iterations));
    expect(stamp).toContain(expected.version);
    await notebook.close();
  });

  it("answers in one large sentence and keeps one line of it in sight", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    const sentence = page.locator(".sentence");
    const size = await sentence.evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
    const body = await page.evaluate(() => Number.parseFloat(getComputedStyle(document.body).fontSize));
    expect(size / body).toBeGreaterThanOrEqual(2);
    const weight = (selector: string) =>
      page.locator(selector).evaluate((element) => Number(getComputedStyle(element).fontWeight));
    expect(await weight(".sentence .date")).toBeGreaterThan(await weight(".sentence"));

    await page.locator("#commitment").scrollIntoViewIfNeeded();
    const line = page.locator(".bar-answer");
    await line.waitFor({ state: "visible" });
    const box = await line.boundingBox();
    expect(box?.y).toBeLessThan(60);
    expect(await line.textContent()).toContain((await answerDate(page)).slice(-4));
    expect(await line.textContent()).toContain(await answerSum(page));
    await notebook.close();
  });

  it("draws every chart, each with a heading, a description and a table", async () => {
    const notebook = await served.open();
    const { page } = notebook;
    await drawn(page);
    const figures = await page.locator("figure").evaluateAll((all) =>
      all.map((figure) => ({
        title: figure.querySelector("h3")?.textContent ?? "",
        named:
          figure.querySelector("svg")?.getAttribute("aria-labelledby") === figure.querySelector("h3")?.id,
        rows: figure.querySelectorAll("table tbody tr").length,
      })),
    );
    expect(figures).toHaveLength(6);
    for (const figure of figures) {
      expect(figure.title).toMatch(/\d/);
      expect(figure.named).toBe(true);
      expect(figure.rows).toBeGreaterThan(1);
    }
    await notebook.close();
  });
});
