// What a report of progress may say. The rules are those of plan format 1, "Progress": `started` and `finished` lie
// between `start` and the status date, `finished` needs `started` except on a milestone, nothing remains of what is
// finished. That a status date only goes forward, and warnings out of sequence: common practice, no source.
import { type FactKind, factsOfCsv, factsOfJson, type ProgressFact, recordProgress } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const PLAN = `format: 1
title: Shed # of the rowing club
start: 2027-02-01 # a Monday

tasks:
  - id: strip
    name: Strip the old roof
    duration: [2, 3, 6] # as the carpenter says
  - { id: felt, name: Lay the felt, after: strip, duration: 5 }
  - id: paint
    name: Paint
    after: [{ task: felt, link: start-to-start }]
    duration: 4
  - id: closed
    name: Roof closed
    milestone: true
    after: felt
risks: [{ id: rain, name: Rain, probability: 0.3, impacts: { tasks: felt, delay: 2 } }]
assumptions:
  - { id: beams, statement: The beams are sound, signpost: Wet rot, chanceWrong: 0.1 }
`;
const fact = (what: FactKind, id: string, value?: string): ProgressFact => ({
  what,
  id,
  said: `--${what} ${id}${value === undefined ? "" : `=${value}`}`,
  ...(value === undefined ? {} : { value }),
});
const record = (statusDate: string, ...facts: ProgressFact[]) => recordProgress(PLAN, { statusDate, facts });
const codes = ({ problems }: { problems: { code: string; path: string }[] }) =>
  problems.map(({ code, path }) => `${code} ${path}`);

