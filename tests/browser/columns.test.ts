import { beforeAll, describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import type { Notebook } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

// Common practice, no source: what a column holds begins, or ends, where its head does.
describe("tables of the page", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
    notebook.page.setDefaultTimeout(90_000);
    await fillPlan(notebook.page, smallPlan);
  });

  it.each([
    ["changes", ".versions", 1280],
    ["changes", ".versions", 390],
    ["money", ".levels", 1280],
    ["commitment", ".levels", 1280],
  ])("have their heads in line with their columns: %s %s at %i px", async (section, table, width) => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 900 });
    const one = page.locator(`#${section} ${table}`).first();
    if (section === "changes" && (await one.count()) === 0) {
      await page.getByLabel("Name this version").fill("As agreed with the harbour office");
      await page.keyboard.press("Enter");
    }
    await page.locator(`#${section}`).evaluate((room) => room.scrollIntoView());
    await one.waitFor();
    expect(
      await one.evaluate((found) => {
        const place = (cell: Element): DOMRect => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          return range.getBoundingClientRect();
        };
        const heads = [...found.querySelectorAll("thead tr:last-child th")];
        const row = found.querySelector("tbody tr");
        const off: string[] = [];
        heads.forEach((head, at) => {
          const cell = row?.children[at];
          if (
            cell === undefined ||
            (head.textContent ?? "").trim() === "" ||
            head.querySelector(".unseen") !== null
          )
            return;
          const [above, below] = [place(head), place(cell)];
          if (Math.abs(above.left - below.left) > 1.5 && Math.abs(above.right - below.right) > 1.5)
            off.push(`${head.textContent}: ${above.left}–${above.right} over ${below.left}–${below.right}`);
        });
        return heads.length === 0 || row === null ? ["no table"] : off;
      }),
    ).toEqual([]);
  });
});
