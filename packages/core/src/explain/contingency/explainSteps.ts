import { isoDate } from "../../calendar/dates.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { limitRanks } from "../../forecast/ranks.ts";
import type { TornadoBar } from "../../forecast/types.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { standingAsWritten, standingAt } from "../confidence/standings.ts";
import type { Measure } from "../measureVariants.ts";
import type { Settings } from "../settings.ts";
import { sortedBars, type TornadoEnd, tornadoItems } from "../tornado.ts";
import type { Explanation, Share } from "../types.ts";
import { type Draw, type Outcome, runVariants } from "../variants.ts";
import { type Cause, causesOf, settingsWith } from "./causes.ts";
import { keptCauses } from "./firstPass.ts";
import { freeOffset } from "./freeOffset.ts";
import { type OrderAverage, orderAverage } from "./orderAverage.ts";
import { effect, minus, type Pair, type Values } from "./values.ts";
import { walkStages, walkSteps } from "./walk.ts";

/** Variants of the model to be measured at the level explained, on the first `iterations` iterations. */
export interface Ask {
  iterations: number;
  settings: readonly Settings[];
  /** Which part of the whole work it is, 0 to 1. */
  from: number;
  to: number;
}

/** What is explained: a compiled plan, the plan as written, the draws and the level. */
export interface Explained {
  model: Model;
  asWritten: AsWritten;
  draw: Draw;
  confidence: number;
}

/**
 * The explanation, step by step: yields variants to be measured, takes their measures, and ends with the answer. The
 * measures do not depend on who computes them, so neither does the answer.
 *
 * v(S), the value of a set of causes, is the level's percentile with those causes as drawn and all others as written
 * (estimates at their written value, entries absent, tasks with a chance of 0.5 or more needed, people without limits
 * plus what limits add to the plan as written). v(none) is the plan as written, v(all) the commitment. Days and money
 * come from the same sets and the same orders.
 */
export function* explainSteps(explained: Explained): Generator<Ask, Explanation, readonly Measure[]> {
  const { model, asWritten, draw, confidence } = explained;
  const { iterations } = draw;
  const offset = freeOffset(model, asWritten);
  const causes = causesOf(model).map((cause) => (cause.people ? waiting(cause, offset) : cause));
  const written: Pair = [asWritten.workingDays, asWritten.cost];
  const [whole] = runVariants(draw, [{ model }], (outcome) => ({
    standing: standingAt(model, outcome, confidence),
    limits: limitsAt(model, outcome, confidence),
  }));
  if (whole === undefined) throw new Error("A variant has no outcome.");
  const { standing } = whole;
  const committed: Pair = [standing.workingDays, standing.cost];
  const withOffset = ({ people }: Settings, value: Pair): Pair =>
    people === false ? [value[0] + offset[0], value[1] + offset[1]] : value;
  const values = { written, committed, withOffset };
  const players = yield* keptCauses(explained, causes, values);

  // One list: the walk, the tornado, and everything but one player, which the orders need as well.
  const stages = walkStages(model, asWritten, causes);
  const { bars, ends } = tornadoItems(model, namesOf(players));
  const onePlayerOff = players.map((_, p) => settingsWith(model, players, (on) => on !== p));
  const singles = yield {
    iterations,
    settings: [
      ...stages.map(({ settings }) => settings),
      ...onePlayerOff,
      ...ends.map(({ settings }) => settings),
    ],
    from: 0.15,
    to: 0.4,
  };
  const means = stages.map(({ settings }, i) => withOffset(settings, (singles[i] as Measure).mean));
  const removed = onePlayerOff.map((settings, p) =>
    withOffset(settings, (singles[stages.length + p] as Measure).level),
  );
  ends.forEach((end, i) => {
    setEnd(bars, end, (singles[stages.length + players.length + i] as Measure).level, committed);
  });

  const average = yield* overOrders(explained, players, { ...values, removed });
  return {
    stamp: stampOf(model, draw),
    plan: { title: model.plan.title, currency: model.plan.currency, start: model.plan.start },
    confidence,
    asWritten: standingAsWritten(model, asWritten),
    committed: standing,
    limits: whole.limits,
    contingency: effect(minus(committed, written)),
    shares: sharesOf(
      players,
      average,
      removed.map((value) => minus(value, committed)),
    ),
    orders: { causes: players.length, taken: average.taken, all: average.all },
    walk: walkSteps(stages, means, written, committed, confidence),
    tornado: sortedBars(bars.map((bar, at) => ({ at, bar }))),
  };
}

