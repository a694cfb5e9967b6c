import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";

// What makes markup or a program of a text, and what can send something: nowhere in the page and the charts but in the
// places named here, each with its reason. The list of such sinks: Trusted Types (W3C) and the OWASP cheat sheet on
// DOM-based XSS, recalled from memory.

const root = fileURLToPath(new URL("../../../", import.meta.url));
const rooms = ["apps/notebook/src", "apps/notebook/build", "packages/charts/src", "packages/parallel/src"];

const MARKUP =
  /\b(?:innerHTML|outerHTML|insertAdjacentHTML|createContextualFragment|setHTMLUnsafe|setHTML|srcdoc|DOMParser|unsafeHTML|unsafeSVG|unsafeMathML|unsafeStatic|unsafeCSS)\b|document\.write/;
const PROGRAM = /\beval\s*\(|new Function\b|\bset(?:Timeout|Interval)\(\s*["'`]|javascript:/;
const SENDING =
  /\b(?:fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|RTCPeerConnection|importScripts)\s*\(/;
/** Addresses and handlers that a template takes from a value. */
const ADDRESS = /\b(?:href|src|action|formaction|on[a-z]+|style)=["']?\$\{/;

const allowed: Record<string, string> = {
  "apps/notebook/src/keeping/diskShelf.ts":
    "sends the plan to the file that `leeway open` serves, at its own address",
  "apps/notebook/build/offline.ts": "the offline copy asks for the page's own files",
};

/** Places where such a word stands and nothing of a plan becomes markup. */
const known: Record<string, string> = {
  "apps/notebook/build/drawOpening.ts":
    "reads the top of the page off its own elements at the build, of the example alone",
  "apps/notebook/src/elements/leewayOutline.ts": "links within the page, to sections that it names itself",
  "apps/notebook/src/words/markdown.ts": "reads markup off nodes that were made by hand; none is put in",
};

const files = rooms.flatMap((room) =>
  readdirSync(join(root, room), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(?:ts|js|html)$/.test(name))
    .map((name) => `${room}/${name.replaceAll("\\", "/")}`),
);

function found(pattern: RegExp): string[] {
  return files.flatMap((file) =>
    readFileSync(join(root, file), "utf8")
      .split("\n")
      .flatMap((line, at) =>
        pattern.test(line) && !/^\s*(?:\*|\/\/)/.test(line) ? [`${file}:${at + 1}`] : [],
      ),
  );
}

it.each([
  ["makes markup of a text", MARKUP],
  ["makes a program of a text", PROGRAM],
  ["takes an address, a handler or a style from a value", ADDRESS],
])("nothing %s", (_, pattern) => {
  expect(files.length).toBeGreaterThan(150);
  expect(found(pattern).filter((place) => known[place.replace(/:\d+$/, "")] === undefined)).toEqual([]);
});

it("nothing is sent but from the places that are named", () => {
  const places = new Set(found(SENDING).map((place) => place.replace(/:\d+$/, "")));
  expect([...places].sort()).toEqual(Object.keys(allowed).sort());
});
