import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";

/** Longest chain of `like`: each calendar repeats the holidays of all before it. */
const LONGEST_CHAIN = 20;

/** `like` leads somewhere, and holidays end after they begin. */
export function checkCalendars(plan: PlanDraft, reading: Reading): void {
  const calendars = plan.calendars ?? new Map();
  /** Steps of `like` to a calendar that has none; Infinity on a loop. */
  const depths = new Map<string, number>();

  for (const [start, calendar] of plan.calendars ?? []) {
    for (const holiday of calendar.holidays ?? []) {
      if (holiday.from === undefined || holiday.to === undefined || holiday.from <= holiday.to) continue;
      const rule = `It ends on ${holiday.to}, before it begins on ${holiday.from}.`;
      reading.report(reading.placeOf(holiday, "to"), "dates-reversed", rule, "Exchange `from` and `to`.");
    }

    const chain: string[] = [];
    const onChain = new Set<string>();
    let name: string | undefined = start;
    while (name !== undefined && calendars.has(name) && !depths.has(name) && !onChain.has(name)) {
      chain.push(name);
      onChain.add(name);
      name = plan.calendars?.get(name)?.like;
    }
    const looped = name !== undefined && onChain.has(name);
    if (looped && name !== undefined) {
      const loop = [...chain.slice(chain.indexOf(name)), name].slice(-12).join(" -> ");
      const last = calendars.get(chain[chain.length - 1] ?? start);
      const rule = `\`like\` goes in a circle: ${loop}.`;
      reading.report(
        reading.placeOf(last ?? calendar, "like"),
        "calendar-loop",
        rule,
        "Let one of them stand alone.",
      );
    }
    let depth = looped ? Number.POSITIVE_INFINITY : name === undefined ? 0 : (depths.get(name) ?? 0);
    for (const each of chain.reverse()) {
      depth++;
      depths.set(each, depth);
      if (depth !== LONGEST_CHAIN + 1) continue;
      const place = reading.placeOf(calendars.get(each) ?? calendar, "like");
      const rule = `\`like\` leads through more than ${LONGEST_CHAIN} calendars.`;
      reading.report(place, "calendar-chain", rule, "Start from a calendar nearer the beginning.");
    }
  }
}
