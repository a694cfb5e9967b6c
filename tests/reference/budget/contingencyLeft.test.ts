// Contingency left against exposure left, worked by hand on plans small enough to list every case.
// Definitions: GAO-20-195G, ch. 12 (contingency = percentile less point estimate; read in a digest). That contingency
// is drawn down against the exposure that remains, and not by what was spent alone, is the proposal of AACE paper
// RISK-2795 (abstract read); its figures are not used. All sums below are arithmetic, no published source.
import { describe, expect, it } from "vitest";
import {
  type ContingencyLeft,
  type ContingencyLeftOptions,
  contingencyLeft,
  coverIsBelow,
} from "../../../packages/core/src/index.ts";
import { forecastOf, planOfDocument } from "../../property/laws/runPlan.ts";

const base = { format: 1, title: "Shed", start: "2027-02-01", iterations: 1024 };

function leftOf(document: object, options: ContingencyLeftOptions = {}): ContingencyLeft {
  const { left, problems } = contingencyLeft(planOfDocument({ ...base, ...document }), options);
  if (left === undefined) throw new Error(JSON.stringify(problems));
  return left;
}

/** 5,000 certain; a flood at 30 % for 1,000 and five working days. The 80 % level is with the flood. */
function shed(flood: object = {}, more: object = {}): object {
  return {
    commitment: { confidence: 0.8, budget: 6500, finishBy: "2027-02-22" },
    tasks: [{ id: "build", name: "Build", duration: 10, cost: 5000 }],
    risks: [
      {
        id: "flood",
        name: "Flood",
        probability: 0.3,
        impacts: { tasks: "build", delay: 5, cost: 1000 },
        ...flood,
      },
    ],
    ...more,
  };
}

