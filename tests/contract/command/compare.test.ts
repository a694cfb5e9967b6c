// compare OLD NEW. Source: the project's own published command line ("compare OLD NEW --json prints at least ...") and
// plan format; what a chance or a date is called in words is common practice, no source.
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

const clinic = readFileSync(examplePlan, "utf8");

/** The clinic with the responses of these actions adopted. */
function adopting(...actions: string[]): string {
  return actions.reduce((text, action) => {
    const at = text.indexOf(`action: ${action}`);
    if (at < 0) throw new Error(`no response "${action}" in the example`);
    const line = text.indexOf("\n", at) + 1;
    return `${text.slice(0, line)}        adopted: true\n${text.slice(line)}`;
  }, clinic);
}
const three = adopting(
  "Show the layout to the permit office before filing",
  "Pay the supplier to hold four chairs from stock",
  "Survey drains and walls before the tender",
);

interface Printed {
  confidence: number;
  from: { date: string; day: number; workingDays: number; cost: number };
  to: { date: string; day: number; workingDays: number; cost: number };
  moves: { what: string; ids: string[]; kind: string; workingDays: number; money: number }[];
  warnings: string[];
}

describe("compare OLD NEW --json", () => {
  it("prints what the command line promises, and moves that sum to the difference", async () => {
    const cwd = temporaryFolder({ "old.yaml": clinic, "new.yaml": three });
    const { code, out, err } = await leeway(["compare", "old.yaml", "new.yaml", "--json"], { cwd });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { confidence, from, to, moves }: Printed = JSON.parse(out);
    expect(confidence).toBe(0.8);
    expect(moves.map(({ kind }) => kind)).toEqual(["risks", "risks", "risks"]);
    expect(moves.map(({ ids }) => ids[0]).sort()).toEqual([
      "drain-survey",
      "pre-application-meeting",
      "reserve-stock",
    ]);
    for (const key of ["workingDays", "cost"] as const) {
      const sum = moves.reduce((total, move) => total + (key === "cost" ? move.money : move.workingDays), 0);
      expect(Math.abs(to[key] - from[key] - sum)).toBeLessThan(1e-9 * Math.abs(to[key]));
    }
    // The ends are the plans' own forecasts.
    for (const [file, end] of [
      ["old.yaml", from],
      ["new.yaml", to],
    ] as const) {
      const alone = await leeway(["forecast", file, "--json"], { cwd });
      const { committed } = JSON.parse(alone.out);
      expect(end).toMatchObject({
        date: committed.date,
        day: committed.day,
        workingDays: committed.workingDays,
        cost: committed.cost,
      });
    }
  });

  it("is the same for any number of workers, and for another order of the file", async () => {
    const cwd = temporaryFolder({ "old.yaml": clinic, "new.yaml": three });
    const words = ["compare", "old.yaml", "new.yaml", "--json", "--iterations", "3000"];
    const one = await leeway([...words, "--workers", "1"], { cwd });
    const two = await leeway([...words, "--workers", "2"], { cwd });
    expect(one.code).toBe(0);
    expect(two.out).toBe(one.out);
    // The tasks, last block but two of the file, in front of the risks: the same plan.
    const at = clinic.indexOf("\ntasks:");
    const end = clinic.indexOf("\n# ", at + 1) < 0 ? clinic.length : clinic.indexOf("\ncorrelations:");
    const risks = clinic.indexOf("\nrisks:");
    const moved =
      clinic.slice(0, risks) + clinic.slice(at, end) + clinic.slice(risks, at) + clinic.slice(end);
    const same = await leeway(["compare", "-", "old.yaml", "--json", "--iterations", "1000"], {
      cwd,
      input: moved,
    });
    expect(same.code).toBe(0);
    const printed: Printed = JSON.parse(same.out);
    expect(printed.moves).toEqual([]);
    expect(printed.from).toEqual(printed.to);
  });

  it("takes seed, iterations and confidence for both plans", async () => {
    const cwd = temporaryFolder({ "old.yaml": clinic, "new.yaml": three });
    const options = ["--seed", "another", "--iterations", "500", "--confidence", "0.9"];
    const { out } = await leeway(["compare", "old.yaml", "new.yaml", "--json", ...options], { cwd });
    const alone = await leeway(["forecast", "old.yaml", "--json", ...options], { cwd });
    const printed: Printed = JSON.parse(out);
    expect(printed.confidence).toBe(0.9);
    expect(printed.from.cost).toBe(JSON.parse(alone.out).committed.cost);
  });
});

