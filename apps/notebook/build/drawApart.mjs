/**
 * Prints the opening of the page as JSON (`Opening` in drawOpening.ts): `node drawApart.mjs DRAWING PLAN`, the first being
 * drawOpening.ts as it was built. A process of its own, as it has the globals of a page; and it ends when the top is drawn,
 * whatever an element has put off for later.
 */
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { JSDOM } from "jsdom";

const { window } = new JSDOM("<!doctype html><body></body>", { url: "http://localhost/" });
const lend = (name, value) => {
  if (!(name in globalThis))
    Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
};

// What no document outside a browser has; here nothing ever changes or comes into sight.
class Observer {
  observe() {}
  unobserve() {}
  disconnect() {}
}
lend("IntersectionObserver", Observer);
lend("ResizeObserver", Observer);
lend("matchMedia", () => ({ matches: false, addEventListener() {}, removeEventListener() {} }));
lend("addEventListener", () => {});
lend("removeEventListener", () => {});
lend("requestAnimationFrame", (work) => setTimeout(work));
for (const name of Object.getOwnPropertyNames(window))
  if (/^[A-Z]|^(document|customElements|navigator|window)$/.test(name)) lend(name, window[name]);

const [drawing, plan] = process.argv.slice(2);
const { drawOpening } = await import(pathToFileURL(drawing).href);
const opening = await drawOpening(readFileSync(plan, "utf8"));
process.stdout.write(JSON.stringify(opening), () => process.exit(0));
