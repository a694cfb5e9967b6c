import { planFromData } from "../../../packages/core/src/index.ts";
import type { PlanDocument, TaskDocument } from "../../oracle/document.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { type RichDocument, richDocument } from "../laws/richDocument.ts";

type Rng = () => number;
type Edit = (document: RichDocument, rng: Rng) => void;

function list<T>(value: T | T[] | undefined): T[] {
  return value === undefined ? [] : Array.isArray(value) ? value : [value];
}
function pick<T>(items: readonly T[], rng: Rng): T | undefined {
  return items[Math.floor(rng() * items.length)];
}
const int = (rng: Rng, least: number, most: number) => least + Math.floor(rng() * (most - least + 1));

function someTask(document: PlanDocument, rng: Rng): TaskDocument | undefined {
  return pick(list(document.tasks), rng);
}

/** What a planner may do to a plan, one thing at a time. Some are refused by the plan format: those are undone. */
const edits: Edit[] = [
  function estimate(document, rng) {
    const task = pick(
      list(document.tasks).filter(({ milestone }) => milestone === undefined),
      rng,
    );
    if (task === undefined) return;
    const low = int(rng, 1, 4);
    const estimate: [number, number, number] = [low, low + int(rng, 0, 3), low + int(rng, 3, 9)];
    if (task.effort === undefined) task.duration = estimate;
    else task.effort = estimate;
  },
  function cost(document, rng) {
    const task = someTask(document, rng);
    if (task !== undefined) task.cost = int(rng, 0, 400);
  },
  function linkMore(document, rng) {
    const task = someTask(document, rng);
    const other = someTask(document, rng);
    if (task !== undefined && other !== undefined) task.after = [...list(task.after), other.id];
  },
  function linkLess(document, rng) {
    const task = someTask(document, rng);
    if (task !== undefined) task.after = list(task.after).slice(1);
  },
  function addTask(document, rng) {
    const before = someTask(document, rng);
    const after = someTask(document, rng);
    const id = `added-${int(rng, 0, 3)}`;
    const task: TaskDocument = { id, name: `Added ${id}`, duration: [1, int(rng, 1, 3), 6] };
    if (before !== undefined) task.after = [before.id];
    if (after !== undefined && rng() < 0.7) after.after = [...list(after.after), id];
    document.tasks = [...list(document.tasks), task];
  },
  function removeTask(document, rng) {
    const gone = someTask(document, rng);
    if (gone === undefined) return;
    document.tasks = list(document.tasks).filter((task) => task !== gone);
    for (const task of list(document.tasks)) {
      task.after = list(task.after).filter(
        (link) => (typeof link === "string" ? link : link.task) !== gone.id,
      );
    }
    const names = (name: string) => name !== gone.id && name !== `cost:${gone.id}`;
    document.correlations = list(document.correlations)
      .map((set) => ({ ...set, between: set.between.filter(names) }))
      .filter(({ between }) => between.length > 1);
    document.intervals = [];
  },
  function chance(document, rng) {
    const risk = pick(list(document.risks), rng);
    if (risk !== undefined) risk.probability = int(rng, 0, 10) / 10;
  },
  function adopt(document, rng) {
    const entry = pick([...list(document.risks), ...list(document.assumptions)], rng);
    const response = pick(list(entry?.responses), rng);
    if (response !== undefined) response.adopted = response.adopted !== true;
  },
  function status(document, rng) {
    const entry = pick([...list(document.risks), ...list(document.assumptions)], rng);
    if (entry !== undefined) entry.status = pick(["open", "occurred", "closed"] as const, rng) ?? "open";
  },
  function addRisk(document, rng) {
    const task = someTask(document, rng);
    if (task === undefined) return;
    const id = `new-risk-${int(rng, 0, 2)}`;
    document.risks = [
      ...list(document.risks),
      { id, name: id, probability: 0.4, impacts: { tasks: task.id, wait: [1, 2, 5], cost: 50 } },
    ];
  },
  function removeRisk(document, rng) {
    document.risks = list(document.risks).slice(rng() < 0.5 ? 1 : 0);
  },
  function person(document, rng) {
    const person = pick(list(document.people), rng);
    if (person === undefined) return;
    if (rng() < 0.5) person.rate = int(rng, 0, 500);
    else person.away = [...list(person.away), { from: "2027-06-01", to: "2027-06-09", share: 0.5 }];
  },
  function usualShare(document, rng) {
    const person = pick(list(document.people), rng);
    if (person !== undefined) person.share = (person.capacity ?? 1) * (rng() < 0.5 ? 0.5 : 0.8);
  },
  function team(document, rng) {
    const task = someTask(document, rng);
    const person = pick(list(document.people), rng);
    if (task !== undefined && person !== undefined) task.people = [...list(task.people), person.id];
  },
  function calendar(document, rng) {
    document.calendars = {
      ...document.calendars,
      site: { workdays: ["mon", "tue", "wed"], holidays: [`2027-03-0${int(rng, 1, 9)}`] },
    };
    const task = someTask(document, rng);
    if (task !== undefined && rng() < 0.5) task.calendar = "site";
    else document.calendar = "site";
  },
  function start(document, rng) {
    document.start = pick(["2027-02-01", "2027-02-10", "2027-03-01"], rng) ?? document.start;
  },
  function capacity(document) {
    document.respectCapacity = document.respectCapacity === false;
  },
  function progress(document, rng) {
    const task = pick(
      list(document.tasks).filter(({ milestone }) => milestone === undefined),
      rng,
    );
    document.statusDate = addDays(document.start, int(rng, 5, 25));
    if (task !== undefined) task.started = addDays(document.start, int(rng, 0, 5));
  },
  function overhead(document, rng) {
    const perDay = int(rng, 1, 60);
    document.overheads = [{ id: "overhead-0", name: "Site", perDay }, ...list(document.overheads).slice(1)];
  },
  function finishOf(document, rng) {
    const task = someTask(document, rng);
    if (task !== undefined) document.commitment = { ...document.commitment, finishOf: task.id };
  },
  function milestone(document, rng) {
    const task = someTask(document, rng);
    if (task === undefined) return;
    for (const key of ["duration", "effort", "people", "costPerDay", "unbroken", "remaining"] as const)
      delete task[key];
    task.milestone = true;
  },
  function correlate(document) {
    document.correlations = list(document.correlations).map((set) => ({ ...set, coefficient: 0.7 }));
  },
];

function addDays(iso: string, days: number): string {
  return new Date(Date.parse(iso) + days * 86_400_000).toISOString().slice(0, 10);
}

/** A random plan and the same after up to `most` edits the plan format allows; same seed, same pair. */
export function randomPair(seed: number, most = 6): { older: RichDocument; newer: RichDocument } {
  const rng = seededRng(seed);
  const older = richDocument(seed);
  let newer = older;
  for (let k = int(rng, 1, most); k > 0; k--) {
    const tried = structuredClone(newer);
    pick(edits, rng)?.(tried, rng);
    if (planFromData(tried).plan !== undefined) newer = tried;
  }
  return { older, newer };
}

/** Two random plans with nothing in common but the words their ids are made of, so that many of them meet. */
export function strangers(seed: number): { older: RichDocument; newer: RichDocument } {
  return { older: richDocument(seed), newer: richDocument(seed + 500_000) };
}