describe("compare OLD NEW", () => {
  it("says first how far date and sum moved, then what moved them", async () => {
    const cwd = temporaryFolder({ "old.yaml": clinic, "new.yaml": three });
    const { code, out, err } = await leeway(["compare", "old.yaml", "new.yaml"], {
      cwd,
      env: { COLUMNS: "110" },
    });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const [head, , answer = ""] = out.split("\n");
    expect(head).toMatch(/^Quillmarsh Community Dental Clinic +10,000 futures$/);
    expect(answer).toMatch(
      /^The committed date moved from \w{3} \d+ \w{3} \d{4} to \w{3} \d+ \w{3} \d{4}: [\d.]+ working days earlier, and EUR [\d,]+$/,
    );
    const text = out.replace(/\n +/g, " ");
    expect(text).toContain(
      "The shipment of chairs slips: response “Pay the supplier to hold four chairs from stock” adopted, " +
        "chance from 25 % to 10 %, for EUR 4,000",
    );
    expect(text).toContain("from now on “The survey finds a repair that has to be paid” counts too");
    expect(out).toMatch(/\n +−[\d.]+ +[−+][\d,]+ {2}in all\n/);
    expect(out).toContain("leeway explain new.yaml");
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(110);
  });

  it("says so when nothing moved, and lists what changed besides", async () => {
    const cwd = temporaryFolder({
      "old.yaml": smallPlan,
      "new.yaml": smallPlan.replace(/^title: .*/m, "title: Retold"),
    });
    const { code, out } = await leeway(["compare", "old.yaml", "new.yaml"], { cwd });
    expect(code).toBe(0);
    expect(out).toMatch(/The committed date stays .*: nothing moved\./);
    expect(out).toMatch(/Changed too, without moving date or sum\n {2}The plan: title\n/);
    expect(out).not.toContain("What moved it");
  });
});

describe("a call of compare that cannot be done", () => {
  it("needs two plans, and at most one of them from standard input", async () => {
    for (const [words, said] of [
      [["compare"], "compare needs two plans."],
      [["compare", "old.yaml"], "compare needs two plans."],
      [["compare", "-", "-"], "Standard input can be one of the plans only."],
      [["compare", "a", "b", "c"], "compare takes two plans."],
    ] as const) {
      const { code, out, err } = await leeway([...words]);
      expect({ code, out }).toEqual({ code: 2, out: "" });
      expect(err).toContain(said);
    }
  });

  it("lists the problems of both plans, each with its file", async () => {
    const cwd = temporaryFolder({
      "old.yaml": smallPlan.replace(/^title:/m, "titel:"),
      "new.yaml": smallPlan.replace(/probability: [\d.]+/, "probability: 30%"),
    });
    const { code, out, err } = await leeway(["compare", "old.yaml", "new.yaml"], { cwd });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/old\.yaml:\d+:\d+ titel/);
    expect(err).toMatch(/new\.yaml:\d+:\d+ risks\[0\]\.probability/);
    const missing = await leeway(["compare", "old.yaml", "nowhere.yaml"], { cwd });
    expect(missing.code).toBe(2);
    expect(missing.err).toMatch(/old\.yaml:\d+:\d+ titel/);
    expect(missing.err).toContain("nowhere.yaml");
    const twice = await leeway(["compare", "old.yaml", "old.yaml"], { cwd });
    expect(twice.code).toBe(2);
    expect(twice.err.match(/^old\.yaml:\d+:\d+ titel/gm)).toHaveLength(1);
  });

  it("names the plan whose work never ends", async () => {
    const endless = `format: 1
title: Endless
start: 2027-02-01
tasks: { id: wait, name: Wait, duration: 40000 }
`;
    const cwd = temporaryFolder({ "old.yaml": smallPlan, "new.yaml": endless });
    const { code, out, err } = await leeway(["compare", "old.yaml", "new.yaml"], { cwd });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^new\.yaml/m);
    expect(err).not.toContain("old.yaml");
  });
});
