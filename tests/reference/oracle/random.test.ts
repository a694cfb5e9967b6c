/**
 * Laws that any reading of plan format 1 must keep, checked on random plans against simple counting that shares
 * no code with the evaluation: work is counted on a list of days, links and people are looked at afterwards.
 */
import { describe, expect, it } from "vitest";
import type { Estimate, Plan, Task } from "../../../packages/core/src/plan/types.ts";
import type { PlanDocument, TaskDocument } from "../../oracle/document.ts";
import { enumerateExactly } from "../../oracle/enumerate.ts";
import { keyedEstimates } from "../../oracle/estimates.ts";
import { asWrittenRealisation, type Evaluation, evaluate, evaluateAsWritten } from "../../oracle/evaluate.ts";
import { planOf } from "../../oracle/planOf.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import type { Realisation } from "../../oracle/realisation.ts";
import { chanceOf, registerOf } from "../../oracle/register.ts";
import { seededRng } from "../../oracle/seededRng.ts";

const SEEDS = Array.from({ length: 150 }, (_, k) => k);
/** A stream of its own for each purpose and seed. */
const STREAMS = ["plan", "draws", "plain", "exact", "same", "none"] as const;
const rngOf = (seed: number, what: (typeof STREAMS)[number]) =>
  seededRng(1 + seed * STREAMS.length + STREAMS.indexOf(what));

/** A value somewhere in an estimate; the laws below hold for any. */
function someValue(estimate: Estimate, u: number): number {
  if (estimate.kind === "fixed") return estimate.value;
  if (estimate.kind === "range") return estimate.low + u * (estimate.high - estimate.low);
  return estimate.outcomes[Math.floor(u * estimate.outcomes.length)]?.value ?? Number.NaN;
}

function someRealisation(plan: Plan, rng: () => number): Realisation {
  const values = new Map(
    [...keyedEstimates(plan).values()].map(({ key, estimate, cut }) => {
      const value = someValue(estimate, rng());
      return [key, cut ? Math.max(0, value) : value];
    }),
  );
  const written = asWrittenRealisation(plan);
  const occurring = new Set(
    registerOf(plan)
      .filter((e) => rng() < chanceOf(plan, e))
      .map((e) => e.id),
  );
  const dropped = new Set(plan.tasks.filter((t) => rng() >= t.chance).map((t) => t.id));
  return {
    value: (key) => values.get(key) ?? Number.NaN,
    occurs: (id) => occurring.has(id),
    needed: (id) =>
      !dropped.has(id) && (written.needed(id) || plan.tasks.some((t) => t.id === id && !t.onlyIf)),
  };
}

/** Does the calendar work on this day after the start? By dates alone. */
function worksOn(plan: Plan, calendar: string, day: number): boolean {
  const date = new Date(Date.parse(plan.start) + day * 86_400_000);
  const definition = plan.calendars.get(calendar);
  const weekday = (["sun", "mon", "tue", "wed", "thu", "fri", "sat"] as const)[date.getUTCDay()];
  const iso = date.toISOString().slice(0, 10);
  return (
    definition !== undefined &&
    weekday !== undefined &&
    definition.workdays.includes(weekday) &&
    !definition.holidays.some((h) => h.from <= iso && iso <= h.to)
  );
}

/** Days a task works: its calendar and that of all who do not go along, less days any of them is all away. */
function taskWorksOn(plan: Plan, task: Task, day: number): boolean {
  const iso = new Date(Date.parse(plan.start) + day * 86_400_000).toISOString().slice(0, 10);
  return (
    worksOn(plan, task.calendar, day) &&
    task.people.every(({ id, along }) => {
      const person = plan.people.find((p) => p.id === id);
      if (along || !person) return true;
      const away = person.away.filter((a) => a.from <= iso && iso <= a.to);
      return worksOn(plan, person.calendar, day) && away.reduce((sum, a) => sum + a.share, 0) < 1 - 1e-9;
    })
  );
}

function work(works: (day: number) => boolean, from: number, to: number): number {
  let sum = 0;
  for (let day = Math.floor(from); day < to; day++) {
    if (works(day)) sum += Math.min(to, day + 1) - Math.max(from, day);
  }
  return sum;
}

interface Case {
  plan: Plan;
  realisation: Realisation;
  evaluation: Evaluation;
}

function cases(options = {}): (Case & { seed: number })[] {
  return SEEDS.map((seed) => {
    const plan = planOf(randomPlanDocument(rngOf(seed, "plan"), options));
    const realisation = someRealisation(plan, rngOf(seed, "draws"));
    return { seed, plan, realisation, evaluation: evaluate(plan, realisation) };
  });
}

const all = cases();

/** What stands at a task, with the task. */
function standing({ plan, evaluation }: Case) {
  return plan.tasks.map((task) => {
    const at = evaluation.tasks.get(task.id);
    if (!at) throw new Error(`${task.id} is missing`);
    return { task, at, ahead: task.started === undefined && task.finished === undefined };
  });
}

