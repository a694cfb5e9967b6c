import type {
  CalendarDocument,
  DateDocument,
  LinkDocument,
  PersonDocument,
  PlanDocument,
  TaskDocument,
  TaskPersonDocument,
} from "./document.ts";
import { randomRegister } from "./randomRegister.ts";
import { Dice } from "./randomValues.ts";

/** Which features a random plan may have: all, unless said otherwise. */
export interface RandomPlanOptions {
  /** Least and most tasks, default 3 to 12. */
  tasks?: [number, number];
  /** Calendars of its own, holidays, a plan calendar other than `weekdays`. */
  calendars?: boolean;
  /** People with calendars and absences; without them no `effort`. */
  people?: boolean;
  /** Limited people; false writes `respectCapacity: false`. */
  capacity?: boolean;
  /** Links other than finish-to-start. */
  links?: boolean;
  lags?: boolean;
  milestones?: boolean;
  /** `notBefore`. */
  dates?: boolean;
  holdToPlan?: boolean;
  unbroken?: boolean;
  /** `chance` and `onlyIf` of tasks. */
  chance?: boolean;
  /** `statusDate`, `started`, `finished`, `remaining`, `spent`. */
  progress?: boolean;
  /** Risks and assumptions with groups, responses and statuses. */
  register?: boolean;
  money?: boolean;
  /** Estimates in weeks. */
  weeks?: boolean;
  /** `commitment.finishOf`. */
  finishOf?: boolean;
  /** Only fixed and `outcomes` estimates, and at most `uncertain` uncertain things: can be enumerated. */
  outcomesOnly?: boolean;
  /** Most uncertain things under `outcomesOnly`, default 7. */
  uncertain?: number;
  /** Only fixed estimates. */
  fixedOnly?: boolean;
}

const WORDS = "ant bee cat dove eel fox gnu hare ibex jay kite lark mole newt owl pug".split(" ");
const STARTS = ["2027-02-01", "2027-05-05", "2027-12-18", "2028-02-25", "2028-07-02"];
const WEEK = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;

/**
 * A random, valid plan document of format 1, as a person would write it. Same `rng` (uniforms in [0, 1)), same
 * document. Small: a dozen tasks, a handful of people. Every calendar works on Mondays and Tuesdays, so any two
 * share working days, and unbroken tasks fit into them.
 */
export function randomPlanDocument(rng: () => number, options: RandomPlanOptions = {}): PlanDocument {
  const dice = new Dice(rng, options);
  const may = (key: keyof RandomPlanOptions) => options[key] !== false;
  const start = dice.pick(STARTS);
  const document: PlanDocument = { format: 1, title: "A random plan", start, tasks: [] };
  if (dice.chance(0.2) && !options.outcomesOnly && !options.fixedOnly) {
    document.estimates = dice.pick([
      { shape: "triangular" },
      { bounds: "p10-p90" },
      { shape: "pert" },
    ] as const);
  }

  const calendars = ["weekdays", "every-day"];
  if (may("calendars")) {
    for (const name of ["site", "Office hours"].slice(0, dice.int(0, 2))) {
      document.calendars = { ...document.calendars, [name]: randomCalendar(dice, start, calendars) };
      calendars.push(name);
    }
    if (dice.chance(0.5)) document.calendar = dice.pick(calendars);
  }
  if (may("progress") && dice.chance(0.8)) document.statusDate = dice.date(start, 0, 20);

  const people = may("people") ? randomPeople(dice, start, may("calendars") ? calendars : []) : [];
  if (people.length > 0) document.people = dice.shorten(people);
  if (options.capacity === false) document.respectCapacity = false;
  else if (dice.chance(0.1)) document.respectCapacity = dice.chance(0.5);

  const phases = ["Dig", "Build"].map((name) => ({
    name,
    ...(may("calendars") && dice.chance(0.3) ? { calendar: dice.pick(calendars) } : {}),
  }));
  const usesPhases = dice.chance(0.6);
  if (usesPhases) document.phases = phases;

  // Built in an order in which every link points back, then named and listed in another.
  const [least, most] = options.tasks ?? [3, 12];
  const names = dice.shuffle(WORDS).slice(0, dice.int(least, most));
  const tasks: TaskDocument[] = [];
  for (const id of names) {
    tasks.push(randomTask(dice, id, { options, start, calendars, people, earlier: tasks }));
  }
  if (usesPhases) for (const task of tasks) if (dice.chance(0.7)) task.phase = dice.pick(phases).name;
  if (document.statusDate) addProgress(dice, tasks, start, document.statusDate, may("money"));

  if (may("register")) Object.assign(document, randomRegister(dice, tasks, document, may("chance")));
  if (may("money")) {
    const overheads = dice.times(0, 2, (k) => ({
      id: `overhead-${k}`,
      name: `Overhead ${k}`,
      perDay: dice.estimate(0, 40),
      ...(dice.chance(0.3) ? { from: dice.pick(tasks).id } : {}),
      ...(dice.chance(0.3) ? { to: dice.pick(tasks).id } : {}),
    }));
    if (overheads.length > 0) document.overheads = dice.shorten(overheads);
  }
  if (may("finishOf") && dice.chance(0.2)) document.commitment = { finishOf: dice.pick(tasks).id };
  document.tasks = dice.shorten(dice.shuffle(tasks));
  return document;
}

