import { formatDays, formatMoney, roundMove, roundToLimits } from "@leeway/charts";
import { compare, type Forecast, forecast, type Plan, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { KnownCalendars } from "../../apps/notebook/src/words/knownCalendars.ts";
import { movedWords, nothingMoved } from "../../apps/notebook/src/words/movedWords.ts";
import { smallPlan } from "./support/smallPlan.ts";

interface Answered {
  plan: Plan;
  answer: Forecast;
}

function answered(change: (text: string) => string): Answered {
  const { plan, problems } = readPlan(change(smallPlan));
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const { forecast: answer } = forecast(plan);
  if (answer === undefined) throw new Error("No forecast.");
  return { plan, answer };
}

function words(now: Answered, was: Answered): string {
  const known = new KnownCalendars();
  for (const { plan } of [now, was]) known.note(plan);
  return movedWords(now.answer, was.answer, known.same(now.answer, was.answer));
}

/** Calendar days between the two committed dates. */
function apart(now: Answered, was: Answered): number {
  return (Date.parse(now.answer.committed.date) - Date.parse(was.answer.committed.date)) / 86_400_000;
}

const before = answered((text) => text);
const longer = answered((text) => text.replace("[5, 7, 12]", "[9, 12, 20]"));

// That both units are said: the reader adds them up with the section Changes, whose difference `compare` gives.
describe("what an answer says of how far it moved", () => {
  it.each([
    ["later", longer, before],
    ["earlier", before, longer],
  ])("counts in the days of Changes and in those between the dates: %s", (way, now, was) => {
    const { comparison } = compare(was.plan, now.plan);
    const difference = Math.abs(comparison?.difference.workingDays ?? Number.NaN);
    const said = /^([\d.]+) working days \((\d+) calendar days\) (later|earlier),/.exec(words(now, was));
    expect(said?.[3]).toBe(way);
    expect(Number(said?.[2])).toBe(Math.abs(apart(now, was)));
    expect(Math.abs(Number(said?.[1]) - difference)).toBeLessThan(0.51);
    // A week holds five working days and seven in all.
    expect(Number(said?.[2]) / Number(said?.[1])).toBeCloseTo(7 / 5, 0);
  });

  it.each([
    ["a longer range", longer, before],
    [
      "a cost",
      answered((text) => text.replace("[5, 7, 12]", "[5, 7, 12], cost: [5100, 5490, 5900]")),
      before,
    ],
  ])(
    "tells the figures that Changes tells, and says why the sums beside them lie otherwise apart: %s",
    (_n, now, was) => {
      const difference = compare(was.plan, now.plan).comparison?.difference;
      if (difference === undefined) throw new Error("No comparison.");
      const said = words(now, was);
      expect(said).toContain(`${formatMoney(Math.abs(roundMove(difference.money)), "EUR")} more`);
      if (Math.abs(difference.workingDays) >= 0.05)
        expect(said.startsWith(`${formatDays(Math.abs(difference.workingDays))} (`)).toBe(true);
      const shown = (of: Answered) =>
        roundToLimits(of.answer.committed.cost, of.answer.committed.costLow, of.answer.committed.costHigh);
      const seems = roundMove(shown(now) - shown(was)) === roundMove(difference.money);
      expect(/before rounding/.test(said)).toBe(!seems);
    },
  );

  it("says that no date moved, and by how much all the same", () => {
    const little = answered((text) => text.replace("[5, 7, 12]", "[5, 7, 12.2]"));
    expect(apart(little, before)).toBe(0);
    expect(words(little, before)).toMatch(/^the same date( \(0\.\d working days later\))?, /);
    expect(words(before, before)).toBe("the same date, the same sum");
    expect(nothingMoved(words(before, before))).toBe("Nothing moved: the same date, the same sum.");
    expect(nothingMoved("the same date, the same sum (EUR 470 more)")).toBe(
      "Nothing moved by as much as is shown: the same date, the same sum (EUR 470 more).",
    );
  });

  it.each([
    [
      "days off",
      (text: string) =>
        `${text}calendars: { yard: { like: weekdays, holidays: [{ from: 2027-02-08, to: 2027-02-19 }] } }\ncalendar: yard\n`,
    ],
    ["the days of a week", (text: string) => `${text}calendar: every-day\n`],
    ["the start", (text: string) => text.replace("start: 2027-02-01", "start: 2027-02-15")],
  ])("counts no working days over two calendars: %s", (_name, change) => {
    const now = answered(change);
    const far = apart(now, before);
    expect(words(now, before)).toMatch(
      new RegExp(`^${Math.abs(far)} calendar days? ${far > 0 ? "later" : "earlier"}, `),
    );
  });
});