describe("recordProgress(text, report)", () => {
  it("writes into the text, and keeps comments, order and the style of each task", () => {
    const { text } = record(
      "2027-02-12",
      fact("finished", "strip", "2027-02-04"),
      fact("started", "strip", "2027-02-01"),
      fact("started", "felt", "2027-02-05"),
      fact("remaining", "felt", "1,2,4"),
      fact("spent", "felt", "900"),
      fact("occurred", "rain"),
      fact("tripped", "beams", "2027-02-03"),
    );
    expect(text).toBe(
      PLAN.replace("# a Monday\n", "# a Monday\nstatusDate: 2027-02-12\n")
        .replace(
          "as the carpenter says\n",
          "as the carpenter says\n    started: 2027-02-01\n    finished: 2027-02-04\n",
        )
        .replace(
          "after: strip, duration: 5 }",
          "after: strip, duration: 5, started: 2027-02-05, remaining: [1, 2, 4], spent: 900 }",
        )
        .replace("delay: 2 } }]", "delay: 2 }, status: occurred }]")
        .replace("chanceWrong: 0.1 }", "chanceWrong: 0.1, tripped: 2027-02-03 }"),
    );
    expect(mustRead(text).assumptions[0]?.tripped).toBe("2027-02-03");
  });
  it("takes the status date where no day is given, and no day where one is known", () => {
    const first = record("2027-02-02", fact("started", "strip"));
    expect(first.after?.tasks[0]?.started).toBe("2027-02-02");
    const again = recordProgress(first.text, { statusDate: "2027-02-05", facts: [fact("started", "strip")] });
    expect(again.after?.tasks[0]?.started).toBe("2027-02-02");
    expect(codes(again)).toEqual(["already-recorded --started strip"]);
    const corrected = recordProgress(first.text, {
      statusDate: "2027-02-05",
      facts: [fact("started", "strip", "2027-02-01")],
    });
    expect(corrected.after?.tasks[0]?.started).toBe("2027-02-01");
  });
  it("drops what remained of a task that is finished", () => {
    const first = record("2027-02-02", fact("started", "strip"), fact("remaining", "strip", "2"));
    const done = recordProgress(first.text, { statusDate: "2027-02-05", facts: [fact("finished", "strip")] });
    expect(done.problems).toEqual([]);
    expect(done.after?.tasks[0]?.remaining).toBeUndefined();
  });
  it("records that nothing happened", () => {
    expect(record("2027-02-05").after?.statusDate).toBe("2027-02-05");
  });

  it.each<[string, string, ProgressFact[], string]>([
    ["a task nobody knows", "2027-02-12", [fact("started", "stripp")], "unknown-id --started stripp"],
    ["a risk as a task", "2027-02-12", [fact("started", "rain")], "wrong-kind --started rain"],
    ["a task as a risk", "2027-02-12", [fact("occurred", "strip")], "wrong-kind --occurred strip"],
    ["a sign of a risk", "2027-02-12", [fact("tripped", "rain")], "wrong-kind --tripped rain"],
    [
      "a finish before the start",
      "2027-02-12",
      [fact("started", "strip", "2027-02-04"), fact("finished", "strip", "2027-02-03")],
      "progress-order --finished strip=2027-02-03",
    ],
    [
      "a finish after the status date",
      "2027-02-12",
      [fact("started", "strip", "2027-02-04"), fact("finished", "strip", "2027-02-13")],
      "progress-date --finished strip=2027-02-13",
    ],
    [
      "a start before the plan's",
      "2027-02-12",
      [fact("started", "strip", "2027-01-29")],
      "progress-date --started strip=2027-01-29",
    ],
    [
      "a finish without a start",
      "2027-02-12",
      [fact("finished", "strip")],
      "progress-order --finished strip",
    ],
    ["a milestone that starts", "2027-02-12", [fact("started", "closed")], "progress-order --started closed"],
    [
      "remains of what has not started",
      "2027-02-12",
      [fact("remaining", "strip", "3")],
      "progress-order --remaining strip=3",
    ],
    [
      "remains of what is finished",
      "2027-02-12",
      [fact("started", "strip"), fact("finished", "strip"), fact("remaining", "strip", "3")],
      "progress-order --remaining strip=3",
    ],
    [
      "money on what has not started",
      "2027-02-12",
      [fact("spent", "strip", "3")],
      "progress-order --spent strip=3",
    ],
    [
      "the same said twice",
      "2027-02-12",
      [fact("started", "strip"), fact("started", "strip", "2027-02-02")],
      "said-twice --started strip=2027-02-02",
    ],
    [
      "occurred and closed",
      "2027-02-12",
      [fact("occurred", "rain"), fact("closed", "rain")],
      "said-twice --closed rain",
    ],
    [
      "a day of another country",
      "2027-02-12",
      [fact("started", "strip", "04.02.2027")],
      "bad-value --started strip=04.02.2027",
    ],
    ["a day that does not exist", "2027-02-30", [], "option-value --status 2027-02-30"],
    [
      "days out of order",
      "2027-02-12",
      [fact("started", "strip"), fact("remaining", "strip", "5,3,9")],
      "bad-value --remaining strip=5,3,9",
    ],
    [
      "days that are none",
      "2027-02-12",
      [fact("started", "strip"), fact("remaining", "strip", "-2")],
      "bad-value --remaining strip=-2",
    ],
    [
      "no days at all",
      "2027-02-12",
      [fact("started", "strip"), fact("remaining", "strip")],
      "bad-value --remaining strip",
    ],
    [
      "money in groups",
      "2027-02-12",
      [fact("started", "strip"), fact("spent", "strip", "1.200")],
      "bad-value --spent strip=1.200",
    ],
    [
      "a day behind a risk",
      "2027-02-12",
      [fact("occurred", "rain", "2027-02-03")],
      "bad-value --occurred rain=2027-02-03",
    ],
  ])("refuses %s", (_, statusDate, facts, expected) => {
    const recorded = record(statusDate, ...facts);
    expect(codes(recorded)).toEqual([expected]);
    expect(recorded.text).toBe(PLAN);
    expect(recorded.after).toBeUndefined();
  });
  it("refuses a status date before the plan's own", () => {
    const first = record("2027-02-05");
    const back = recordProgress(first.text, { statusDate: "2027-02-04", facts: [] });
    expect(codes(back)).toEqual(["status-before --status 2027-02-04"]);
  });
  it("lists everything that is wrong at once, with the nearest known id", () => {
    const recorded = record(
      "2027-02-12",
      fact("started", "stripp"),
      fact("finished", "felt"),
      fact("occurred", "rian"),
    );
    expect(recorded.problems.map(({ remedy }) => remedy)).toEqual([
      "Did you mean strip?",
      "Did you mean rain?",
      "Add --started felt=DATE.",
    ]);
  });

  it.each<[string, ProgressFact[], number]>([
    ["a start before its predecessor finished", [fact("started", "felt", "2027-02-03")], 1],
    [
      "a start on the day its predecessor finished",
      [
        fact("started", "strip", "2027-02-01"),
        fact("finished", "strip", "2027-02-03"),
        fact("started", "felt", "2027-02-03"),
      ],
      1,
    ],
    [
      "a start the day after",
      [
        fact("started", "strip", "2027-02-01"),
        fact("finished", "strip", "2027-02-03"),
        fact("started", "felt", "2027-02-04"),
      ],
      0,
    ],
    ["a start before the start it hangs on", [fact("started", "paint", "2027-02-03")], 1],
    [
      "a start on the day of the start it hangs on",
      [
        fact("started", "strip", "2027-02-01"),
        fact("finished", "strip", "2027-02-03"),
        fact("started", "felt", "2027-02-04"),
        fact("started", "paint", "2027-02-04"),
      ],
      0,
    ],
    [
      "a milestone on the day its predecessor finished",
      [
        fact("started", "strip", "2027-02-01"),
        fact("finished", "strip", "2027-02-02"),
        fact("started", "felt", "2027-02-03"),
        fact("finished", "felt", "2027-02-08"),
        fact("finished", "closed", "2027-02-08"),
      ],
      0,
    ],
    ["a milestone whose predecessor is not finished", [fact("finished", "closed", "2027-02-08")], 1],
  ])("warns of %s, and records it all the same", (_, facts, count) => {
    const { problems, after } = record("2027-02-12", ...facts);
    expect(problems.map(({ code, severity }) => `${code} ${severity}`)).toEqual(
      Array.from({ length: count }, () => "out-of-sequence warning"),
    );
    expect(after?.statusDate).toBe("2027-02-12");
    const tasks = new Map(after?.tasks.map((task) => [task.id, task]));
    for (const { what, id, value } of facts)
      expect([what, id, Reflect.get(tasks.get(id) ?? {}, what)]).toEqual([what, id, value]);
  });

  it("tells what is missing: what remains, and what was due", () => {
    // Worked by hand: strip takes Monday to Wednesday, felt Thursday to the Wednesday after, paint starts with it.
    const { missing } = record("2027-02-05", fact("started", "strip", "2027-02-02"));
    expect(missing).toEqual({
      remaining: [{ id: "strip", name: "Strip the old roof", started: "2027-02-02" }],
      toStart: [
        { id: "felt", name: "Lay the felt", date: "2027-02-04" },
        { id: "paint", name: "Paint", date: "2027-02-04" },
      ],
      toFinish: [{ id: "strip", name: "Strip the old roof", date: "2027-02-03" }],
    });
  });
  it("measures what was due in the plan before the report, not in the one it makes", () => {
    const { missing } = record(
      "2027-02-03",
      fact("started", "strip", "2027-02-03"),
      fact("remaining", "strip", "3"),
    );
    expect(missing).toEqual({
      remaining: [],
      toStart: [],
      toFinish: [{ id: "strip", name: "Strip the old roof", date: "2027-02-03" }],
    });
  });
});