/** A calendar of its own, or one like another with days changed; Monday and Tuesday always work. */
function randomCalendar(dice: Dice, start: string, known: string[]): CalendarDocument {
  const calendar: CalendarDocument = {};
  if (dice.chance(0.4)) calendar.like = dice.pick(known);
  if (dice.chance(0.7)) calendar.workdays = WEEK.filter((_, k) => k < 2 || dice.chance(0.6));
  const holidays = dice.times(0, 3, () => randomDates(dice, start, 6));
  if (holidays.length > 0) calendar.holidays = dice.shorten(holidays);
  return calendar;
}

/** One date, or a range of up to `most` days, within seven weeks of the start. */
function randomDates(dice: Dice, start: string, most: number): DateDocument {
  const from = dice.int(0, 45);
  if (dice.chance(0.5)) return dice.date(start, from, from);
  const to = from + dice.int(0, most);
  return { from: dice.date(start, from, from), to: dice.date(start, to, to) };
}

function randomPeople(dice: Dice, start: string, calendars: string[]): PersonDocument[] {
  return dice.times(1, 4, (k) => {
    const capacity = dice.pick([1, 1, 1, 0.5, 2]);
    const person: PersonDocument = { id: `p-${k}`, name: `Person ${k}` };
    if (capacity !== 1 || dice.chance(0.2)) person.capacity = capacity;
    if (capacity < 1 || dice.chance(0.3)) person.share = capacity * dice.pick([0.5, 1, 1]);
    if (dice.chance(0.7)) person.rate = dice.int(0, 20) * 25;
    if (calendars.length > 0 && dice.chance(0.25)) person.calendar = dice.pick(calendars);
    const away = dice.times(0, 3, (): DateDocument => {
      const dates = randomDates(dice, start, 9);
      if (typeof dates === "string") return dates;
      return dice.chance(0.6) ? { ...dates, share: dice.pick([0.2, 0.5, 0.5, 0.75, 1]) } : dates;
    });
    if (away.length > 0) person.away = dice.shorten(away);
    return person;
  });
}

interface Surroundings {
  options: RandomPlanOptions;
  start: string;
  calendars: string[];
  people: PersonDocument[];
  earlier: TaskDocument[];
}

