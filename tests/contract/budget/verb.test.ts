// `leeway money` as a program and as a person call it: the verb itself, in this process.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { parse } from "yaml";
import { main } from "../../../apps/command/src/main.ts";
import type { Budget } from "../../../packages/core/src/index.ts";
import { forecastOf } from "../../property/laws/runPlan.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { examplePlan, smallPlan } from "../command/leeway.ts";

afterEach(() => vi.restoreAllMocks());

async function call(words: string[]): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ["", ""];
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += String(text);
    return true;
  });
  const code = await main(words);
  vi.restoreAllMocks();
  return { code, out, err };
}
const few = ["--iterations", "400"];

function planIn(text: string): string {
  const path = join(temporaryFolder(), "shed.plan.yaml");
  writeFileSync(path, text);
  return path;
}

describe("leeway money", () => {
  it("prints one JSON document whose figures are the forecast's", async () => {
    const { code, out, err } = await call(["money", planIn(smallPlan), "--json", ...few]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const answer = JSON.parse(out) as Budget; // what the types say is what the command promises
    const { committed, cost, asWritten, chance } = forecastOf(parse(smallPlan), { iterations: 400 });
    expect(answer.total).toMatchObject({
      committed: committed.cost,
      mean: cost.mean,
      asWritten: asWritten.cost,
    });
    expect(answer.asked).toEqual({ budget: 2600, chance: chance.budget });
    expect(answer.left?.money?.agreed).toBe(2600);
    expect(answer.stamp).toMatchObject({ seed: "leeway", iterations: 400 });
  });

  it("says it on a page of 80 columns, the caution and the run with it", async () => {
    const { code, out } = await call(["money", examplePlan, ...few]);
    expect(code).toBe(0);
    for (const line of out.split("\n").filter((each) => !each.startsWith("  leeway ")))
      expect([...line].length, line).toBeLessThanOrEqual(80);
    const text = out.replace(/\s+/g, " ");
    expect(text).toMatch(
      /At 80 % the plan costs EUR \d{3},000 at most: .* of contingency, held by Ines Calloway\./,
    );
    expect(text).toMatch(/The sponsor's reserve of EUR 160,000 .* in none of these figures\./);
    expect(text).toMatch(/do not add up.*The last column adds up/);
    expect(text).toMatch(/your own rules for approval/);
    expect(text).toMatch(/Run: seed leeway, 400 futures/);
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("writes its charts", async () => {
    const folder = join(temporaryFolder(), "charts");
    expect((await call(["money", examplePlan, ...few, "--charts", folder])).code).toBe(0);
    expect(readdirSync(folder).sort()).toEqual([
      "contingency-left-days.svg",
      "contingency-left-money.svg",
      "funds-months.svg",
    ]);
    expect(readFileSync(join(folder, "funds-months.svg"), "utf8")).toMatch(/^<svg/);
  });

  it("holds what is left against the version that was signed, or what is given", async () => {
    const now = planIn(smallPlan.replace("cost: 400", "cost: 700"));
    const words = ["money", now, "--json", ...few];
    const signed = JSON.parse((await call([...words, "--signed", planIn(smallPlan)])).out) as Budget;
    const committed = forecastOf(parse(smallPlan), { iterations: 400 }).committed;
    expect(signed.left?.money).toMatchObject({ agreed: committed.cost, agreedFrom: "signed" });
    expect(signed.left?.days).toMatchObject({ agreedDate: committed.date, agreedFrom: "signed" });
    const given = JSON.parse((await call([...words, "--sum", "3000", "--by", "2027-03-01"])).out) as Budget;
    expect(given.left?.money).toMatchObject({ agreed: 3000, agreedFrom: "given" });
    expect(given.left?.days).toMatchObject({ agreedDate: "2027-03-01", agreedFrom: "given" });
  });

  it("looks at the plan on a later day when told so", async () => {
    const words = ["money", planIn(smallPlan), "--json", ...few, "--today", "2027-02-10"];
    const later = JSON.parse((await call(words)).out) as Budget;
    expect(later.statusDate).toBe("2027-02-10");
    expect(later.left?.ahead[0]?.date).toBe("2027-02-10");
  });

  it("tells a plan without money so, and does not fail", async () => {
    const bare = planIn(
      "format: 1\ntitle: T\nstart: 2027-01-04\ntasks: [{ id: a, name: A, duration: [2, 3, 5] }]\n",
    );
    const { code, out } = await call(["money", bare, ...few]);
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("The plan speaks of no money");
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each([
    [["--today", "2027-13-01"], /--today 2027-13-01: .*calendar date/],
    [["--sum", "1.000"], /--sum 1\.000: .*groups/],
    [["--by", "soon"], /--by soon: .*calendar date/],
    [["--signed", "nowhere.plan.yaml"], /nowhere\.plan\.yaml: There is no such file/],
    [["--signed", "-"], /--signed -: .*from a file/],
  ])("refuses %j in words and prints nothing else", async (words, problem) => {
    const { code, out, err } = await call(["money", examplePlan, ...words]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(problem);
  });

  it("refuses a day before the status date, and sums in another currency", async () => {
    const dated = planIn(smallPlan.replace("start: 2027-02-01", "start: 2027-02-01\nstatusDate: 2027-02-05"));
    const early = await call(["money", dated, "--today", "2027-02-01", ...few]);
    expect(early).toMatchObject({ code: 2, out: "" });
    expect(early.err).toMatch(/before the plan's status date, 2027-02-05/);
    const other = planIn(smallPlan.replace("currency: EUR", "currency: NOK"));
    const mixed = await call(["money", dated, "--signed", other, ...few]);
    expect(mixed).toMatchObject({ code: 2, out: "" });
    expect(mixed.err).toMatch(/counts in NOK, the plan in EUR/);
  });
});
