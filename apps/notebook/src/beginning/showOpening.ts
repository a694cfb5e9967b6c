import { boundName } from "../keeping/boundName.ts";
import { nothingKept } from "../keeping/nothingKept.ts";

/**
 * On a first visit the answer to the example is read off the page as it was built, while everything else is on its way.
 * The page takes it away when it can show the same itself.
 */
export async function showOpening(): Promise<void> {
  if (!(await nothingKept())) return;
  if (document.readyState === "loading")
    await new Promise((resolve) => addEventListener("DOMContentLoaded", resolve, { once: true }));
  const template = document.querySelector("template#opening");
  const page = document.querySelector("leeway-page");
  if (!(template instanceof HTMLTemplateElement) || boundName() !== undefined) return;
  if (page === null || page.childElementCount > 0) return;
  const still = document.createElement("div");
  still.className = "opening";
  // Nothing in it works yet, and whoever listens hears the page itself in a moment.
  still.inert = true;
  still.append(template.content.cloneNode(true));
  page.append(still);
}
