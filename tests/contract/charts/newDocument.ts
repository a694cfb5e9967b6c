import { createRequire } from "node:module";

/** The one thing the tests use of jsdom, which brings no types of its own. */
type Jsdom = { JSDOM: new (html: string) => { window: { document: Document } } };

/** An empty page, as a program without a browser makes one: there is no global `window`. */
export function newDocument(): Document {
  const loaded: unknown = createRequire(import.meta.url)("jsdom");
  const { JSDOM } = loaded as Jsdom; // a CommonJS module without types: its shape is stated above
  return new JSDOM("<!doctype html><html lang='en'><body></body></html>").window.document;
}
