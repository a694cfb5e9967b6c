// responses and reach. Source: the project's own published command line (answer first, exit codes, every problem
// at once, JSON as the library's); figures of the text are those of the JSON.
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, type Ended, examplePlan, leeway, smallPlan } from "./leeway.ts";

interface Outlook {
  date: string;
  workingDays: number;
  cost: number;
  chance: { finishBy?: number; both?: number };
}
interface Responses {
  confidence: number;
  stands: Outlook;
  responses: {
    id: string;
    action: string;
    adopted: boolean;
    cost: number;
    alone: object;
    given: {
      workingDays: number;
      money: number;
      finishBy: number;
      latenessAvoided: number;
      netWorth: number;
    };
  }[];
  best?: {
    ids: string[];
    idle: string[];
    cost: number;
    outlook: Outlook;
    how: { kind: string; tried: number };
  };
}
interface Reach {
  asked: { finishBy?: string; sum?: number; confidence: number };
  answer: string;
  chance: number;
  ways: { cost: number; chance: number; steps: { kind: string; id: string; bought: number }[] }[];
  best?: { chance: number; steps: { kind: string; id: string }[] };
  how: { text: string };
}

function read<T>({ code, out, err }: Ended): T {
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out);
}

/** Everything a person reads on one line, without the breaks of the page. */
const flat = (text: string) => text.replace(/\s+/g, " ");

beforeAll(build);

