// The page of the checks says what the table says. To write it anew:
//   LEEWAY_WRITE_OUTPUT=1 npx vitest run --project unit tests/contract/findings/page.test.ts
import { readFileSync, writeFileSync } from "node:fs";
import { checkRules, measureRules } from "@leeway/core";
import { expect, it } from "vitest";
import { root, writing } from "../examples/places.ts";
import { findingsPage } from "./findingsPage.ts";

const file = `${root}packages/core/FINDINGS.md`;

it("FINDINGS.md is current, with one heading for each code", () => {
  if (writing) writeFileSync(file, findingsPage());
  const page = readFileSync(file, "utf8");
  expect(page).toBe(findingsPage());
  const headings = [...page.matchAll(/^### (.+)$/gm)].map(([, code]) => code);
  expect(headings).toEqual(checkRules.map(({ code }) => code));
});

it("names each code once, findings and measures alike", () => {
  for (const list of [checkRules, measureRules]) {
    const codes = list.map(({ code }) => code as string);
    expect(new Set(codes).size).toBe(codes.length);
  }
});
