import { createRequire } from "node:module";

interface Window {
  document: Document;
  close(): void;
}
/** The one thing used of jsdom here, which brings no types of its own. */
type Jsdom = { JSDOM: new (html: string, options: { runScripts: "dangerously" }) => { window: Window } };
const { JSDOM } = createRequire(import.meta.url)("jsdom") as Jsdom; // CommonJS without types: its shape is stated above

export interface Opened {
  /** Kinds of elements and attributes that are there, and of the values of those attributes that may do something. */
  kinds: string[];
  /** Elements by name. */
  count: (name: string) => number;
  /** What a reader reads, runs of blanks as one. */
  text: string;
  /** A script of the plan ran. */
  ran: boolean;
}

/** Opens a document in a browser that runs scripts: jsdom, whose parser is that of the HTML standard (parse5). */
export function opened(html: string): Opened {
  const { window } = new JSDOM(html, { runScripts: "dangerously" });
  const elements = [...window.document.querySelectorAll("*")];
  for (const element of elements) {
    for (const event of ["click", "mouseover", "focus", "load", "error", "begin", "toggle"])
      element.dispatchEvent(new (Reflect.get(window, "Event"))(event));
  }
  const kinds = new Set(
    elements.flatMap((element) => [
      element.localName,
      // A figure leads to where it is explained on the same page: that alone does nothing.
      ...[...element.attributes].map(({ name, value }) =>
        name === "href" && value === "#commitment" ? "leads to a section" : `${element.localName} ${name}`,
      ),
    ]),
  );
  const found = {
    kinds: [...kinds].sort(),
    count: (name: string) => elements.filter(({ localName }) => localName === name).length,
    text: bare(
      elements
        .filter(({ localName }) => localName !== "style" && localName !== "script")
        .flatMap((element) => [
          ...[...element.childNodes]
            .filter(({ nodeType }) => nodeType === 3)
            .map(({ nodeValue }) => nodeValue ?? ""),
        ])
        .join("\n"),
    ),
    ran: "ran" in window,
  };
  window.close();
  return found;
}

/** A text as it may be shown: without controls and turns of direction, runs of blanks as one. */
export function bare(text: string): string {
  return text
    .replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]/g, "")
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, " ")
    .trim();
}
