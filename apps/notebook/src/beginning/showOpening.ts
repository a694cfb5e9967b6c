import { boundName } from "../keeping/boundName.ts";
import { nothingKept } from "../keeping/nothingKept.ts";

/** Ms that a frame is waited for: the first of a browser that has just been started may take one second. */
const longestFrame = 2000;

/**
 * On a first visit the answer to the example is read off the page as it was built, while everything else is on its way.
 * The page takes it away when it can show the same itself.
 *
 * @returns  When it is on the screen, or is not to be: what takes long comes after that.
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
  await onScreen();
}

/** Resolves after the next frame; a page in the background has none, and need not wait. */
async function onScreen(): Promise<void> {
  if (document.visibilityState === "hidden") return;
  const { port1, port2 } = new MessageChannel();
  await new Promise<void>((resolve) => {
    port1.onmessage = () => resolve();
    requestAnimationFrame(() => port2.postMessage(undefined));
    setTimeout(resolve, longestFrame);
  });
}
