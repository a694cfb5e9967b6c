// Who is informed when, and who answers for what: small plans whose lists can be written down by hand. The rule of one
// accountable a row is common practice, no source.
import ical from "node-ical";
import { describe, expect, it } from "vitest";
import {
  dueEvents,
  dueList,
  forecast,
  type Plan,
  planFromData,
  roleMatrix,
  writeCalendar,
} from "../../../packages/core/src/index.ts";

function planOf(more: object): Plan {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Shed",
    start: "2027-03-01",
    iterations: 64,
    people: [
      { id: "ana", name: "Ana" },
      { id: "ben", name: "Ben" },
    ],
    // 2027-03-01 is a Monday; 29 certain days end on Friday 9 April, the 29th of March being off.
    calendars: { office: { holidays: ["2027-03-29"] } },
    calendar: "office",
    tasks: [
      { id: "dig", name: "Dig", duration: 29 },
      { id: "end", name: "End", milestone: true, after: "dig" },
    ],
    ...more,
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
function listOf(plan: Plan, options = {}) {
  const run = forecast(plan).forecast;
  if (run === undefined) throw new Error("it runs");
  return dueList(plan, run, options);
}

describe("dueList", () => {
  const plan = planOf({
    stakeholders: [
      {
        id: "chair",
        name: "Chair",
        inform: { how: "Call", every: "two-weeks", owner: "ana", what: "Progress" },
      },
      { id: "bank", name: "Bank", inform: { every: "month", owner: "ben", from: "2027-03-06" } },
      { id: "town", name: "Town", inform: { every: "milestone" } },
      { id: "press", name: "Press", inform: { how: "Note" } },
    ],
  });

  it("has every occasion up to the finish, moved to a day with work", () => {
    const { until, due, without } = listOf(plan);
    expect(until).toBe("2027-04-09");
    expect(due.map(({ date, stakeholder, movedFrom }) => [date, stakeholder.id, movedFrom])).toEqual([
      ["2027-03-01", "chair", undefined],
      ["2027-03-08", "bank", "2027-03-06"],
      ["2027-03-15", "chair", undefined],
      ["2027-03-30", "chair", "2027-03-29"],
      ["2027-04-06", "bank", undefined],
      ["2027-04-09", "town", undefined],
    ]);
    expect(due[0]).toMatchObject({ owner: { id: "ana", name: "Ana" }, how: "Call", what: "Progress" });
    expect(due[5]?.milestone).toEqual({ id: "end", name: "End" });
    expect(without.map(({ id, missing }) => [id, missing])).toEqual([
      ["bank", ["how", "what"]],
      ["town", ["owner", "how", "what"]],
      ["press", ["every", "owner", "what"]],
    ]);
  });

  it("is cut to one owner and to a day", () => {
    expect(listOf(plan, { owner: "ben" }).due.map(({ date }) => date)).toEqual(["2027-03-08", "2027-04-06"]);
    expect(listOf(plan, { owner: "ana", from: "2027-03-15" }).due).toHaveLength(2);
  });

  it("is one recurring event where no day was moved, else a day each; the same names whenever it is made", () => {
    const list = listOf(plan);
    const events = dueEvents(plan, list);
    expect(events.map(({ every }) => every)).toEqual(Array(6).fill(undefined));
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(6);
    const whole = planOf({
      stakeholders: [{ id: "chair", name: "Chair", inform: { every: "week" } }],
      calendar: "weekdays",
    });
    const [series, ...others] = dueEvents(whole, listOf(whole));
    expect([series?.date, series?.every, others]).toEqual([
      "2027-03-01",
      { unit: "week", interval: 1, count: 6 },
      [],
    ]);
    const text = writeCalendar(events, { name: "n", stamp: "2027-01-01T00:00:00Z" });
    const read = Object.values(ical.sync.parseICS(text)) as unknown as { type: string; uid: string }[];
    expect(read.filter(({ type }) => type === "VEVENT").map(({ uid }) => uid)).toEqual(
      events.map(({ uid }) => uid),
    );
  });
});

describe("roleMatrix", () => {
  const plan = planOf({
    stakeholders: [{ id: "chair", name: "Chair" }],
    phases: [{ name: "Ground", responsible: "ana", accountable: "chair" }],
    tasks: [
      { id: "dig", name: "Dig", phase: "Ground", duration: 2, people: "ben" },
      {
        id: "pour",
        name: "Pour",
        phase: "Ground",
        duration: 2,
        accountable: ["chair", "ben"],
        informed: "ana",
      },
      { id: "paint", name: "Paint", duration: 2, people: "ana" },
      { id: "done", name: "Done", milestone: true, accountable: "ana" },
      { id: "wait", name: "Wait", duration: 2, accountable: "ana" },
    ],
  });

  it("has a row for each task, a column for each who has a part, and names what breaks the rule", () => {
    const { rows, people, faults, load } = roleMatrix(plan);
    expect(people.map(({ id }) => id)).toEqual(["ana", "ben", "chair"]);
    expect(rows.map(({ id }) => id)).toEqual(["dig", "pour", "paint", "done", "wait"]);
    expect(rows[2]?.roles).toEqual([["R"], [], []]);
    expect(rows[1]?.roles[0]).toContain("I");
    expect(rows[1]?.roles.slice(1)).toEqual([["A"], ["A"]]);
    expect(faults.map(({ code, row }) => [row, code])).toEqual([
      ["pour", "many-accountable"],
      ["paint", "no-accountable"],
      ["wait", "no-responsible"],
    ]);
    // Accountable: Chair for dig and pour, Ana for done and wait, Ben for pour; four rows have somebody.
    expect(load.map(({ id, accountable, part }) => [id, accountable, part])).toEqual([
      ["ana", 2, 0.5],
      ["chair", 2, 0.5],
      ["ben", 1, 0.25],
    ]);
  });

  it("of phases", () => {
    const { rows, faults } = roleMatrix(plan, { rows: "phases" });
    expect(rows.map(({ id, roles }) => [id, roles])).toEqual([["Ground", [["R"], ["A"]]]]);
    expect(faults).toEqual([]);
  });
});
