import type { Forecast } from "../../forecast/types.ts";
import type { Plan } from "../../plan/types.ts";
import { uidOf } from "./uidOf.ts";
import type { CalendarEvent } from "./writeCalendar.ts";

/**
 * Milestones at the level committed to, targets, the committed finish, and the days by which approvers decide, as
 * events. Each says what it rests on and ends with the run stamp.
 *
 * @param forecast  Of this plan.
 */
export function milestoneEvents(plan: Plan, forecast: Forecast): CalendarEvent[] {
  const level = percent(forecast.committed.confidence);
  const end = `\n\n${stampText(forecast)}`;
  const events: CalendarEvent[] = [];
  for (const { id, name, milestone, finishDates, needed, target } of forecast.tasks) {
    if (milestone && needed > 0) {
      const { p10, p50, p90, committed } = finishDates;
      const when = needed < 1 ? ` It is needed in ${percent(needed)} of the futures.` : "";
      const description = `By this day in ${level} of the futures. P10 ${p10}, P50 ${p50}, P90 ${p90}.${when}${end}`;
      events.push({
        uid: uidOf(plan, "milestone", id),
        date: committed,
        summary: name,
        description,
        category: "Milestone",
      });
    }
    if (target !== undefined) {
      const description = `The target; met in ${percent(target.chance)} of the futures.${end}`;
      const summary = `Target: ${name}`;
      events.push({
        uid: uidOf(plan, "target", id),
        date: target.date,
        summary,
        description,
        category: "Target",
      });
    }
  }
  events.push(...commitmentEvents(plan, forecast, end), ...approvalEvents(plan, end));
  return events.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.uid < b.uid ? -1 : 1));
}

function commitmentEvents(plan: Plan, { committed, asked, chance }: Forecast, end: string): CalendarEvent[] {
  const finish: CalendarEvent = {
    uid: uidOf(plan, "committed", "finish"),
    date: committed.date,
    summary: `Committed finish: ${plan.title}`,
    description: `By this day in ${percent(committed.confidence)} of the futures.${end}`,
    category: "Commitment",
  };
  if (asked.finishBy === undefined) return [finish];
  const met = chance.finishBy === undefined ? "" : `; met in ${percent(chance.finishBy)} of the futures`;
  return [
    finish,
    {
      uid: uidOf(plan, "asked", "finish"),
      date: asked.finishBy,
      summary: `Finish asked for: ${plan.title}`,
      description: `The date asked for${met}.${end}`,
      category: "Commitment",
    },
  ];
}

/** One day for all of them: the plan has one date by which it wants a decision. */
function approvalEvents(plan: Plan, end: string): CalendarEvent[] {
  const by = plan.decision?.by;
  if (by === undefined) return [];
  const names = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, name]));
  const open = plan.approvals.filter(({ decision }) => decision === "pending");
  const who = open.map((approval) => names.get(approval.who) ?? approval.who);
  const asked = plan.decision?.ask === undefined ? "" : `${plan.decision.ask}\n\n`;
  return [
    {
      uid: uidOf(plan, "decision", "plan"),
      date: by,
      summary: `Decision: ${plan.title}`,
      description: `${asked}${who.length === 0 ? "Nobody's answer is open." : `Still to answer: ${who.join(", ")}.`}${end}`,
      category: "Approval",
    },
  ];
}

/** What is needed to get the same figures again, on one line. */
export function stampText({ seed, iterations, version, plan }: Forecast): string {
  return `Leeway ${version}, ${iterations} futures, seed ${seed}, plan ${plan.sha256.slice(0, 12)}`;
}

function percent(part: number): string {
  const value = part * 100;
  const whole = Math.round(value);
  if (whole === 0 && part > 0) return "less than 1 %";
  if (whole === 100 && part < 1) return "more than 99 %";
  return `${whole} %`;
}
