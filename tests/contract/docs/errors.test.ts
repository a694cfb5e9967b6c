// Every code that can be told is explained, in the help and on the page docs/errors.md. The codes are gathered from the
// syntax of the sources (emittedCodes.ts), so that a new one cannot be forgotten. To write the page anew:
//   LEEWAY_WRITE_OUTPUT=1 npx vitest run --project unit tests/contract/docs/errors.test.ts
import { readFileSync, writeFileSync } from "node:fs";
import { checkRules, measureRules, problemFamilies } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { callRules } from "../../../apps/command/src/call/callRules.ts";
import { codeHelp, codes } from "../../../apps/command/src/call/codeHelp.ts";
import { root, writing } from "../examples/places.ts";
import { emittedCodes } from "./emittedCodes.ts";
import { errorsPage } from "./errorsPage.ts";

const file = `${root}docs/errors.md`;
const families = [...problemFamilies, callRules];
const explained = families.flatMap(({ rules }) => rules.map(({ code }) => code));

describe("docs/errors.md", () => {
  it("is current, with one heading for each code", () => {
    if (writing) writeFileSync(file, errorsPage());
    const page = readFileSync(file, "utf8");
    expect(page).toBe(errorsPage());
    const headings = [...page.matchAll(/^### (.+)$/gm)].map(([, code]) => code);
    expect(headings).toEqual(explained);
    expect(new Set(headings).size).toBe(headings.length);
  });

  it("explains every code the sources can tell, and no other", () => {
    const findings = new Set([...checkRules, ...measureRules].map(({ code }) => code as string));
    const emitted = emittedCodes();
    // The gathering itself works: these four come by four different ways (an object, a method, a variable, a parameter).
    for (const code of ["no-such-future", "unknown-key", "several-documents", "json-syntax"]) {
      expect(emitted.map((each) => each.code)).toContain(code);
    }
    const outside = emitted.filter(({ file }) => !/\/(problems|findings)\/|callRules\.ts$/.test(file));
    const told = outside.filter(({ code }) => !findings.has(code));
    const known = new Set(explained);
    expect(told.filter(({ code }) => !known.has(code))).toEqual([]);
    const all = new Set(outside.map(({ code }) => code));
    expect(explained.filter((code) => !all.has(code))).toEqual([]);
  });

  it("says of each code what it is, the rule, why and the way out, each as a sentence", () => {
    for (const { code, ...says } of families.flatMap(({ rules }) => rules)) {
      expect(Object.keys(says)).toEqual(["what", "rule", "why", "remedy"]);
      for (const text of Object.values(says)) expect(text, code).toMatch(/^[A-Z0-9`].*\.$/);
    }
  });
});

describe("leeway help CODE", () => {
  it("has something to say of every problem and every finding", () => {
    expect(codes).toEqual([...explained, ...checkRules.map(({ code }) => code)]);
    for (const code of codes) expect(codeHelp(code, 80), code).toMatch(/The way out: ./);
  });

  it("tells a problem and a finding of the same name apart, and knows nothing of other words", () => {
    const text = codeHelp("open-objection", 200);
    expect(text).toMatch(/^open-objection: a problem$/m);
    expect(codeHelp("no-such-code", 80)).toBeUndefined();
  });
});