describe("responses", () => {
  it("prints what each response buys, as the forecasts with and without it say", async () => {
    const { responses, stands } = read<Responses>(await leeway(["responses", examplePlan, "--json"]));
    const forecast = async (...more: string[]) =>
      JSON.parse((await leeway(["forecast", examplePlan, "--json", ...more])).out);
    const without = await forecast();
    expect(stands.date).toBe(without.committed.date);
    expect(responses).toHaveLength(8);
    const ids = ["pre-application-meeting", "second-candidate"];
    for (const id of ids) {
      const taken = await forecast("--with", id);
      const { given, alone } = responses.find((one) => one.id === id) ?? {};
      expect(given?.workingDays).toBe(taken.committed.workingDays - without.committed.workingDays);
      expect(given?.money).toBe(taken.committed.cost - without.committed.cost);
      expect(given?.finishBy).toBeCloseTo(taken.chance.finishBy - without.chance.finishBy, 12);
      expect(given?.latenessAvoided).toBe(without.lateness.mean - taken.lateness.mean);
      expect(alone).toEqual(given);
    }
    const worths = responses.map(({ given }) => given.netWorth);
    expect(worths).toEqual(worths.toSorted((a, b) => b - a));
  });

  it("says first what the response most worth having costs and buys", async () => {
    const { out, code, err } = await leeway(["responses", examplePlan]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const [, answer] = out.split("\n\n");
    expect(flat(answer ?? "")).toMatch(
      /^“Hire a retired inspector for a mock inspection” costs EUR 1,500, buys 3\.\d working days at 80 %, pays for itself\. 8 responses, none adopted; 4 of 8 save more/,
    );
    expect(out).toContain("What each response changes at 80 %");
    expect(out.split("\n").filter((line) => line.length > 80 && !line.startsWith("  leeway"))).toEqual([]);
  });

  it("finds the best set for a sum, says what it is best for and how it was found", async () => {
    const words = ["responses", examplePlan, "--sum", "5000"];
    const { best } = read<Responses>(await leeway([...words, "--json"]));
    expect(best?.cost).toBeLessThanOrEqual(5000);
    expect(best?.how).toMatchObject({ kind: "every-set" });
    const { out } = await leeway(words);
    expect(out).toContain("With EUR 5,000, for the earliest committed date");
    expect(flat(out)).toContain(`was tried for the earliest committed date: ${best?.how.tried} of them.`);
    expect(out).toContain(`leeway forecast ${examplePlan} --with ${best?.ids.join(",")}`);
    const worth = read<Responses>(await leeway([...words, "--aim", "worth", "--json"])).best;
    expect(worth?.ids.length).toBeGreaterThan(0);
  });

  it("shows both tables where something is adopted, and counts it", async () => {
    const plan = smallPlan.replace("cost: 120,", "cost: 120, adopted: true,");
    const { out } = await leeway(["responses", "-"], { input: plan });
    expect(out).toContain("Every response of the plan is adopted");
    expect(out).toContain("With the adopted ones as they are (* adopted), at 70 %");
    expect(out).toContain("Alone, no other response adopted, at 70 %");
    expect(out).toContain("* Hire a tarpaulin");
  });

  it("says so when there are none", async () => {
    const bare = smallPlan.replace(/ {4}responses:\n.*\n/, "");
    const { out, code } = await leeway(["responses", "-", "--sum", "10"], { input: bare });
    expect(code).toBe(0);
    expect(out).toContain("The plan names no response to a risk or an assumption.");
  });

  it("prints the same bytes for any number of workers", async () => {
    const words = ["responses", examplePlan, "--json", "--sum", "9000", "--iterations", "3000"];
    const outs = await Promise.all(["1", "2", "3"].map((count) => leeway([...words, "--workers", count])));
    expect(outs[0]?.code).toBe(0);
    expect(new Set(outs.map(({ out }) => out)).size).toBe(1);
  });
});

describe("reach", () => {
  it("claims the chance that a forecast of the plan with these steps has", async () => {
    const found = read<Reach>(await leeway(["reach", examplePlan, "--by", "2027-10-20", "--json"]));
    expect(found.asked).toEqual({ finishBy: "2027-10-20", confidence: 0.8 });
    expect(found.answer).toBe("ways");
    const [way] = found.ways;
    const ids = (scope: boolean) =>
      (way?.steps ?? []).filter(({ kind }) => (kind === "scope") === scope).map(({ id }) => id);
    const folder = temporaryFolder();
    const words = ["forecast", examplePlan, "--json", "--with", ids(false).join(",")];
    const cold = JSON.parse(
      (
        await leeway([...words, ...(ids(true).length > 0 ? ["--without", ids(true).join(",")] : [])], {
          cwd: folder,
        })
      ).out,
    );
    // 80 % of the futures finish by a date exactly when the 80 % date is not after it.
    expect(way?.chance).toBeGreaterThanOrEqual(0.8);
    expect(cold.committed.date <= "2027-10-20").toBe(true);
    const sum = (way?.steps ?? []).reduce((all, { bought }) => all + bought, found.chance);
    expect(sum).toBeCloseTo(way?.chance ?? 0, 12);
  });

  it("asks for the plan's date and budget by itself, and says plainly that nothing does", async () => {
    const { out, code } = await leeway(["reach", examplePlan]);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toContain(
      "To finish by Friday 1 October 2027 within EUR 640,000, 8 times in 10: nothing in the plan does. The most it can do is 44 %, from 19 % as it stands.",
    );
    expect(text).toContain("Lost with A first week with invited patients only: The first public week");
    expect(text).toContain("Every combination of the 9 options was tried, 512 in all");
    expect(out.split("\n").filter((line) => line.length > 80 && !line.startsWith("  leeway"))).toEqual([]);
  });

  it("says what to do first, then the other way, then step by step", async () => {
    const { out } = await leeway(["reach", examplePlan, "--by", "2027-11-10"]);
    const text = flat(out);
    expect(text).toMatch(
      /To finish by Wednesday 10 November 2027, 8 times in 10: adopt “.*: then 8\d %\. It costs EUR/,
    );
    expect(text).toContain(
      "Or drop “A first week with invited patients only”: then 81 %. It costs no money.",
    );
    expect(text).toContain("as it stands 72 %");
  });

  it("needs nothing where the plan does it already", async () => {
    const { out } = await leeway(["reach", examplePlan, "--by", "2028-01-31", "--confidence", "0.9"]);
    expect(flat(out)).toContain("nothing more is needed, the plan as it stands does it in over 99 %.");
  });

  it("asks back, with its place, where neither the plan nor the call asks for anything", async () => {
    const plan = smallPlan.replace(/ {2}finishBy.*\n {2}budget.*\n/, "");
    const { code, out, err } = await leeway(["reach", "-"], { input: plan });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(flat(err)).toContain("commitment: The plan asks for no date and no sum");
    expect(err).toContain("--by DATE or --sum MONEY");
  });

  it("prints the same bytes for any number of workers", async () => {
    const words = ["reach", examplePlan, "--json", "--iterations", "3000"];
    const outs = await Promise.all(["1", "2", "3"].map((count) => leeway([...words, "--workers", count])));
    expect(outs[0]?.code).toBe(0);
    expect(new Set(outs.map(({ out }) => out)).size).toBe(1);
  });
});

describe("wrong options of responses and reach", () => {
  it.each([
    [["responses", "--sum", "10.000"], "Write --sum 10000 if that is meant."],
    [["responses", "--sum", "10,000"], "Write --sum 10000 if that is meant."],
    [["responses", "--sum", "ten"], "It must be money as a plain number"],
    [["responses", "--aim", "speed"], "Write one of: date, chance, worth."],
    [["responses", "--confidence", "80"], "Write e.g. --confidence 0.8."],
    [["reach", "--by", "2027-02-30"], "It must be a date"],
    [["reach", "--by", "next week"], "Write e.g. 2027-10-01."],
    [["reach", "--sum", "1e400"], "It must be money as a plain number"],
    [["reach", "--with", "nobody"], "nobody"],
  ])("%j is refused with the way out", async ([verb, ...options], says) => {
    const { code, out, err } = await leeway([verb as string, examplePlan, ...options]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(flat(err)).toContain(says);
  });

  it("are listed all at once", async () => {
    const words = ["responses", examplePlan, "--sum", "1.000", "--confidence", "0", "--iterations", "none"];
    const { code, err } = await leeway(words);
    expect(code).toBe(2);
    expect(err.trim().split("\n")).toHaveLength(3);
  });
});