describe("factsOfCsv(text, name)", () => {
  it("reads a table as a spreadsheet writes it", () => {
    const table =
      "\uFEFFid;name;started;remaining;spent;status\r\nstrip;Strip;2027-02-02;1/2/4;900,50;\r\nrain;;;;;occurred\r\n";
    const { facts, problems } = factsOfCsv(table, "p.csv");
    expect(problems).toEqual([]);
    expect(facts.map(({ what, id, value }) => [what, id, value])).toEqual([
      ["started", "strip", "2027-02-02"],
      ["remaining", "strip", "1/2/4"],
      ["spent", "strip", "900.50"],
      ["occurred", "rain", undefined],
    ]);
    expect(record("2027-02-05", ...facts).after?.tasks[0]?.spent).toBe(900.5);
  });
  it.each([
    ["a heading that is meant otherwise", "id,finshed\nstrip,2027-02-02\n", "heading p.csv"],
    ["two columns of a kind", "id,started,started\nstrip,2027-02-02,\n", "heading p.csv"],
    ["a row without an id", "id,started\n,2027-02-02\n", "no-id p.csv row 2"],
    ["a status there is not", "id,status\nrain,maybe\n", "bad-value p.csv row 2 rain status"],
    ["two numbers or one", "id;remaining\nstrip;2,5\n", "bad-value p.csv row 2 remaining"],
    ["nothing", "", "empty p.csv"],
  ])("refuses %s", (_, text, expected) => {
    const { problems } = factsOfCsv(text, "p.csv");
    expect(codes({ problems })).toEqual([expected]);
    expect(problems[0]?.severity).toBe("error");
  });
});

