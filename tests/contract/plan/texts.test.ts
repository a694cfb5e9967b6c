// Free text between the sections of the page, by the words of the format: "changes no number", and text of the plan like
// any other, so that it counts in both hashes.
import { addToPlan, forecast, readPlan, setManyInPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { HEAD, mustRead, TASK } from "./plans.ts";

const plain = HEAD + TASK;
const markdown =
  "# Why now\n\nThe lease ends:\n\n- the hall is *ours* until May\n- see [the letter](https://example.org/a)\n";

describe("texts of a plan", () => {
  it("are read in their order, with the section they stand below", () => {
    const texts =
      'texts:\n  - { after: work, text: "Two crews." }\n  - { after: purpose, text: "Why: now" }\n  - { after: work, text: 7 }\n';
    expect(mustRead(plain + texts).texts).toEqual([
      { after: "work", text: "Two crews." },
      { after: "purpose", text: "Why: now" },
      { after: "work", text: "7" },
    ]);
    expect(mustRead(`${plain}texts: { after: answer, text: Alone }\n`).texts).toEqual([
      { after: "answer", text: "Alone" },
    ]);
    expect(mustRead(plain).texts).toEqual([]);
  });

  it("count in both hashes and in no number", () => {
    const before = mustRead(plain);
    const after = mustRead(`${plain}texts: { after: work, text: Two crews }\n`);
    expect(after.sha256).not.toBe(before.sha256);
    expect(after.approvalSha256).not.toBe(before.approvalSha256);
    const numbers = (plan: typeof before) => {
      const { plan: _stamp, ...rest } = forecast(plan, { iterations: 500 }).forecast ?? {};
      return rest;
    };
    expect(numbers(after)).toEqual(numbers(before));
  });

  it("come into a plan's text as blocks of Markdown and leave every other character alone", () => {
    const added = addToPlan(plain, ["texts"], { after: "work", text: markdown });
    expect(added.problems).toEqual([]);
    expect(parse(added.text).texts[0]).toEqual({ after: "work", text: markdown });
    expect(added.text).toContain("- the hall is *ours* until May\n");
    expect(added.text.startsWith(plain.trimEnd())).toBe(true);
    const path = ["texts", 0, "text"];
    const changed = setManyInPlan(added.text, [{ path, value: "One line: now" }]);
    expect(parse(changed.text).texts[0].text).toBe("One line: now");
    expect(mustRead(changed.text).texts[0]?.text).toBe("One line: now");
  });

  it.each([
    ["an unknown section", "texts: { after: wrok, text: x }", /Write work/],
    ["no section", "texts: { text: x }", /needs `after`/],
    ["no text", "texts: { after: work }", /needs `text`/],
    ["an empty text", 'texts: { after: work, text: "  " }', /empty/],
    ["text alone", "texts: Two crews", /an object: a text/i],
    ["another word for it", "texts: { below: work, text: x }", /Did you mean `after`/],
  ])("say what is wrong with %s", (_name, line, words) => {
    const { plan, problems } = readPlan(`${plain}${line}\n`);
    expect(plan).toBeUndefined();
    expect(problems.map(({ rule, remedy }) => `${rule} ${remedy}`).join(" ")).toMatch(words);
    expect(problems[0]?.path).toMatch(/^texts/);
  });
});
