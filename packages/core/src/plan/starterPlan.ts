import { stringify } from "yaml";
import type { IsoDate } from "./types.ts";

/** What a plan to begin with is about. */
export interface StarterOptions {
  title: string;
  /** First day on which work may happen. */
  start: IsoDate;
  /** ISO 4217, e.g. `EUR`. */
  currency: string;
}

/** A short commented plan in YAML that reads without a problem: something to change, not to admire. */
export function starterPlan({ title, start, currency }: StarterOptions): string {
  const text = (value: string) =>
    stringify(value, { lineWidth: 0, defaultStringType: "QUOTE_DOUBLE" }).trim();
  return `# A plan. Change anything; everything but format, title, start and tasks may be left out.
# Dates are year-month-day. Money is a plain number, the dot is the decimal point.
format: 1
title: ${text(title)}
currency: ${text(currency)}
start: ${text(start)} # the first day on which work may happen

commitment:
  confidence: 0.8 # promise what holds 8 times in 10
  # finishBy: 2027-10-01    the date you were asked for
  # budget: 40000           the money there is

people:
  - { id: lead, name: Project lead, rate: 480 } # rate: money per day
  - { id: crew, name: Crew, rate: 350, capacity: 2 } # two of them

risks:
  - id: late-delivery
    name: The delivery comes late
    probability: 0.25 # 1 time in 4
    impacts:
      - { tasks: fit-out, wait: [3, 5, 15] } # working days of waiting
    responses:
      - { id: order-early, action: Order a month ahead, cost: 300, probability: 0.1 } # adopted: true makes it part

tasks:
  # An estimate is [low, likely, high] in working days. One number is certain.
  - { id: survey, name: Survey, duration: [2, 3, 6], people: lead }
  - { id: design, name: Design, duration: [8, 10, 18], people: lead, after: survey }
  - { id: permit, name: Permit, duration: [15, 20, 45], after: design }
  # effort: days of work, shared by its people.
  - { id: prepare, name: Prepare the site, effort: [6, 8, 12], people: { id: crew, share: 2 }, after: survey }
  - id: fit-out
    name: Fit out
    effort: [14, 18, 30]
    people: { id: crew, share: 2 }
    cost: [9000, 10000, 14000]
    after: [permit, prepare] # waits for both
  - { id: open, name: Open, milestone: true, after: fit-out }
`;
}
