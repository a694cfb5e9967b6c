/**
 * One edit of a cell that moves the answer, chosen by a number; every fifth is an undo instead.
 *
 * @param {import("playwright-core").Page} page
 * @param {number} n
 * @returns {Promise<number>} ms from Enter to the frame with the full answer
 */
export async function randomEdit(page, n) {
  const x = Math.imul(n + 1, 0x9e3779b1) >>> 0;
  await page.evaluate(() => {
    window.began = undefined;
    addEventListener("keydown", (event) => (window.began ??= event.timeStamp), { once: true, capture: true });
  });
  if (n % 5 === 4) await page.keyboard.press("Control+z");
  else {
    const cells = page.locator("leeway-tasks input[data-column='3']:not([readonly])");
    await cells.first().waitFor();
    const cell = cells.nth(x % (await cells.count()));
    const value = Number(await cell.inputValue());
    // Up or down a little, and never below what is likely: the edit must be one.
    const likely = await cell.evaluate((input) =>
      Number(input.closest("tr")?.querySelector("input[data-column='2']")?.value ?? 1),
    );
    await cell.fill(String(Math.max(likely, value + ((x >>> 8) % 7) - 3) + 1));
    await page.evaluate(() => {
      window.began = undefined;
      addEventListener("keydown", (event) => (window.began ??= event.timeStamp), {
        once: true,
        capture: true,
      });
    });
    await cell.press("Enter");
  }
  return page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const from = performance.now();
        const look = () => {
          const element = document.querySelector("leeway-answer");
          const main = document.querySelector("main");
          const { answer, current } = element?.state ?? {};
          const there = answer?.stage === "full" && answer.plan === current && main?.dataset.busy === "false";
          if (there) resolve(performance.now() - (window.began ?? from));
          else if (performance.now() - from > 100_000) reject(new Error("No answer."));
          else requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      }),
  );
}

/**
 * Bytes of the page's JavaScript heap after a collection.
 *
 * @param {import("playwright-core").CDPSession} session
 */
export async function heapOf(session) {
  await session.send("HeapProfiler.collectGarbage");
  const { usedSize } = await session.send("Runtime.getHeapUsage");
  return usedSize;
}

/**
 * How much a series grows from one value to the next: the median of the slopes between any two of its values, which one
 * odd value does not move (Theil and Sen; recalled).
 *
 * @param {readonly number[]} values
 */
export function slopeOf(values) {
  const slopes = values
    .flatMap((to, k) => values.slice(0, k).map((from, i) => (to - from) / (k - i)))
    .sort((a, b) => a - b);
  const half = slopes.length / 2;
  return ((slopes[Math.ceil(half) - 1] ?? Number.NaN) + (slopes[Math.floor(half)] ?? Number.NaN)) / 2;
}
