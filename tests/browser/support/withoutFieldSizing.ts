import type { BrowserContext } from "playwright-core";
import { expect } from "vitest";

/** Pages of this context get the style sheet as a browser takes it that does not know `field-sizing`. */
export async function withoutFieldSizing(context: BrowserContext): Promise<void> {
  await context.route(/\.css$/, async (route) => {
    const css = await (await route.fetch()).text();
    const without = css
      .replace(/@supports not\s*\(field-sizing:\s*content\)/g, "@supports (display: block)")
      .replace(/@supports\s*\(field-sizing:\s*content\)/g, "@supports (display: none-such)")
      .replace(/field-sizing:\s*content;?/g, "");
    expect(without).not.toContain("field-sizing");
    await route.fulfill({ body: without, contentType: "text/css" });
  });
}