function* overOrders(
  { model, draw }: Explained,
  players: readonly Cause[],
  { written, committed, withOffset, removed }: Values & { removed: readonly Pair[] },
): Generator<Ask, OrderAverage, readonly Measure[]> {
  let from = 0.4;
  const everyone = 2 ** players.length - 1;
  const known = new Map(removed.map((value, p) => [everyone - 2 ** p, value]));
  const steps = orderAverage(players.length, { none: written, all: committed, known, seed: draw.seed });
  let step = steps.next();
  while (step.done !== true) {
    const settings = step.value.map((set) => settingsWith(model, players, (p) => ((set >> p) & 1) === 1));
    const to = from + 0.4 * (1 - from);
    const measures = yield { iterations: draw.iterations, settings, from, to };
    from = to;
    step = steps.next(measures.map(({ level }, i) => withOffset(settings[i] as Settings, level)));
  }
  return step.value;
}

/** The sampling limits of a level's percentiles. Sorts copies. */
function limitsAt(model: Model, rows: Outcome, p: number): NonNullable<Explanation["limits"]> {
  const ranks = limitRanks(p, rows.finish.length);
  const finish = rows.finish.slice().sort();
  const days = rows.finishDay.slice().sort();
  const cost = rows.cost.slice().sort();
  const at = (rank: number) => ({
    date: isoDate(model.startDay + (days[rank - 1] as number)),
    effect: {
      workingDays: workAt(model.planCalendar, finish[rank - 1] as number),
      money: cost[rank - 1] as number,
    },
  });
  const [low, high] = [at(ranks.low), at(ranks.high)];
  return { lowDate: low.date, highDate: high.date, low: low.effect, high: high.effect };
}

/** Largest first, in days and then in money; what is gathered comes last. */
function sharesOf(players: readonly Cause[], average: OrderAverage, ifRemoved: readonly Pair[]): Share[] {
  return players
    .map(({ id, name, kind, gathers, members }, p): Share => {
      const [share = [0, 0], error = [0, 0]] = [average.shares[p], average.errors[p]];
      return {
        id,
        name,
        kind,
        ...effect(share),
        error: effect(error),
        ifRemoved: effect(ifRemoved[p] as Pair),
        ...(gathers === undefined ? {} : { gathers }),
        ...(members === undefined ? {} : { members }),
      };
    })
    .sort(
      (a, b) =>
        Number(a.gathers !== undefined) - Number(b.gathers !== undefined) ||
        b.workingDays - a.workingDays ||
        b.money - a.money ||
        (a.id < b.id ? -1 : 1),
    );
}

function setEnd(bars: TornadoBar[], end: TornadoEnd, value: Pair, committed: Pair): void {
  const bar = bars[end.bar];
  if (bar !== undefined) bar[end.side] = effect(minus(value, committed));
}

/** Where the plan as written already waits for people, its cause is only what comes on top: it says so. */
function waiting(people: Cause, offset: Pair): Cause {
  return offset.some((part) => Math.abs(part) > 1e-9)
    ? { ...people, name: "More waiting for people" }
    : people;
}

/** Ids of the causes that are named, members of shared causes included. */
function namesOf(players: readonly Cause[]): Set<string> {
  return new Set(
    players.flatMap(({ id, gathers, members }) => (gathers === undefined ? [id, ...(members ?? [])] : [])),
  );
}
