import { expect, it } from "vitest";
import { heapOf, randomEdit } from "../bench/randomEdits.mjs";
import { servedPage } from "./support/servedPage.ts";

const served = servedPage();

/** Answers kept for undo: until there are as many, the heap grows as it should. */
const keptAnswers = 24;
/** Bytes that thirty steps of undo may take, texts of 40,000 letters among them, and as much again for what varies. */
const most = 30 * 40_000 * 2 * 2;

// The long one, with times: `npm run soak`. Here only that an edit leaves nothing behind but its step of undo.
it("takes no more memory with every edit", async () => {
  const { page, close } = await served.open();
  page.setDefaultTimeout(90_000);
  const session = await page.context().newCDPSession(page);
  let before = 0;
  for (let n = 0; n < 60; n++) {
    if (n === keptAnswers + 6) before = await heapOf(session);
    await randomEdit(page, n);
  }
  expect((await heapOf(session)) - before).toBeLessThan(most);
  await close();
}, 300_000);
