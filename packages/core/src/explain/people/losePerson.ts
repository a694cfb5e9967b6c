import { dayNumber, isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import type { WorkCalendar } from "../../calendar/workCalendar.ts";
import type { Plan } from "../../plan/types.ts";
import { type AsWritten, planAsWritten } from "../../simulate/asWritten.ts";
import { beyondCalendar } from "../../simulate/beyondCalendar.ts";
import { compile } from "../../simulate/compile.ts";
import { compileCalendars } from "../../simulate/compileCalendars.ts";
import type { Model } from "../../simulate/model.ts";
import { standingAt } from "../confidence/standings.ts";
import { jointChance, type Kept } from "../joint/jointChance.ts";
import { BeyondCalendarError } from "../stage.ts";
import type { Loss } from "../types.ts";
import { type Draw, type Outcome, runVariants } from "../variants.ts";
import { assignmentsOf } from "./assignments.ts";
import { works } from "./loadAsWritten.ts";
import type { TaskRows } from "./peopleRun.ts";
import { whenMostNeeded } from "./whenMostNeeded.ts";

/** Who is away, for how many of their own working days, from when. */
export interface Absent extends TimeAway {
  person: string;
}

/** For how many working days, from when, and how much of the capacity. */
export interface TimeAway {
  /** Working days of the person's own calendar, 1 to 366. */
  days: number;
  /** ISO date, neither before the start nor the status date's past; default: where the person is needed most. */
  from?: string;
  /** Part of the capacity that is away; default 1, all of it. */
  part?: number;
}

/** Where the plan as it stands stands at the committed level, to be compared with. */
export interface Base {
  standing: Loss["before"];
  kept: Kept;
}

/** Rows of a run, read at the committed level. */
export function baseOf(model: Model, rows: Outcome, confidence: number): Base {
  return { standing: standingAt(model, rows, confidence), kept: keptBy(model, rows) };
}

/**
 * What it does to the committed level when a person is away: the plan with that absence added, on the same draws.
 * People who go `along` do not hold a task up: it goes on without them.
 *
 * @param rows  Moments of the person's tasks in the futures: without a date, the absence falls where they are needed most.
 *
 * The person has to be in the plan. Throws BeyondCalendarError when a task then runs past what calendars cover.
 * Cost: one compilation and one run of the model.
 */
export function losePerson(
  model: Model,
  asWritten: AsWritten,
  before: Base,
  draw: Draw,
  confidence: number,
  absent: Absent,
  rows: TaskRows,
): Loss {
  const { plan } = model;
  const at = model.people.findIndex(({ id }) => id === absent.person);
  const person = model.people[at] as Model["people"][number];
  const tasks = assignmentsOf(model)[at] ?? [];
  const spans = tasks
    .filter(({ task }) => task.progress?.finished !== true)
    .map(({ at: j, task, along }) => ({
      id: task.id,
      along,
      start: asWritten.block.start[j]?.[0] ?? 0,
      finish: asWritten.block.finish[j]?.[0] ?? 0,
    }))
    .filter(({ start, finish }) => finish - start > tolerance);
  const own = ownCalendar(plan, absent.person);
  const earliest = model.statusDay === undefined ? 0 : model.statusDay + 1;
  const from =
    absent.from === undefined
      ? whenMostNeeded(tasks, rows, own, earliest, absent.days)
      : dayNumber(absent.from) - model.startDay;
  const days = daysAway(own, from, absent.days);
  const [first = from, last = first] = [days[0], days[days.length - 1]];
  const part = absent.part ?? 1;
  const away = { from: isoDate(model.startDay + first), to: isoDate(model.startDay + last), share: part };
  const without = compile({
    ...plan,
    people: plan.people.map((each) =>
      each.id === absent.person ? { ...each, away: [...each.away, away] } : each,
    ),
  });
  const { beyond } = planAsWritten(without);
  if (beyond >= 0) throw new BeyondCalendarError(beyondCalendar(without, beyond));
  const [after] = runVariants(draw, [{ model: without }], (outcome) => baseOf(model, outcome, confidence));
  if (after === undefined) throw new Error("one variant, one outcome");
  const meets = spans.filter(
    ({ start, finish }) => start < last + 1 - tolerance && finish > first + tolerance,
  );
  const { finishBy, budget } = { finishBy: model.finishByDay, budget: model.budget };
  return {
    person: { id: person.id, name: person.name },
    days: days.length,
    from: away.from,
    to: away.to,
    part,
    before: before.standing,
    after: after.standing,
    effect: {
      workingDays: after.standing.workingDays - before.standing.workingDays,
      money: after.standing.cost - before.standing.cost,
    },
    chance: {
      ...(finishBy === undefined ? {} : { finishBy: [before.kept.finish, after.kept.finish] }),
      ...(budget === undefined ? {} : { budget: [before.kept.cost, after.kept.cost] }),
      ...(finishBy === undefined || budget === undefined
        ? {}
        : { both: [before.kept.both, after.kept.both] }),
    },
    stopped: meets.filter(({ along }) => !along).map(({ id }) => id),
    goOn: meets.filter(({ along }) => along).map(({ id }) => id),
  };
}

/** The calendar of a person, full absences left out. */
function ownCalendar(plan: Plan, id: string): WorkCalendar {
  const calendar = plan.people.find((person) => person.id === id)?.calendar ?? plan.calendar;
  return compileCalendars(plan).shared(calendar, [id]);
}

/** The first `count` days from `from` on that the calendar works; fewer where it ends. */
function daysAway(own: WorkCalendar, from: number, count: number): number[] {
  const days: number[] = [];
  for (let day = from; days.length < count && day + 1 < own.cum.length; day++) {
    if (works(own, day)) days.push(day);
  }
  return days;
}

function keptBy(model: Model, { finishDay, cost }: Outcome): Kept {
  const { finishByDay = Number.POSITIVE_INFINITY, budget } = model;
  const sum =
    budget === undefined ? Number.POSITIVE_INFINITY : budget + tolerance * Math.max(1, Math.abs(budget));
  return jointChance(finishDay, cost, finishByDay, sum);
}
