import { checkRules, planFindings, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { type ToldFinding, tellFindings } from "../../apps/notebook/src/asking/tellFindings.ts";
import { ownPlan } from "../../apps/notebook/src/beginning/ownPlan.ts";
import { countBySection, sectionOf } from "../../apps/notebook/src/elements/findingSections.ts";
import { findingLines } from "../../apps/notebook/src/words/findingLines.ts";
import { pageWords } from "../../apps/notebook/src/words/pageWords.ts";

const days = { low: "2", likely: "3", high: "6" };
const strands = ["Roof. Old", "Walls. Old", "Floor", "Paint"].map((name) => ({ name, ...days }));

/** What is found in the plan that the page's form makes of four tasks. */
function found(): ToldFinding[] {
  const worries = [{ name: "A storm", chance: "20", ...days }];
  const made = ownPlan({ title: "Shed", start: "2027-02-01", finish: "Done", strands, worries });
  if ("problems" in made) throw new Error(made.problems.join());
  const { plan } = readPlan(made.text);
  if (plan === undefined) throw new Error("the plan of the test does not read");
  return tellFindings(plan, planFindings(plan, { today: "2027-01-11" }));
}

const told = (text: string): string =>
  pageWords(text)
    .map((piece) => piece.text)
    .join("");

// What a planner who knows only the page can follow is judgement, no source.
describe("what the page says is worth a look", () => {
  it("tells alike remarks in one line, each of its names once, and counts them so", () => {
    const all = found();
    const work = all.filter((one) => sectionOf(one) === "work");
    const lines = findingLines(work);
    const several = lines.filter(({ of }) => of !== undefined);
    expect(several.map(({ of, findings }) => [of, findings.map(({ name }) => name)])).toEqual(
      [
        "4 tasks wait for nothing",
        "4 tasks have an estimate that does not say what it rests on",
        "4 tasks have an estimate for which nobody is named",
      ].map((words) => [words, strands.map(({ name }) => name)]),
    );
    expect(several.map(({ findings: [{ why }] }) => why)).toContain(
      checkRules.find(({ code }) => code === "open-start")?.why,
    );
    expect(lines.flatMap(({ findings }) => findings).length).toBe(work.length);
    expect(countBySection(all).get("work")).toBe(lines.length);
    expect(lines.length).toBe(work.length - 9);
  });

  it("keeps what each says where that is more than its name, and what is mended otherwise apart", () => {
    const [one] = found().filter(({ code }) => code === "open-start");
    if (one === undefined) throw new Error("nothing to look at");
    const own = (code: string, says: string, advice = "Ask.") => ({ ...one, code, says, advice });
    const lines = findingLines([
      own("long-task", "A takes 60 days."),
      own("long-task", "B takes 70 days."),
      own("long-task", "C takes 80 days.", "Wait."),
    ]);
    expect(lines.map(({ of, findings }) => [of, findings.map(({ says }) => says)])).toEqual([
      [undefined, ["A takes 60 days.", "B takes 70 days."]],
      [undefined, ["C takes 80 days."]],
    ]);
  });

  it("names the page's own fields", () => {
    expect(told("Name in `after` what it waits for, or a milestone from which it may begin.")).toBe(
      "Name in “Waits for” what it waits for, or a milestone from which it may begin.",
    );
    expect(told("Name one in its `accountable`, or in that of its phase.")).toContain("“Answers for it”");
    expect(pageWords("Ask `leeway reach` what it would take, or ask for another date.")).toEqual([
      { text: "See " },
      { text: "What it would take", to: "reach" },
      { text: ", or ask for another date." },
    ]);
  });

  it.each(checkRules.map(({ code, what, why, advice }) => ({ code, what, why, advice })))(
    "says of $code nothing that only the text of the plan or a call knows, or says where",
    ({ what, why, advice }) => {
      expect(`${what} ${why}`).not.toMatch(/`|leeway /);
      const words = pageWords(advice);
      expect(words.map(({ text }) => text).join("")).not.toMatch(/[`{}|]\w|\bleeway |--|PLAN/);
      const keys = words.filter(({ code }) => code === true);
      const ways = words.filter(({ to }) => to === "text");
      expect(ways.length).toBe(keys.length === 0 ? 0 : 1);
    },
  );

  it("says what stands in a text of the plan as it stands there", () => {
    expect(told("say in `expected` what it stands for")).toBe(
      "say in expected (in the plan text) what it stands for",
    );
    expect(told("say in `note` what it stands for")).toBe("say in “Note” what it stands for");
  });
});
