import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

// Of four equally likely values 92, 94, 96 and 98 three are at least 94 and one is at least 97: counted by hand.
const plan = `${smallPlan}purpose:
  quality:
    - id: level
      statement: The floor is level
      atLeast: 94 # in a hundred
      unit: points in a hundred
      expected: { outcomes: [{ value: 92, chance: 0.25 }, { value: 94, chance: 0.25 }, { value: 96, chance: 0.25 }, { value: 98, chance: 0.25 }] }
`;

/** An edit is in the text once it was read; a machine that is busy takes its time. */
const slow = { timeout: 30_000 };

describe("quality bars on the page", () => {
  const served = servedPage();

  it.each([1280, 390])(
    "at %i px say how likely they hold, are changed, measured and added",
    async (width) => {
      const { page, troubles, close } = await served.open({
        viewport: { width, height: 900 },
      });
      const text = page.locator("#plan-text");
      await text.fill(plan);
      await page.locator("h1", { hasText: "Boat shed" }).waitFor();
      await settled(page);
      const table = page.locator("leeway-purpose table", { hasText: "What has to hold" });
      const row = table.locator("tbody tr").first();
      const enter = async (column: string, value: string) => {
        const input = row.locator(`input[data-column="${column}"]`);
        await input.fill(value);
        await input.press("Enter");
      };
      await row.getByText("75 % chance").waitFor();
      expect(await violations(page)).toEqual([]);
      await enter("1", "97");
      await row.getByText("25 % chance").waitFor();
      await expect.poll(() => text.inputValue(), slow).toContain("atLeast: 97 # in a hundred");
      await enter("4", "96.5");
      await row.getByText("no", { exact: true }).waitFor();
      await enter("4", "");
      await row.getByText("25 % chance").waitFor();
      await enter("1", "many");
      await page.locator("leeway-purpose", { hasText: "“many” is not a number" }).waitFor();
      await enter("1", "97");
      await settled(page);

      await page.getByRole("button", { name: "Add a quality bar" }).press("Enter");
      await page.locator("leeway-purpose input[data-cell=statement]").fill("Damp in the frame");
      await page.locator("leeway-purpose input[data-cell=statement]").press("Enter");
      await page.locator("leeway-purpose", { hasText: "Give the bar one number" }).waitFor();
      await page.locator("leeway-purpose input[data-cell=atMost]").fill("18");
      await page.locator("leeway-purpose input[data-cell=atMost]").press("Enter");
      await table.locator("tbody tr", { hasText: "unknown" }).waitFor();
      const added = { id: "damp-in-the-frame", statement: "Damp in the frame", atMost: 18 };
      await expect.poll(async () => parse(await text.inputValue()).purpose.quality[1], slow).toEqual(added);
      expect(troubles).toEqual([]);
      await close();
    },
  );
});