describe("contingencyLeft(plan)", () => {
  it("sets what is left against what it has to cover, in money and in working days", () => {
    const { money, days, settled, release } = leftOf(shed());
    expect(money).toMatchObject({ agreed: 6500, agreedFrom: "plan", asWritten: 5000, left: 1500 });
    expect(money).toMatchObject({ committed: 6000, exposure: 1000, spare: 500, ratio: 1.5, chance: 1 });
    // Ten working days end with Friday 12 February, fifteen with the 19th; agreed is the 22nd: sixteen.
    expect(days).toMatchObject({ asWritten: 10, committed: 15, agreed: 16, left: 6, exposure: 5, spare: 1 });
    expect(days).toMatchObject({ asWrittenDate: "2027-02-12", committedDate: "2027-02-19", chance: 1 });
    expect(days?.ratio).toBeCloseTo(1.2, 12);
    expect(settled).toEqual([]);
    expect(release).toEqual({ workingDays: 0, money: 0 });
  });

  it("proposes to release what a risk held whose window has passed, as far as exposure leaves it", () => {
    const gone = shed({ expires: "2027-02-05" }, { statusDate: "2027-02-08" });
    const { money, settled, held, release } = leftOf(gone);
    expect(money).toMatchObject({ left: 1500, exposure: 0, spare: 1500, committed: 5000 });
    expect(money).not.toHaveProperty("ratio");
    expect(settled).toMatchObject([{ id: "flood", how: "expired", expires: "2027-02-05" }]);
    // Nothing has begun by 8 February, so the plan as written itself has moved: held is what it was at the outset.
    expect(settled[0]?.held).toEqual({ workingDays: 5, money: 1000 });
    expect(held).toEqual({ workingDays: 5, money: 1000 });
    expect(release.money).toBe(1000);
  });

  it("is not past its window on the last day of it", () => {
    expect(leftOf(shed({ expires: "2027-02-08" }, { statusDate: "2027-02-08" })).settled).toEqual([]);
  });

  it("releases nothing that is still needed", () => {
    const other = { id: "frost", name: "Frost", probability: 0.5, impacts: { tasks: "build", cost: 1400 } };
    const document = shed({ status: "closed" });
    const risks = [...(document as { risks: object[] }).risks, other];
    const { money, release, settled } = leftOf({ ...document, risks }, { confidence: 0.9 });
    // Both at 90 %: 7,400 (85 % of the cases cost 6,400 at most); frost alone: 6,400. So 1,000 were held for the flood.
    // Of the 1,500 that are left 1,400 are needed for the frost: 100 may go.
    expect(money).toMatchObject({ left: 1500, exposure: 1400, spare: 100 });
    expect(release.money).toBe(100);
    expect(settled[0]).toMatchObject({ held: { money: 1000 }, mayRelease: { money: 100 } });
  });

  it("says what an entry that occurred took, and releases none of it", () => {
    const { money, settled, release } = leftOf(shed({ status: "occurred" }));
    expect(money).toMatchObject({ asWritten: 6000, left: 500, exposure: 0 });
    expect(settled).toMatchObject([{ how: "occurred", took: { workingDays: 5, money: 1000 } }]);
    expect(settled[0]?.held).toEqual({ workingDays: 5, money: 1000 });
    expect(release).toEqual({ workingDays: 0, money: 0 });
  });

  it("splits what several held so that the parts add up, averaged over orders", () => {
    // Totals of 0, 1000, 2000, 3000 with a quarter each: the 80 % level is 3000; alone, each is at its own sum.
    const risk = (id: string, cost: number) => ({
      id,
      name: id,
      probability: 0.5,
      status: "closed",
      impacts: { cost },
    });
    const { settled, held, release } = leftOf({
      commitment: { confidence: 0.8, budget: 2500 },
      tasks: [{ id: "build", name: "Build", duration: 10 }],
      risks: [risk("one", 1000), risk("two", 2000)],
    });
    expect(settled.map(({ id, held: { money } }) => [id, money])).toEqual([
      ["one", 1000],
      ["two", 2000],
    ]);
    expect(held.money).toBe(3000);
    // Nothing is left to cover, so no more than the 2,500 there is can go: in proportion to what they held.
    expect(release.money).toBe(2500);
    expect(settled.map(({ mayRelease }) => mayRelease.money)).toEqual([2500 / 3, 5000 / 3]);
  });

  it("takes what was agreed from the question, else the signed version, else the plan", () => {
    const plan = planOfDocument({ ...base, ...shed({ status: "closed" }) });
    const signed = planOfDocument({ ...base, ...shed() });
    const committed = forecastOf({ ...base, ...shed() }).committed;
    const { left } = contingencyLeft(plan, { signed });
    expect(left?.money).toMatchObject({ agreed: committed.cost, agreedFrom: "signed" });
    expect(left?.days).toMatchObject({ agreedDate: committed.date, agreedFrom: "signed" });
    expect(left?.heldIn).toBe("signed");
    const given = contingencyLeft(plan, { signed, agreed: { money: 7000 } }).left;
    expect(given?.money).toMatchObject({ agreed: 7000, agreedFrom: "given", left: 2000 });
    expect(given?.days).toMatchObject({ agreedFrom: "signed" });
    // Closed when it was signed: nothing was held for it.
    expect(contingencyLeft(plan, { signed: plan }).left?.settled).toEqual([]);
  });

  it("keeps the reserve apart, and names the holder and the rule", () => {
    const commitment = {
      confidence: 0.8,
      budget: 6500,
      reserve: 900,
      holder: "ana",
      releaseRule: "Ana asks the board.",
    };
    const more = { commitment, people: [{ id: "ana", name: "Ana" }] };
    const with_ = leftOf(shed({}, more));
    const { reserve: _, ...bare } = commitment;
    const without = leftOf(shed({}, { ...more, commitment: bare }));
    expect(with_).toMatchObject({
      reserve: 900,
      holder: { name: "Ana" },
      releaseRule: "Ana asks the board.",
    });
    expect(with_.money).toEqual(without.money);
    expect(with_.release).toEqual(without.release);
  });

  it("says what is missing in place of a figure", () => {
    const { money, days, missing } = leftOf(shed({}, { commitment: { confidence: 0.8 } }));
    expect([money, days]).toEqual([undefined, undefined]);
    expect(missing.join(" ")).toMatch(
      /No sum was agreed.*No date was agreed.*statusDate.*holder.*releaseRule/,
    );
  });

  it("shows the exposure ahead as the plan itself lets go of it", () => {
    const { ahead, money } = leftOf(
      shed(
        { expires: "2027-03-15" },
        {
          tasks: [
            { id: "build", name: "Build", duration: 10, cost: 5000 },
            {
              id: "paint",
              name: "Paint",
              after: "build",
              duration: 30,
              cost: {
                outcomes: [
                  { value: 100, chance: 0.6 },
                  { value: 300, chance: 0.4 },
                ],
              },
            },
          ],
        },
      ),
    );
    // Build ends on 12 February and takes the flood with it, though its window is open longer; paint ends on 26 March.
    expect(ahead.map(({ date, settles }) => [date, ...settles.work, ...settles.register])).toEqual([
      ["2027-01-31"],
      ["2027-02-28", "flood"],
      ["2027-03-31", "paint"],
    ]);
    expect(ahead.map(({ exposure }) => exposure.money)).toEqual([money?.exposure, 200, 0]);
  });
});

describe("coverIsBelow(cover, ratio)", () => {
  it("compares what is left with a part of the exposure, and where none is left with nothing", () => {
    const { money } = leftOf(shed());
    if (money === undefined) throw new Error("no cover");
    expect([1.6, 1.5, 1].map((ratio) => coverIsBelow(money, ratio))).toEqual([true, false, false]);
    const gone = leftOf(shed({ status: "closed" })).money;
    expect(gone && coverIsBelow(gone, 2)).toBe(false);
    const short = leftOf(shed({ status: "closed" }), { agreed: { money: 4000 } }).money;
    expect(short && coverIsBelow(short, 0.5)).toBe(true);
  });
});
