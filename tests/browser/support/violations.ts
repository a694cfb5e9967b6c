import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * Rules of WCAG 2.0 to 2.2, levels A and AA, as axe-core checks them, and its own best practices.
 *
 * @param within  Only this part of the page: the whole of it takes long.
 */
export async function violations(page: Page, within = "html"): Promise<string[]> {
  // The policy of the page forbids added scripts; the tool is evaluated by the debugger instead.
  await page.evaluate(axe);
  return page.evaluate(async (part) => {
    const tool: unknown = Reflect.get(window, "axe");
    if (typeof tool !== "object" || tool === null || !("run" in tool) || typeof tool.run !== "function") {
      throw new Error("axe-core did not load");
    }
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const result = await tool.run(part, { runOnly: tags });
    return result.violations.map(
      (one: { id: string; nodes: { html: string; failureSummary: string }[] }) =>
        `${one.id}: ${one.nodes
          .slice(0, 3)
          .map((node) => `${node.html.slice(0, 160)} ${node.failureSummary}`)
          .join(" | ")}`,
    );
  }, within);
}
