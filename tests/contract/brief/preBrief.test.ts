// The pre-brief: whose questions come first, and that answers are those of the same run. Which words bring which
// questions forward is common practice, no source: packages/core/src/brief/interests.ts.
import { preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { compare, interestRules, preBriefOf, reach } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { briefed, examplePlan, fullPlan, planOf } from "./plans.ts";

const plan = planOf(fullPlan);
const { brief, answers } = briefed(plan, 300);
const keys = (who: string) => preBriefOf(plan, brief, answers, who).questions.map(({ key }) => key);
const text = (who: string) => sheetMarkdown(preBriefSheet(preBriefOf(plan, brief, answers, who)));

describe("questions", () => {
  it("begin with what is asked and end with what brings the plan back, each once", () => {
    for (const who of ["bo", "cy", "ada"]) {
      const found = keys(who);
      expect(found[0]).toBe("ask");
      expect(found.at(-1)).toBe("back");
      expect(new Set(found).size).toBe(found.length);
    }
  });

  it("put money first for who keeps it, and the work first for who looks after safety", () => {
    expect(keys("bo").slice(1, 3)).toEqual(["afford", "cut"]);
    expect(keys("cy").slice(1, 3)).toEqual(["scope", "drivers"]);
  });

  it("say which word brought them forward", () => {
    const questions = preBriefOf(plan, brief, answers, "bo").questions;
    expect(questions.find(({ key }) => key === "afford")?.because).toBe("Treasurer");
    expect(text("bo")).toContain("“Treasurer”");
  });

  it("are the usual ones where neither role nor interest says anything", () => {
    expect(keys("ada").slice(0, 3)).toEqual(["ask", "level", "gap"]);
    expect(text("ada")).toContain("these are the usual ones");
  });

  it("leave out what the plan cannot answer", () => {
    const bare = planOf(
      "format: 1\ntitle: T\nstart: 2027-01-04\ntasks: [{ id: a, name: A, duration: [2, 3, 5] }]\nstakeholders: [{ id: x, name: X, role: Treasurer }]\n",
    );
    const own = briefed(bare, 100);
    const found = preBriefOf(bare, own.brief, own.answers, "x").questions.map(({ key }) => key);
    expect(found).not.toContain("afford");
    expect(found).not.toContain("changed");
    expect(found).not.toContain("responses");
    expect(found).toContain("level");
  });

  it("hold every rule to words in lower case that begin a word", () => {
    for (const { words } of interestRules) for (const word of words) expect(word).toMatch(/^\p{Ll}+$/u);
  });
});

describe("answers", () => {
  it("set the signing limit against the committed sum", () => {
    expect(text("bo")).toMatch(/You may approve up to EUR 2,000; EUR [\d,]+ is above it/);
    expect(text("cy")).toContain("The plan states no limit to what you may approve.");
  });

  it("tell what this person has objected, and nobody else", () => {
    expect(text("bo")).toContain("It is too dear");
    expect(text("bo")).not.toContain("It is too late");
  });

  it("name the objections that nearly every plan meets, with this plan's figures", () => {
    const said = text("bo");
    for (const words of [
      "padding",
      "arbitrary",
      "one date",
      "will spend it",
      "team's fear",
      "not consulted",
    ]) {
      expect(said).toContain(words);
    }
    expect(said).toContain("1 of 3 uncertain estimates say why");
  });

  it("have levels and walk of the same run", () => {
    const { figures } = preBriefOf(plan, brief, answers, "bo");
    expect(figures.steps).toBe(answers.confidence.steps);
    expect(figures.walk).toBe(answers.explanation.walk);
  });

  it("say what would make the asked date and sum even, when it was worked out", () => {
    const even = reach(plan, { iterations: 300, confidence: 0.5 }).reach;
    if (even === undefined) throw new Error("reach has no answer");
    const pre = preBriefOf(plan, brief, answers, "cy", { even });
    expect(pre.figures.even?.chance).toBe(even.chance);
    expect(sheetMarkdown(preBriefSheet(pre))).toContain("19 Feb 2027 and EUR 2,600");
  });

  it("say what moved since a version, with moves that add up as read", () => {
    const old = planOf(
      fullPlan.replace("duration: [4, 5, 9]", "duration: [3, 4, 6]").replace("cost: 400", "cost: 350"),
    );
    const { comparison } = compare(old, plan, { iterations: 300 });
    if (comparison === undefined) throw new Error("compare has no answer");
    const pre = preBriefOf(plan, brief, answers, "bo", { comparison });
    expect(pre.questions[1]?.key).toBe("changed");
    const said = sheetMarkdown(preBriefSheet(pre));
    expect(said).toContain("What changed since I last saw it?");
    expect(said).toContain("The whole");
  });

  it("answer every question of the clinic's approvers", () => {
    const clinic = examplePlan("quillmarsh-clinic");
    const own = briefed(clinic, 200);
    for (const { who } of clinic.approvals) {
      const sheet = preBriefSheet(preBriefOf(clinic, own.brief, own.answers, who));
      for (const { title, blocks } of sheet.sections) {
        expect(title).not.toBe("");
        expect(blocks.length).toBeGreaterThan(0);
      }
      expect(sheetMarkdown(sheet)).not.toMatch(/undefined|NaN|not known|\[object/);
    }
  });
});
