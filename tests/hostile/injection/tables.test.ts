import { forecast, type Plan, readPlan } from "@leeway/core";
import { parse } from "csv-parse/sync";
import ical from "node-ical";
import { describe, expect, it } from "vitest";
import {
  exportOfForecast,
  exportOfPlan,
  type FORMATS,
  type Format,
  OF_FORECAST,
  OF_PLAN,
} from "../../../apps/command/src/exchange/whatToExport.ts";
import { corpus, halves } from "./corpus.ts";
import { hostilePlan } from "./hostilePlan.ts";
import { bare } from "./shape.ts";

// Every table, calendar and JSON of a plan that says something hostile in every field, each text in each field in turn,
// read back by csv-parse and node-ical, which are not ours.

const turns = Object.keys(corpus).length;
/** CWE-1236: what a spreadsheet takes for a formula. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;
/** RFC 5545, 3.3.11: no control character but the tab. */
const CONTROL = /[^\P{Cc}\t\u0080-\u009f]/u;
const NUMBER = /^-?\d+(?:\.\d+)?$/;

interface Written {
  said: Set<string>;
  plan: Plan;
  of: (what: keyof typeof FORMATS, format: Format) => string;
}
function written(turn: number): Written {
  const { text, said } = hostilePlan(turn);
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const answer = forecast(plan, { iterations: 20 }).forecast;
  if (answer === undefined) throw new Error("No forecast.");
  const ofPlan = new Set<string>(OF_PLAN);
  return {
    plan,
    said: new Set(said),
    of: (what, format) =>
      (ofPlan.has(what)
        ? exportOfPlan(text, plan, what as (typeof OF_PLAN)[number], format)
        : exportOfForecast(plan, answer, what as (typeof OF_FORECAST)[number], format, "2027-01-20T00:00:00Z")
      ).text,
  };
}

/** Texts of a value of JSON, wherever they stand. */
function textsOf(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

it("every table says what the JSON of the same says, a formula behind an apostrophe", () => {
  let told = 0;
  for (let turn = 0; turn < turns; turn++) {
    const { said, of } = written(turn);
    for (const what of [...OF_PLAN, ...OF_FORECAST]) {
      const rows: string[][] = parse(of(what, "csv"), { bom: true, record_delimiter: "\r\n" });
      const cells = rows.flat();
      const dangerous = cells.filter((cell) => FORMULA.test(cell) && !NUMBER.test(cell));
      expect({ what, turn, dangerous }).toEqual({ what, turn, dangerous: [] });
      if (what === "forecast") continue; // its JSON is the whole forecast
      const asItWas = new Set(cells.flatMap((cell) => [cell, cell.replace(/^'/, "")]));
      const inJson = textsOf({ ...JSON.parse(of(what, "json")), plan: 0 }).filter((text) => said.has(text));
      const whole = inJson.filter((text) => asItWas.has(text));
      told += whole.length;
      if ((OF_PLAN as readonly string[]).includes(what))
        expect({ what, turn, lost: inJson.filter((text) => !whole.includes(text)) }).toEqual({
          what,
          turn,
          lost: [],
        });
    }
  }
  expect(told).toBeGreaterThan(1000);
});

describe("calendars", () => {
  it("hold the events of the plan and no others, with their names", () => {
    for (let turn = 0; turn < turns; turn++) {
      const { plan, of } = written(turn);
      for (const what of ["milestones", "communication"] as const) {
        const text = of(what, "ics");
        // RFC 5545, 3.1: lines end in CRLF and are folded at 75 octets; 3.3.11: no controls.
        for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
        expect(text.replaceAll("\r\n", "").match(CONTROL)).toBeNull();
        const parsed = Object.values(ical.sync.parseICS(text)).filter((one) => one !== undefined);
        expect(
          parsed.map((one) => one.type).filter((type) => type !== "VEVENT" && type !== "VCALENDAR"),
        ).toEqual([]);
        const events = parsed.filter((one) => one.type === "VEVENT");
        const due: { events?: object[]; due?: object[] } = JSON.parse(of(what, "json"));
        expect(events).toHaveLength(what === "milestones" ? (due.events?.length ?? -1) : events.length);
        if (what === "communication") continue;
        const names = events.map((event) => `${event.type === "VEVENT" ? event.summary : ""}`);
        // Controls have no place in a calendar and are left out; a tab and line breaks count as blanks here.
        const name = bare(plan.title.replace(/[^\P{Cc}\s\u0080-\u009f]/gu, ""));
        expect({ name, there: names.map((one) => bare(one)).some((one) => one.includes(name)) }).toEqual({
          name,
          there: true,
        });
      }
    }
  });
});

it("half a character is refused, and the refusal does not pass it on", () => {
  for (const half of halves) {
    const { plan, problems } = readPlan(hostilePlan(0, [half]).text);
    expect(plan).toBeUndefined();
    expect(problems.map(({ code }) => code)).toContain("encoding");
    expect(textsOf(problems).filter((text) => /\p{Cs}/u.test(text))).toEqual([]);
  }
});