describe("factsOfJson(text, name)", () => {
  it("reads a list of objects", () => {
    const { facts, problems } = factsOfJson(
      '[{"id":"strip","started":"2027-02-02","remaining":[1,2,4],"spent":9}]',
      "p.json",
    );
    expect(problems).toEqual([]);
    expect(facts.map(({ what, value }) => [what, value])).toEqual([
      ["started", "2027-02-02"],
      ["remaining", "1,2,4"],
      ["spent", "9"],
    ]);
  });
  it.each(["{", "{}", "[1]", '[{"id":"a","started":{}}]', '[{"started":"2027-02-02"}]', "null"])(
    "refuses %s",
    (text) => {
      expect(factsOfJson(text, "p.json").problems.length).toBe(1);
    },
  );
});

describe("what an occurred risk did in fact", () => {
  const rain = (text: string) => mustRead(text).risks[0];
  it("is written beside its status, and what is told later joins it", () => {
    const { text, problems } = record("2027-02-12", fact("occurred", "rain"), fact("cost", "rain", "350"));
    expect(problems).toEqual([]);
    expect(rain(text)).toMatchObject({ status: "occurred", actual: { cost: 350 } });
    expect(text).toContain("# as the carpenter says");
    const later = recordProgress(text, { statusDate: "2027-02-15", facts: [fact("days", "rain", "3")] });
    expect(rain(later.text)).toMatchObject({ actual: { cost: 350, days: 3 } });
    const saved = recordProgress(text, { statusDate: "2027-02-15", facts: [fact("days", "rain", "-1")] });
    expect(rain(saved.text)?.actual?.days).toBe(-1);
  });

  it.each([
    ["of what has not occurred", [fact("cost", "rain", "350")], "progress-order --cost rain=350"],
    [
      "of what is closed now",
      [fact("closed", "rain"), fact("days", "rain", "3")],
      "progress-order --days rain=3",
    ],
    ["of a task", [fact("cost", "strip", "350")], "wrong-kind --cost strip=350"],
    [
      "that are a range",
      [fact("occurred", "rain"), fact("days", "rain", "2,3,5")],
      "bad-value --days rain=2,3,5",
    ],
    [
      "in groups of digits",
      [fact("occurred", "rain"), fact("cost", "rain", "3.500")],
      "bad-value --cost rain=3.500",
    ],
  ])("is refused %s", (_, facts, wanted) => {
    const found = record("2027-02-12", ...facts);
    expect(codes(found)).toContain(wanted);
    expect(found.text).toBe(PLAN);
  });

  it("is read from a table, decimal commas and all", () => {
    const { facts } = factsOfCsv("id;status;cost;days\nrain;occurred;350,5;2\n", "p.csv");
    expect(facts.map(({ what, value }) => [what, value])).toEqual([
      ["occurred", undefined],
      ["cost", "350.5"],
      ["days", "2"],
    ]);
  });

  it("warns of days that what remains may hold already, until they are said to be none", () => {
    const begun = [
      fact("started", "felt", "2027-02-08"),
      fact("remaining", "felt", "4"),
      fact("occurred", "rain"),
    ];
    const found = record(
      "2027-02-12",
      fact("started", "strip", "2027-02-01"),
      fact("finished", "strip", "2027-02-05"),
      ...begun,
    );
    expect(codes(found)).toEqual(["occurred-in-remaining --occurred rain"]);
    const none = recordProgress(found.text, { statusDate: "2027-02-12", facts: [fact("days", "rain", "0")] });
    expect(codes(none)).toEqual([]);
    expect(rain(none.text)?.impacts).toEqual([
      { tasks: ["felt"], delay: { kind: "fixed", value: 0, unit: "days" } },
    ]);
  });
});
