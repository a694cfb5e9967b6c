/** Laws of load, waits and losses, on random plans with people, calendars, absences and risks. */
import { describe, expect, it } from "vitest";
import { workAt } from "../../../packages/core/src/calendar/workCalendar.ts";
import {
  compile,
  forecast,
  type Model,
  type Plan,
  peopleLoad,
  planAsWritten,
  simulate,
} from "../../../packages/core/src/index.ts";
import { richDocument } from "../laws/richDocument.ts";
import { planOfDocument } from "../laws/runPlan.ts";

const iterations = 200;
const seeds = Array.from({ length: 25 }, (_, k) => k + 1);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** The document without progress, so that nothing stands where it could not be placed. */
const planOf = (seed: number, options = {}) =>
  planOfDocument(richDocument(seed, { progress: false, ...options }));

/** The compiled plan in which one task holds nobody: it is placed where links and dates allow. */
function freed(model: Model, at: number): Model {
  return { ...model, tasks: model.tasks.map((task, j) => (j === at ? { ...task, holds: [] } : task)) };
}

describe.each(seeds)("plan %i", (seed) => {
  const plan = planOf(seed);
  const result = peopleLoad(plan, { iterations });
  const run = forecast(plan, { iterations }).forecast;
  const load = result.people;

  it("answers where the forecast answers", () => {
    expect(load === undefined).toBe(run === undefined);
  });

  it("asks for share times duration, in the plan as written and on average", () => {
    if (load === undefined || run === undefined) return;
    for (const person of load.people) {
      const shares = plan.tasks.flatMap((task) => {
        const named = task.milestone === false ? task.people.find(({ id }) => id === person.id) : undefined;
        return named === undefined || named.share === 0 ? [] : [{ id: task.id, share: named.share }];
      });
      expect(person.tasks).toEqual(shares.map(({ id }) => id).sort());
      const timesShare = (of: "asWritten" | "duration") =>
        sum(
          shares.map(({ id, share }) => {
            const task = run.tasks.find((each) => each.id === id);
            return share * (of === "duration" ? (task?.duration.mean ?? 0) : (task?.asWritten.duration ?? 0));
          }),
        );
      expect(sum(person.asked)).toBeCloseTo(timesShare("asWritten"), 6);
      expect(sum(person.unlimited.asked)).toBeCloseTo(timesShare("asWritten"), 6);
      expect(sum(person.mean)).toBeCloseTo(timesShare("duration"), 6);
    }
  });

  it("asks for no more than there is where capacity is respected, and never for less than nothing", () => {
    if (load === undefined || !plan.respectCapacity) return;
    for (const person of load.people) {
      expect(person.over.every((days) => days === 0)).toBe(true);
      expect(
        [...person.asked, ...person.away, ...person.present, ...person.p80].every((days) => days >= 0),
      ).toBe(true);
      // A week has at most seven days of the whole of a person.
      expect(person.p80.every((days) => days <= 7 * person.capacity + 1e-6)).toBe(true);
    }
  });

  it("waits add up to what each task lost, against plans in which it alone holds nobody", () => {
    if (load === undefined) return;
    const held = plan.tasks.some(({ holdToPlan }) => holdToPlan);
    const model = compile(plan);
    const written = planAsWritten(model);
    const trials = simulate(model, { iterations }).trials;
    if (trials === undefined) throw new Error("no trials");
    model.tasks.forEach((task, j) => {
      const lone = freed(model, j);
      const lost = (later: number, earlier: number) =>
        workAt(model.planCalendar, later) - workAt(model.planCalendar, earlier);
      const mine = load.waits.filter((wait) => wait.task.id === task.id);
      const start = planAsWritten(lone).starts[j] as number;
      expect(sum(mine.map(({ asWritten }) => asWritten))).toBeCloseTo(
        lost(written.starts[j] as number, start),
        6,
      );
      if (held) return; // what holds to the plan would be held to another
      const other = simulate(lone, { iterations }).trials;
      const mean =
        sum([...(trials.starts[j] ?? [])].map((s, k) => lost(s, other?.starts[j]?.[k] ?? s))) / iterations;
      expect(sum(mine.map((wait) => wait.mean))).toBeCloseTo(mean, 6);
    });
    for (const wait of load.waits) {
      expect(wait.asWritten).toBeGreaterThanOrEqual(0);
      expect(wait.mean).toBeGreaterThanOrEqual(0);
      expect(wait.share).toBeLessThanOrEqual(1);
    }
  });

  it("costs at the committed level what the forecast says limited people cost", () => {
    if (load?.limits === undefined || run === undefined) return;
    expect(load.limits.with.day).toBe(plan.respectCapacity ? run.committed.day : load.limits.with.day);
    if (run.people !== undefined) expect(load.limits.effect).toEqual(run.people);
    if (plan.respectCapacity && load.waits.length === 0) {
      expect(load.limits.effect).toEqual({ workingDays: 0, money: 0 });
    }
  });

  it("loses a person as if the absence stood in the plan", () => {
    const person = plan.people[0];
    if (load === undefined || run === undefined || person === undefined) return;
    const lose = { person: person.id, days: 4, part: 1 };
    const lost = peopleLoad(plan, { iterations, lose });
    const { loss } = lost.people ?? {};
    if (loss === undefined) {
      // Without him some task may have no day left on which it can be done; that is told.
      expect(lost.problems.map(({ severity }) => severity)).toEqual(["error"]);
      return;
    }
    const edited: Plan = {
      ...plan,
      people: plan.people.map((each) =>
        each.id === person.id
          ? { ...each, away: [...each.away, { from: loss.from, to: loss.to, share: 1 }] }
          : each,
      ),
    };
    const after = forecast(edited, { iterations }).forecast;
    expect([loss.before.day, loss.before.cost]).toEqual([run.committed.day, run.committed.cost]);
    expect([loss.after.day, loss.after.cost, loss.after.date]).toEqual([
      after?.committed.day,
      after?.committed.cost,
      after?.committed.date,
    ]);
    expect(loss.chance.both).toEqual([run.chance.both, after?.chance.both]);
    const names = [...loss.stopped, ...loss.goOn];
    expect(names.every((id) => load.people.find((each) => each.id === person.id)?.tasks.includes(id))).toBe(
      true,
    );
  });
});

