// The charts about money, as every chart is held to: readable at each width, in both themes, in words and as a table.
import {
  contingencyLeftDays,
  contingencyLeftMoney,
  figureSvg,
  fundsFinding,
  fundsMonths,
  leftFinding,
  leftMoney,
} from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { newDocument } from "../charts/newDocument.ts";
import { type Drawing, expectReadable } from "../charts/readable.ts";
import { hardBudgets, hardLefts, sampleBudget, sampleLeft } from "./sampleMoney.ts";

const document = newDocument();
const lefts = { sample: sampleLeft(), ...hardLefts };
const budgets = { sample: sampleBudget(), ...hardBudgets };
const drawings: [string, Drawing][] = [
  ...Object.entries(lefts).flatMap(([name, left]): [string, Drawing][] => [
    [`contingency in money: ${name}`, (options) => contingencyLeftMoney(left, options)],
    [`contingency in days: ${name}`, (options) => contingencyLeftDays(left, options)],
  ]),
  ...Object.entries(budgets).map(([name, budget]): [string, Drawing] => [
    `funds: ${name}`,
    (options) => fundsMonths(budget, options),
  ]),
];

describe("charts about money", () => {
  it.each(drawings)("are readable: %s", (_, draw) => expectReadable(draw, document));

  it("depend on no style sheet, id or page, and stay within their widths", () => {
    for (const [, draw] of drawings) {
      const { svg } = draw({ document });
      expect(svg.querySelectorAll("style, [class], [id], [style], clipPath, script, image, a")).toHaveLength(
        0,
      );
      for (const width of [-5, Number.NaN, 1e9]) {
        const drawn = Number(draw({ document, width }).svg.getAttribute("width"));
        expect(drawn).toBeGreaterThanOrEqual(320);
        expect(drawn).toBeLessThanOrEqual(1600);
      }
      expect(figureSvg(draw({ document }))).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe("findings about money", () => {
  it("say how far what is left goes, and never that a shortage is enough", () => {
    const say = (name: keyof typeof lefts | string) => {
      const left = { ...lefts, ...hardLefts }[name] as ReturnType<typeof sampleLeft>;
      return leftFinding(left, leftMoney(left));
    };
    expect(say("sample")).toMatch(
      /^EUR 64,000 of contingency left against EUR 87,000 .*: 74 % of it; .* from 30 Jun 2027 on$/,
    );
    expect(say("nothing agreed")).toMatch(/no sum was agreed/);
    expect(say("more than all of it gone")).toMatch(/^No contingency is left: .* EUR 35,000 over/);
    expect(say("enough and to spare")).toMatch(/enough, with EUR 52,000 to spare/);
    expect(say("nothing uncertain")).toMatch(/nothing remains to cover/);
  });
  it("name the first month that runs short and what would cure it", () => {
    expect(fundsFinding(sampleBudget())).toMatch(
      /^Money runs short by the end of Sep 2027, covered in 63 % and not 80 %: EUR [\d,]+ more by 28 Sep 2027 would do$/,
    );
    expect(fundsFinding(sampleBudget({ earlier: true }))).toMatch(
      /, or the release of 1 Dec 2027 31 days earlier$/,
    );
    expect(fundsFinding(sampleBudget({ released: [5e6] }))).toBe(
      "Money released covers every month in at least 80 % of futures",
    );
    expect(fundsFinding(sampleBudget({ released: undefined }))).toMatch(
      /falls due in Jun 2027, the month that takes most$/,
    );
    expect(fundsFinding(sampleBudget({ means: [] }))).toBe("The plan has no money by month");
  });
});
