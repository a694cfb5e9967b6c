import { startDate } from "@leeway/charts";
import type { PeopleLoad, PersonLoad } from "@leeway/core";
import { longName, markup, rightToLeft } from "./hardExplanations.ts";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

/** One person from the days asked in each week and the days present. Invented data. */
const person = (id: string, name: string, asked: number[], present: number[], role?: string): PersonLoad => {
  const whole = present.reduce((most, days) => Math.max(most, days), 0);
  const over = asked.map((days) => Math.max(0, days - whole));
  return {
    id,
    name,
    ...(role === undefined ? {} : { role }),
    capacity: 1,
    tasks: ["a", "b"],
    asked: asked.map((days, k) => Math.min(days, present[k] ?? 0)),
    present,
    over: over.map(() => 0),
    away: over.map(() => 0),
    unlimited: { asked, over },
    mean: asked.map((days, k) => Math.min(days, present[k] ?? 0) * 0.9),
    p80: asked.map((days, k) => Math.min(days * 1.1, present[k] ?? 0)),
  };
};

const weeks = 24;
const wave = (high: number, period: number, shift: number) =>
  Array.from({ length: weeks }, (_, k) => Math.max(0, high * Math.sin((k + shift) / period)));
const steady = (days: number, off: number[] = []) =>
  Array.from({ length: weeks }, (_, k) => (off.includes(k) ? 0 : days));

export const samplePersons: PersonLoad[] = [
  person("ilse", "Ilse Marr", wave(7.5, 5, 0), steady(5, [9, 10]), "builder"),
  person("tam", "Tam Oduya", wave(2.6, 4, 3), steady(2), "designer, two days a week"),
  person("noor", "Noor Haddad", wave(4.5, 7, 1), steady(5, [11]), "project lead"),
  person("vol", "Volunteers", wave(11, 3, 8), steady(15)),
  person("idle", "Wim Castell", steady(0), steady(5)),
];

/** The load of the sample plan's people. */
export function samplePeople(people = samplePersons, change: Partial<PeopleLoad> = {}): PeopleLoad {
  const count = people.reduce((most, each) => Math.max(most, each.present.length), 0);
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    respectCapacity: true,
    weeks: Array.from({ length: count }, (_, k) => startDate(samplePlan.start, k * 7)),
    people,
    waits: [],
    ...change,
  };
}

/** Loads at the edges of what a plan can give, by name. */
export function hardPeople(): Record<string, PeopleLoad> {
  const renamed = (name: string) =>
    samplePeople(samplePersons.map((each) => ({ ...each, name, role: name })));
  const alike = [1, 2, 3].map((k) => person(`p${k}`, `Crew ${k}`, steady(3), steady(5)));
  return {
    nobody: samplePeople([]),
    "nobody asked for anything": samplePeople(samplePersons.slice(4)),
    "nobody overloaded": samplePeople(alike),
    "one week": samplePeople([person("a", "Ada Brandt", [6], [5])]),
    "capacity not respected": samplePeople(undefined, { respectCapacity: false }),
    "absent throughout": samplePeople([person("a", "Ada Brandt", steady(2), steady(0))]),
    "forty people": samplePeople(
      Array.from({ length: 40 }, (_, k) => person(`p${k}`, `Person ${k + 1}`, wave(k / 4, 5, k), steady(5))),
    ),
    "five years": samplePeople([
      person(
        "a",
        "Ada Brandt",
        Array.from({ length: 260 }, (_, k) => 3 + 3 * Math.sin(k / 9)),
        Array.from({ length: 260 }, () => 5),
      ),
    ]),
    "very long names": renamed(longName),
    "right to left": renamed(rightToLeft),
    "markup for names": renamed(markup),
  };
}
