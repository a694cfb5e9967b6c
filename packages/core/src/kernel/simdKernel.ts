import { newArena } from "./arena.ts";
import { benefitWriter } from "./benefitWriter.ts";
import type { KernelCalendar } from "./calendar.ts";
import { tablesBy } from "./calendarTables.ts";
import { drawerBy } from "./drawerBy.ts";
import type { KernelExports } from "./exports.ts";
import { answersAt, firstRow, mostRanks } from "./layout.ts";
import { linkWriter } from "./linkWriter.ts";
import { peopleWriter } from "./peopleWriter.ts";
import { ranksSelector } from "./ranksSelector.ts";
import { seederBy } from "./seederBy.ts";
import { tablesFor } from "./tablesFor.ts";
import { appraise } from "./twins/appraise.ts";
import { freeFrom } from "./twins/freeFrom.ts";
import { markLink } from "./twins/markLink.ts";
import { markSharers } from "./twins/markSharers.ts";
import type { Kernel } from "./types.ts";

/**
 * The kernel on top of a module's functions: rows become addresses, nothing else.
 *
 * @param clean  From where on the memory is all 0; not said: everywhere.
 */
export function simdKernel(wasm: KernelExports, buffer: ArrayBuffer, clean?: number): Kernel {
  const arena = newArena(buffer, firstRow, tablesBy(wasm), clean);
  const answers = new Float64Array(buffer, answersAt, mostRanks);
  const answer = (into: Float64Array, count: number) => {
    for (let i = 0; i < count; i++) into[i] = answers[i] as number;
  };
  const daysOf = (calendar: KernelCalendar) => (calendar.everyDay ? 0 : calendar.days.byteOffset);
  const streamList = benefitWriter(buffer, arena);
  const linkAt = linkWriter(buffer, arena);
  const people = peopleWriter(buffer, arena);
  const seedInto = seederBy(wasm, buffer);
  const seedsAt = new Uint32Array(buffer, answersAt, 40);
  return {
    lane: "simd",
    arena,
    wasm,
    table: tablesFor(wasm, arena),
    seedTen(stream, decade, words) {
      seedInto(stream, decade, seedsAt);
      words.set(seedsAt);
    },
    drawer: (drawings) => drawerBy(wasm, arena, drawings, seedInto),
    fillLatin: (seed, out) =>
      wasm.fillLatin(
        seed[0] as number,
        seed[1] as number,
        seed[2] as number,
        seed[3] as number,
        out.byteOffset,
      ),
    fillPlain: (seed, out) =>
      wasm.fillPlain(
        seed[0] as number,
        seed[1] as number,
        seed[2] as number,
        seed[3] as number,
        out.byteOffset,
      ),
    lookUp: ({ values, shift, scale }, u, out, n, cut) =>
      wasm.lookUp(values.byteOffset, shift, scale, u.byteOffset, out.byteOffset, n, cut ? 1 : 0),
    lookUpOutcomes: ({ values, upTo }, u, out, n, cut) =>
      wasm.lookUpOutcomes(
        values.byteOffset,
        upTo.byteOffset,
        values.length,
        u.byteOffset,
        out.byteOffset,
        n,
        cut ? 1 : 0,
      ),
    drawLatin: (seed, { values, shift, scale }, out, n, cut) =>
      wasm.drawLatin(
        seed[0] as number,
        seed[1] as number,
        seed[2] as number,
        seed[3] as number,
        values.byteOffset,
        shift,
        scale,
        out.byteOffset,
        n,
        cut ? 1 : 0,
      ),
    occur: (u, lo, hi, occurs, n) => wasm.occur(u.byteOffset, lo, hi, occurs.byteOffset, n),
    scaleTo: (out, from, scale, n) => wasm.scaleTo(out.byteOffset, from.byteOffset, scale, n),
    toScores: (row, n) => wasm.toScores(row.byteOffset, n),
    addScaled: (out, row, factor, n) => wasm.addScaled(out.byteOffset, row.byteOffset, factor, n),
    toChances: (row, n) => wasm.toChances(row.byteOffset, n),
    multiplyImpact: (duration, occurs, draws, scale, n) =>
      wasm.multiplyImpact(duration.byteOffset, occurs.byteOffset, draws.byteOffset, scale, n),
    addImpact: (duration, occurs, draws, scale, n) =>
      wasm.addImpact(duration.byteOffset, occurs.byteOffset, draws.byteOffset, scale, n),
    raiseTo: (out, from, n) => wasm.raiseTo(out.byteOffset, from.byteOffset, n),
    raiseAfter: (calendar, out, from, lag, n) =>
      calendar.everyDay
        ? wasm.raiseAfterEveryDay(out.byteOffset, from.byteOffset, lag, n)
        : wasm.raiseAfterOnCalendar(
            calendar.days.byteOffset,
            calendar.order.byteOffset,
            calendar.last,
            out.byteOffset,
            from.byteOffset,
            lag,
            n,
          ),
    settle: (calendar, lower, duration, start, finish, earliest, n) =>
      calendar.everyDay
        ? wasm.settleEveryDay(
            lower.byteOffset,
            duration.byteOffset,
            start.byteOffset,
            finish.byteOffset,
            earliest,
            n,
          )
        : wasm.settleOnCalendar(
            calendar.days.byteOffset,
            calendar.order.byteOffset,
            calendar.last,
            lower.byteOffset,
            duration.byteOffset,
            start.byteOffset,
            finish.byteOffset,
            earliest,
            n,
          ),
    settleAny({ calendar, own, lower, upper, needed, wait, duration, start, finish, ...bounds }, n) {
      return wasm.settleAny(
        daysOf(calendar),
        calendar.order.byteOffset,
        calendar.last,
        daysOf(own),
        own.order.byteOffset,
        own.last,
        lower.byteOffset,
        upper?.byteOffset ?? 0,
        needed?.byteOffset ?? 0,
        wait?.byteOffset ?? 0,
        duration.byteOffset,
        start.byteOffset,
        finish.byteOffset,
        bounds.notBefore,
        bounds.floor,
        bounds.statusFloor,
        bounds.startsWork ? 1 : 0,
        n,
      );
    },
    raiseBy: (calendar, out, from, lags, value, scale, n) =>
      wasm.raiseBy(
        daysOf(calendar),
        calendar.order.byteOffset,
        calendar.last,
        out.byteOffset,
        from.byteOffset,
        lags?.byteOffset ?? 0,
        value,
        scale,
        n,
      ),
    largestOf: (row, n) => wasm.largestOf(row.byteOffset, n),
    scaleByWork: (calendar, amounts, from, to, n) =>
      wasm.scaleByWork(
        daysOf(calendar),
        calendar.last,
        amounts.byteOffset,
        from?.byteOffset ?? 0,
        to.byteOffset,
        n,
      ),
    freeFrom(calendar, wanted, start, finish, duration, most, n) {
      const list = people.wanted(wanted);
      if (list === undefined) freeFrom(calendar, wanted, start, finish, duration, most, n);
      else {
        wasm.freeFrom(
          daysOf(calendar),
          calendar.order.byteOffset,
          calendar.last,
          list,
          wanted.length,
          start.byteOffset,
          finish.byteOffset,
          duration.byteOffset,
          most,
          n,
        );
      }
    },
    markSharers(person, moving, start, duration, n) {
      const shared = people.shared(person);
      if (shared === undefined) return markSharers(person, moving, start, duration, n);
      return wasm.markSharers(shared, moving.byteOffset, start.byteOffset, duration.byteOffset, n) !== 0;
    },
    markFinish: (calendar, planFinish, finish, moves, n) =>
      wasm.markFinish(
        daysOf(calendar),
        calendar.gap,
        calendar.end,
        planFinish.byteOffset,
        finish.byteOffset,
        moves.byteOffset,
        n,
      ),
    markSimple: (calendar, movesI, movesJ, finishI, startJ, n) =>
      wasm.markSimple(
        daysOf(calendar),
        calendar.gap,
        calendar.end,
        movesI.byteOffset,
        movesJ.byteOffset,
        finishI.byteOffset,
        startJ.byteOffset,
        n,
      ),
    markLink(link, n) {
      const at = linkAt(link);
      if (at === undefined) markLink(link, n);
      else wasm.markLink(at, n);
    },
    anySet: (row, n) => wasm.anySet(row.byteOffset, n) !== 0,
    addCost: (total, part, n) => wasm.addCost(total.byteOffset, part.byteOffset, n),
    addCostWhere: (total, occurs, draws, scale, n) =>
      wasm.addCostWhere(total.byteOffset, occurs.byteOffset, draws.byteOffset, scale, n),
    addTaskCost: (total, once, perDay, people, duration, n) =>
      wasm.addTaskCost(total.byteOffset, once.byteOffset, perDay.byteOffset, people, duration.byteOffset, n),
    addDailyCost: (total, once, rate, duration, n) =>
      wasm.addDailyCost(total.byteOffset, once.byteOffset, rate, duration.byteOffset, n),
    addDaily: (part, duration, rate, n) => wasm.addDaily(part.byteOffset, duration.byteOffset, rate, n),
    bookByMonth: ({ ends, byDay, booked, stride }, moments, amounts, n) =>
      wasm.bookByMonth(
        ends.length,
        byDay.byteOffset,
        byDay.length,
        booked.byteOffset,
        stride,
        moments.byteOffset,
        amounts.byteOffset,
        n,
      ),
    spreadByMonth: (calendar, { ends, byDay, booked, stride }, start, finish, amounts, per, n) =>
      wasm.spreadByMonth(
        daysOf(calendar),
        calendar.last,
        ends.byteOffset,
        ends.length,
        byDay.byteOffset,
        byDay.length,
        booked.byteOffset,
        stride,
        start.byteOffset,
        finish.byteOffset,
        amounts.byteOffset,
        per === "daily" ? 1 : 0,
        n,
      ),
    appraise(streams, daily, cost, net, payback, gained, n) {
      const list = streamList(streams);
      if (list === undefined) appraise(streams, daily, cost, net, payback, gained, n);
      else {
        wasm.appraise(
          list.at,
          streams.length,
          daily,
          cost.byteOffset,
          net.byteOffset,
          payback.byteOffset,
          list.gained.byteOffset,
          n,
        );
        gained.set(list.gained);
      }
    },
    sumMasked(duration, moves, base, n, into) {
      wasm.sumMasked(duration.byteOffset, moves.byteOffset, base, n);
      answer(into, 4);
    },
    sumProducts(x, y, n, into) {
      wasm.sumProducts(x.byteOffset, y.byteOffset, n);
      answer(into, 5);
    },
    absorb(values, from, to, brackets, count, list, held) {
      const tail = list.byteOffset + 8 * held;
      const at = values.byteOffset + 8 * from;
      // Addresses past two gigabytes come back as negative numbers.
      return held + ((wasm.absorb(at, to - from, brackets.byteOffset, count, tail) >>> 0) - tail) / 8;
    },
    selectRanks: ranksSelector(wasm, buffer, arena),
  };
}
