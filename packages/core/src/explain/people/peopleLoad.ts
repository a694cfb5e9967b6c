import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import { type AsWritten, planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { standingAt } from "../confidence/standings.ts";
import { BeyondCalendarError } from "../stage.ts";
import { type ExplainingOptions, explaining, type Subject } from "../subject.ts";
import type { Loss, PeopleLoad } from "../types.ts";
import { type Draw, runVariants } from "../variants.ts";
import { absentProblems } from "./absentProblems.ts";
import { assignmentsOf } from "./assignments.ts";
import { type Absent, baseOf, losePerson, type TimeAway } from "./losePerson.ts";
import { peopleRun, type TaskRows } from "./peopleRun.ts";
import { personLoads } from "./personLoads.ts";
import { waitList } from "./waitList.ts";
import { findWaits } from "./waits.ts";
import { weeksFrom } from "./weeks.ts";

/** Which run the load is read from, and whose absence is tried. */
export interface PeopleLoadOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
  /** Somebody who is away: what that does to the commitment. */
  lose?: Absent;
  /** The same for everybody in turn, each alone. */
  loseEach?: TimeAway;
}

/** Load against capacity week by week, or why it cannot be told. */
export interface PeopleLoadResult {
  people?: PeopleLoad;
  problems: Problem[];
}

/**
 * Load against capacity, week by week and person by person; who waits for whom; what limited people cost; and, on
 * request, what it does when somebody is away. All on the forecast's draws.
 *
 * Problems are values; somebody without whom a task could never be done is told of as a warning by `loseEach`, and
 * left out of its list. Cost: three runs of the model without criticality, another for each person lost; memory 16 bytes * n per
 * task that names people.
 */
export function peopleLoad(plan: Plan, options: PeopleLoadOptions = {}): PeopleLoadResult {
  const unfit = [...absentProblems(plan, options.lose), ...absentProblems(plan, options.loseEach)];
  const explain = ({ model, asWritten, draw }: Subject) =>
    loadOf(model, asWritten, draw, options.confidence ?? model.confidence, options);
  return explaining(plan, options, explain, { unfit });
}

function loadOf(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  confidence: number,
  { lose, loseEach, onProgress }: PeopleLoadOptions,
): PeopleLoadResult {
  const { plan } = model;
  const assignments = assignmentsOf(model);
  const keep = new Set(assignments.flat().map(({ at }) => at));
  const waits = waitList(model);
  if (model.limitedPeople) waitsAsWritten(model, asWritten, waits.asWritten);
  const run = peopleRun(model, draw, asWritten, keep, waits.inFuture, onProgress);
  if ("problem" in run) return { problems: [run.problem] };
  const weeks = weeksFrom(model.startDay);
  const free = model.limitedPeople ? planAsWritten({ ...model, limitedPeople: false }) : asWritten;
  const count = weeks.of(latest([asWritten, free], run.rows, keep)) + 1;
  const limits = limitsOf(model, draw, confidence);
  const problems: Problem[] = [];
  const lost = lossesOf({ model, asWritten, draw, confidence, rows: run.rows }, lose, loseEach, problems);
  return {
    people: {
      stamp: stampOf(model, draw),
      plan: { title: plan.title, currency: plan.currency, start: plan.start },
      respectCapacity: plan.respectCapacity,
      weeks: Array.from({ length: count }, (_, w) => weeks.monday(w)),
      people: personLoads(model, assignments, asWritten, free, run.rows, draw.iterations, weeks, count),
      waits: waits.list(draw.iterations),
      ...(limits === undefined ? {} : { limits }),
      ...lost,
    },
    problems,
  };
}

interface Run {
  model: Model;
  asWritten: AsWritten;
  draw: Draw;
  confidence: number;
  rows: TaskRows;
}

function lossesOf(
  { model, asWritten, draw, confidence, rows }: Run,
  lose: Absent | undefined,
  each: TimeAway | undefined,
  problems: Problem[],
): Pick<PeopleLoad, "loss" | "losses"> {
  if (lose === undefined && each === undefined) return {};
  const [base] = runVariants(draw, [{ model }], (outcome) => baseOf(model, outcome, confidence));
  if (base === undefined) return {};
  const lossOf = (absent: Absent) => losePerson(model, asWritten, base, draw, confidence, absent, rows);
  const losses = model.people.flatMap(({ id }): Loss[] => {
    if (each === undefined) return [];
    try {
      return [lossOf({ ...each, person: id })];
    } catch (error) {
      if (!(error instanceof BeyondCalendarError)) throw error;
      problems.push({ ...error.problem, severity: "warning", received: `without \`${id}\`` });
      return [];
    }
  });
  return {
    ...(lose === undefined ? {} : { loss: lossOf(lose) }),
    ...(each === undefined ? {} : { losses: losses.sort(worstFirst) }),
  };
}

function worstFirst(a: Loss, b: Loss): number {
  return (
    b.effect.workingDays - a.effect.workingDays ||
    b.effect.money - a.effect.money ||
    (a.person.id < b.person.id ? -1 : 1)
  );
}

/** The waits of the plan as written, which its one iteration holds. */
function waitsAsWritten(model: Model, { block }: AsWritten, onWait: Parameters<typeof findWaits>[4]): void {
  findWaits(model, block, undefined, [new Float64Array(1), new Float64Array(1)], onWait);
}

/** The last moment anybody is asked for, in the plan as written or any future. */
function latest(plans: readonly AsWritten[], rows: TaskRows, keep: ReadonlySet<number>): number {
  let most = 0;
  for (const j of keep) {
    for (const { block } of plans) most = Math.max(most, block.finish[j]?.[0] ?? 0);
    for (const finish of rows.finish[j] ?? []) if (finish > most) most = finish;
  }
  return most;
}

/**
 * The committed level with people limited and without. A plan that does not respect capacity is limited for the
 * comparison; undefined when a task then asks for more than there is of a person.
 */
function limitsOf(model: Model, draw: Draw, confidence: number): PeopleLoad["limits"] {
  const { plan } = model;
  const capacities = new Map(plan.people.map(({ id, capacity }) => [id, capacity]));
  const tooMuch = plan.tasks.some((task) =>
    task.people.some(({ id, share }) => share > (capacities.get(id) ?? 0) + 1e-9),
  );
  if (!plan.respectCapacity && tooMuch) return undefined;
  const limited = plan.respectCapacity ? model : compile({ ...plan, respectCapacity: true });
  const [kept, free] = runVariants(
    draw,
    [{ model: limited }, { model: limited, settings: { people: false } }],
    (rows) => standingAt(model, rows, confidence),
  );
  if (kept === undefined || free === undefined) return undefined;
  const effect = { workingDays: kept.workingDays - free.workingDays, money: kept.cost - free.cost };
  return { confidence, with: kept, without: free, effect };
}