describe("evaluate(random plan, some realisation)", () => {
  it("gives each task its realised duration of work between start and finish, starting at work", () => {
    for (const c of all) {
      for (const { task, at, ahead } of standing(c)) {
        const where = `seed ${c.seed} task ${task.id}`;
        const works = (day: number) => taskWorksOn(c.plan, task, day);
        if (at.duration > 1e-9) expect(work(works, at.start, at.finish), where).toBeCloseTo(at.duration, 7);
        if (at.duration > 1e-9 && ahead) expect(works(Math.floor(at.start)), where).toBe(true);
        if (at.duration <= 1e-9 && ahead) expect(at.finish, where).toBe(at.start);
      }
    }
  });

  it("meets every link of every task ahead, its lag counted on the right calendar", () => {
    const unit = (plan: Plan, estimate: Estimate, calendar: string) =>
      estimate.unit === "weeks" ? (plan.calendars.get(calendar)?.workdays.length ?? 0) : 1;
    for (const c of all) {
      for (const { task, at } of standing(c).filter((s) => s.ahead)) {
        for (const link of task.after) {
          const where = `seed ${c.seed} ${link.task} ${link.link} ${task.id}`;
          const pred = c.evaluation.tasks.get(link.task);
          if (!pred) throw new Error(where);
          const from = link.link.startsWith("finish") ? pred.finish : pred.start;
          const to = link.link.endsWith("start") ? at.start : at.finish;
          const calendar = link.lagCalendar ?? task.calendar;
          const days = (day: number) => worksOn(c.plan, calendar, day);
          const lag =
            c.realisation.value(`${task.id}:lag:${link.task}:${link.link}`) *
            unit(c.plan, link.lag, calendar);
          // A required finish is met, too, when the task's own days hold no work in between.
          let reached = to;
          const idle = (day: number) => link.link.endsWith("finish") && !taskWorksOn(c.plan, task, day);
          while (Number.isInteger(reached) && idle(reached) && reached < to + 400) reached++;
          if (lag >= 0) {
            expect(work(days, from, reached), where).toBeGreaterThanOrEqual(lag - 1e-7);
            expect(reached, where).toBeGreaterThanOrEqual(from - 1e-7);
          } else {
            expect(work(days, reached, from), where).toBeLessThanOrEqual(-lag + 1e-7);
          }
        }
      }
    }
  });

  it("starts nothing ahead before the day after the status date, its notBefore or its planned start", () => {
    for (const c of all) {
      const written = evaluateAsWritten(c.plan);
      for (const { task, at } of standing(c).filter((s) => s.ahead)) {
        const where = `seed ${c.seed} task ${task.id}`;
        const days = (date: string) => (Date.parse(date) - Date.parse(c.plan.start)) / 86_400_000;
        if (c.plan.statusDate) expect(at.start, where).toBeGreaterThanOrEqual(days(c.plan.statusDate) + 1);
        if (!at.needed) continue;
        if (task.notBefore) expect(at.start, where).toBeGreaterThanOrEqual(days(task.notBefore));
        if (task.holdToPlan)
          expect(at.start, where).toBeGreaterThanOrEqual(written.tasks.get(task.id)?.start ?? 0);
      }
    }
  });

  it("asks no person for more than the capacity, from the status date on and absences aside", () => {
    for (const c of all.filter(({ plan }) => plan.respectCapacity)) {
      for (const person of c.plan.people) {
        const holds = standing(c)
          .filter(({ at }) => at.needed && at.duration > 1e-9)
          .flatMap(({ task, at, ahead }) =>
            task.people.filter((p) => p.id === person.id).map((p) => ({ ...at, share: p.share, ahead })),
          );
        for (const { start, ahead } of holds) {
          // Usage can only rise where a task starts; started tasks may overload a person on their own.
          const now = holds.filter((h) => h.start <= start + 1e-7 && start + 1e-7 < h.finish - 1e-7);
          const asked = now.reduce((sum, h) => sum + h.share, 0);
          if (ahead) expect(asked, `seed ${c.seed} ${person.id}`).toBeLessThanOrEqual(person.capacity + 1e-7);
        }
      }
    }
  });

  it("does not span a free day of the calendar that may not break the work", () => {
    for (const c of all) {
      for (const { task, at, ahead } of standing(c)) {
        const { unbroken } = task;
        if (unbroken === undefined || !ahead || at.duration <= 1e-9) continue;
        const first = Math.floor(at.start);
        const span = Array.from({ length: Math.ceil(at.finish - 1e-9) - first }, (_, k) => first + k);
        const works = span.map((day) => worksOn(c.plan, unbroken, day));
        expect(works, `seed ${c.seed} task ${task.id}`).not.toContain(false);
      }
    }
  });

  it("adds its parts up to the total", () => {
    for (const { evaluation: e, seed } of all) {
      const tasks = [...e.tasks.values()].reduce((sum, t) => sum + t.cost, 0);
      expect(tasks + e.registerCost + e.responsesCost + e.overheads, `seed ${seed}`).toBeCloseTo(e.cost, 6);
    }
  });

  it("does not change with the order of lists", () => {
    for (const { plan, realisation, evaluation } of all) {
      const turned: Plan = {
        ...plan,
        tasks: [...plan.tasks].reverse().map((t) => ({
          ...t,
          after: [...t.after].reverse(),
          people: [...t.people].reverse(),
        })),
        people: [...plan.people].reverse(),
        risks: [...plan.risks].reverse(),
        overheads: [...plan.overheads].reverse(),
      };
      const again = evaluate(turned, realisation);
      expect(again.finish).toBe(evaluation.finish);
      expect(again.cost).toBeCloseTo(evaluation.cost, 9);
      for (const [id, task] of evaluation.tasks)
        expect(again.tasks.get(id)).toMatchObject({ start: task.start });
    }
  });

  it("is the plan as written for the realisation as written, holdToPlan or not", () => {
    for (const { plan } of all) {
      expect(evaluate(plan, asWrittenRealisation(plan))).toEqual(evaluateAsWritten(plan));
    }
  });

  it("has something critical whenever the finish rests on an unfinished task", () => {
    for (const { plan, evaluation, seed } of all) {
      const last = [...evaluation.tasks].filter(([, t]) => t.needed && t.finish === evaluation.finish);
      const open = last.filter(([id]) => plan.tasks.some((t) => t.id === id && t.finished === undefined));
      if (plan.commitment.finishOf !== undefined || open.length === 0) continue;
      for (const [id] of open) expect(evaluation.tasks.get(id)?.critical, `seed ${seed} ${id}`).toBe(true);
    }
  });
});