describe.each([1, 2, 3, 4, 5, 6, 7, 8])("plan %i, counted day by day", (seed) => {
  const plan = planOf(seed);
  const load = peopleLoad(plan, { iterations: 61 }).people;
  const model = compile(plan);
  const trials = simulate(model, { iterations: 61 }).trials;
  const week = (day: number) => Math.floor((day + ((new Date(plan.start).getUTCDay() + 6) % 7)) / 7);

  /** Person-days by week in one future: each day on which the task's calendar works, as far as the task covers it. */
  function counted(id: string, k: number, weeks: number): number[] {
    const asked = new Array<number>(weeks).fill(0);
    model.tasks.forEach((task, j) => {
      const source = plan.tasks.find((each) => each.id === task.id);
      const named = source?.milestone === false ? source.people.find((each) => each.id === id) : undefined;
      const [start, finish] = [trials?.starts[j]?.[k] ?? 0, trials?.finishes[j]?.[k] ?? 0];
      if (named === undefined) return;
      for (let day = Math.floor(start); day < finish; day++) {
        const works =
          task.calendar.everyDay || (task.calendar.cum[day + 1] ?? 0) > (task.calendar.cum[day] ?? 0);
        const part = Math.max(0, Math.min(finish, day + 1) - Math.max(start, day));
        if (works) asked[week(day)] = (asked[week(day)] ?? 0) + named.share * part;
      }
    });
    return asked;
  }

  it("asks for the same, week by week: mean and 80 % of the futures", () => {
    if (load === undefined || trials === undefined) return;
    for (const person of load.people) {
      const futures = Array.from({ length: 61 }, (_, k) => counted(person.id, k, load.weeks.length));
      load.weeks.forEach((_, w) => {
        const loads = futures.map((asked) => asked[w] ?? 0).sort((a, b) => a - b);
        expect(person.mean[w]).toBeCloseTo(sum(loads) / 61, 6);
        // Rank 49 of 61: the smallest load that at least 80 % stay within.
        expect(person.p80[w]).toBeCloseTo(loads[48] ?? Number.NaN, 6);
      });
    }
  });

  it("counts the days present: working, not away", () => {
    if (load === undefined) return;
    const first = Date.parse(plan.start) / 86_400_000;
    for (const person of load.people) {
      const source = plan.people.find(({ id }) => id === person.id);
      const calendar = plan.calendars.get(source?.calendar ?? "");
      const present = load.weeks.map(() => 0);
      for (let day = 0; week(day) < load.weeks.length; day++) {
        const date = new Date((first + day) * 86_400_000).toISOString().slice(0, 10);
        const name = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"][new Date(date).getUTCDay()];
        const inside = ({ from, to }: { from: string; to: string }) => from <= date && date <= to;
        if (!calendar?.workdays.some((each) => each === name) || calendar.holidays.some(inside)) continue;
        const away = sum(source?.away.filter(inside).map(({ share }) => share) ?? []);
        present[week(day)] = (present[week(day)] ?? 0) + person.capacity * Math.max(0, 1 - away);
      }
      expect(person.present.map((days) => Number(days.toFixed(6)))).toEqual(
        present.map((days) => Number(days.toFixed(6))),
      );
    }
  });
});

it("the plans do make people wait, and go on without them", () => {
  const all = seeds.map((seed) => peopleLoad(planOf(seed), { iterations: 20 }).people);
  expect(all.filter((load) => (load?.waits.length ?? 0) > 0).length).toBeGreaterThan(5);
  expect(
    all.filter((load) => load?.people.some(({ away }) => away.some((days) => days > 0))).length,
  ).toBeGreaterThan(2);
});