function randomTask(dice: Dice, id: string, around: Surroundings): TaskDocument {
  const { options, start, people, calendars } = around;
  const may = (key: keyof RandomPlanOptions) => options[key] !== false;
  const task: TaskDocument = { id, name: `Task ${id}` };
  const after = randomLinks(dice, around);
  if (after.length > 0) task.after = dice.shorten(after);
  if (may("calendars") && dice.chance(0.2)) task.calendar = dice.pick(calendars);
  if (may("dates") && dice.chance(0.15)) task.notBefore = dice.date(start, 0, 30);
  if (may("holdToPlan") && dice.chance(0.12)) task.holdToPlan = true;
  if (dice.chance(0.25)) task.priority = dice.int(-2, 3);
  if (may("chance") && dice.chance(0.2) && dice.spend()) task.chance = dice.pick([0.2, 0.5, 0.7]);
  if (may("milestones") && dice.chance(0.15)) {
    task.milestone = dice.chance(0.7) ? true : "start";
    if (may("money") && dice.chance(0.4)) task.cost = dice.estimate(0, 500);
    return task;
  }
  if (may("unbroken") && dice.chance(0.12)) {
    // Two days at most and nobody's calendar: it always fits between Monday and Tuesday evening.
    task.unbroken = dice.pick(may("calendars") ? calendars : ["weekdays"]);
    task.duration = dice.whole(0, 2);
  } else {
    if (people.length > 0 && dice.chance(0.75)) {
      task.people = dice.shorten(randomTeam(dice, people));
      if (dice.chance(0.35)) task.effort = dice.estimate(0, 8, may("weeks"));
    }
    if (task.effort === undefined) task.duration = dice.estimate(0, 9, may("weeks"));
  }
  if (may("money") && dice.chance(0.3)) task.cost = dice.estimate(0, 500);
  if (may("money") && dice.chance(0.2)) task.costPerDay = dice.estimate(0, 60);
  return task;
}

/** One to three people, sometimes with a share of their own, never above their capacity. */
function randomTeam(dice: Dice, people: PersonDocument[]): TaskPersonDocument[] {
  const team = dice.shuffle(people).slice(0, dice.pick([1, 1, 1, 2, 3]));
  return team.map((person): TaskPersonDocument => {
    if (dice.chance(0.6)) return person.id;
    const capacity = person.capacity ?? 1;
    return {
      id: person.id,
      ...(dice.chance(0.7) ? { share: capacity * dice.pick([0.25, 0.4, 0.5, 1]) } : {}),
      ...(dice.chance(0.25) ? { along: true as const } : {}),
    };
  });
}

/** Links to earlier tasks; a pair may be linked twice, by different kinds. */
function randomLinks(dice: Dice, { options, earlier, calendars }: Surroundings): (string | LinkDocument)[] {
  const kinds = ["finish-to-start", "start-to-start", "finish-to-finish", "start-to-finish"] as const;
  const links: (string | LinkDocument)[] = [];
  const wanted = earlier.length === 0 ? 0 : dice.pick([0, 1, 1, 1, 2, 2, 3]);
  for (const { id } of dice.shuffle(earlier).slice(0, wanted)) {
    const own = options.links !== false && dice.chance(0.5) ? dice.shuffle([...kinds]) : kinds;
    for (const kind of own.slice(0, dice.chance(0.15) && options.links !== false ? 2 : 1)) {
      const link: LinkDocument = { task: id };
      if (kind !== "finish-to-start" || dice.chance(0.2)) link.link = kind;
      if (options.lags !== false && dice.chance(0.4)) {
        const lag = dice.estimate(-3, 4, options.weeks !== false);
        const named = options.calendars !== false && dice.chance(0.3);
        link.lag = named ? { days: lag, calendar: dice.pick(calendars) } : lag;
      }
      links.push(Object.keys(link).length === 1 ? id : link);
    }
  }
  return links;
}

/** Facts up to the status date, mostly for the first tasks, sometimes out of sequence. */
function addProgress(dice: Dice, tasks: TaskDocument[], start: string, status: string, money: boolean): void {
  const last = dice.days(start, status);
  for (const [rank, task] of tasks.entries()) {
    if (!dice.chance(rank < tasks.length / 2 ? 0.6 : 0.08)) continue;
    const begun = dice.int(0, last);
    if (task.milestone) {
      if (task.milestone === true && dice.chance(0.7)) task.finished = dice.date(start, begun, begun);
      continue;
    }
    task.started = dice.date(start, begun, begun);
    const state = dice.pick(["finished", "finished", "with remaining", "started"]);
    if (state === "finished") task.finished = dice.date(start, begun, last);
    if (state === "with remaining") task.remaining = dice.estimate(0, 6);
    if (money && dice.chance(0.4)) task.spent = dice.int(0, 40) * 25;
  }
}