describe("criticality by pushing", () => {
  // Kelley & Walker (1959), critical-path planning: critical where the forward and the backward pass leave no
  // float. Recalled from memory; plain finish-to-start networks without free days, where both must agree.
  it("is zero float in plain networks", () => {
    const plain = {
      calendars: false,
      people: false,
      links: false,
      lags: false,
      dates: false,
      holdToPlan: false,
      unbroken: false,
      chance: false,
      progress: false,
      register: false,
      finishOf: false,
      weeks: false,
      fixedOnly: true,
    };
    for (const seed of SEEDS) {
      const drawn: PlanDocument = randomPlanDocument(rngOf(seed, "plain"), plain);
      const document = { ...drawn, calendar: "every-day", phases: [] };
      const plan = planOf(document);
      const { tasks, finish } = evaluateAsWritten(plan);
      const lateFinish = (task: TaskDocument | Task): number => {
        const next = plan.tasks.filter((t) => t.after.some((l) => l.task === task.id));
        return Math.min(finish, ...next.map((t) => lateFinish(t) - (tasks.get(t.id)?.duration ?? 0)));
      };
      for (const task of plan.tasks) {
        const float = lateFinish(task) - (tasks.get(task.id)?.finish ?? 0);
        expect(tasks.get(task.id)?.critical, `seed ${seed} ${task.id}`).toBe(float <= 1e-9);
      }
    }
  });
});

describe("enumerateExactly(random plan)", () => {
  it("gives probabilities that sum to 1 and a criticality within 0 and 1", () => {
    for (const seed of SEEDS.slice(0, 25)) {
      const document = randomPlanDocument(rngOf(seed, "exact"), {
        outcomesOnly: true,
        tasks: [3, 7],
        uncertain: 5,
      });
      const { outcomes, criticality } = enumerateExactly(planOf(document));
      expect(outcomes.reduce((sum, o) => sum + o.probability, 0)).toBeCloseTo(1, 12);
      for (const index of criticality.values()) {
        expect(index).toBeGreaterThanOrEqual(0);
        expect(index).toBeLessThanOrEqual(1 + 1e-12);
      }
    }
  });
});

describe("randomPlanDocument(rng)", () => {
  it("gives the same document for the same seed, and one that JSON carries unchanged", () => {
    for (const seed of SEEDS) {
      const document = randomPlanDocument(rngOf(seed, "same"));
      expect(randomPlanDocument(rngOf(seed, "same"))).toEqual(document);
      expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    }
  });

  it("leaves out what its options exclude", () => {
    const none = { people: false, progress: false, register: false, calendars: false, fixedOnly: true };
    for (const seed of SEEDS) {
      const text = JSON.stringify(randomPlanDocument(rngOf(seed, "none"), none));
      expect(text).not.toMatch(/"(people|effort|statusDate|started|risks|assumptions|calendars|outcomes)"/);
    }
  });
});
