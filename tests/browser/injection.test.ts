import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { hostilePlan, planSaying } from "../hostile/injection/hostilePlan.ts";
import { bare } from "../hostile/injection/shape.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

/**
 * Says, without a value, that a section still shows the answer to the plan before: there or not as the moment is. And which
 * cell of a row mends what was found: by the kind of finding, in the page's own words.
 */
const ownState = /^leeway-[a-z-]+ older$|^a data-within$/;
/** What Markdown may become where the plan's own free text is shown (words/markdown.ts lists it); and what comes with findings and answers, which differ. */
const markdown =
  /^(?:p|h[3-6]|ul|ol|li|blockquote|pre|code|em|strong|s|br|hr|table|thead|tbody|tr|th|td)(?: dir| start)?$|^a(?: href| target| rel)?$|^leeway-[a-z-]+ answered$|^li class$/;

/** Kinds of elements and attributes of the page, and whether a script of the plan ran. */
function anatomy(): { kinds: string[]; ran: boolean; text: string } {
  const elements = [...document.querySelectorAll("body *")];
  for (const element of elements.slice(0, 4000)) element.dispatchEvent(new Event("mouseover"));
  const kinds = elements.flatMap((element) => [
    element.localName,
    ...[...element.attributes].map(({ name }) => `${element.localName} ${name}`),
  ]);
  const inputs = [...document.querySelectorAll("input, textarea")].map((one) => Reflect.get(one, "value"));
  return {
    kinds: [...new Set(kinds)].sort(),
    ran: "ran" in window,
    text: `${document.body.textContent}\n${inputs.join("\n")}`,
  };
}

async function shown(page: Page, text: string, title: string) {
  await page.locator("#plan-text").fill(text);
  await page.locator("h1", { hasText: title }).waitFor();
  await settled(page);
  // From the top: the line of the bar is only said once the sentence is out of sight.
  await page.evaluate(() => scrollTo(0, 0));
  await page.locator(".bar-answer.away").waitFor({ state: "attached" });
  return page.evaluate(anatomy);
}

// A plan that says something hostile in every field (tests/hostile/injection) on the page itself, in Chromium: the measure
// is the same plan with harmless words in the same fields.
describe("a hostile plan on the page", () => {
  const served = servedPage();

  it("is text, and nothing else", async () => {
    const { page, troubles, requests, close } = await served.open();
    page.setDefaultTimeout(90_000);
    const asked = requests.length;
    const harmless = await shown(page, planSaying((field) => `w${field}w some words`).text, "w0w");
    // The tags of a title, then something of every kind in every other field.
    for (const turn of [1, 14]) {
      const { text, said } = hostilePlan(turn);
      const hostile = await shown(page, text, bare(said[0] ?? "").slice(0, 12));
      expect(hostile.ran).toBe(false);
      const more = hostile.kinds.filter((kind) => !harmless.kinds.includes(kind));
      expect(more.filter((kind) => !markdown.test(kind) && !ownState.test(kind))).toEqual([]);
      expect(bare(hostile.text)).toContain(bare(said[0] ?? ""));
    }
    expect(requests.slice(asked).filter((address) => !address.startsWith(served.built.address))).toEqual([]);
    expect(troubles).toEqual([]);
    await close();
  }, 300_000);
});
