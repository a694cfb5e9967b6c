import { shorthand } from "./choose.ts";
import { ROLES, who } from "./common.ts";
import { listOf } from "./list.ts";
import { id, label } from "./names.ts";
import { mapOf, object } from "./object.ts";
import { choice, date, moneyFromZero, number, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

const calendarName = () => label("calendar", "refers");

const absence = shorthand(
  date(),
  object("absence", "an absence", {
    from: required(date(), "its first day.", ["start"]),
    to: optional(date(), "Its last day; by default the first.", { mistakenFor: ["until", "end"] }),
    share: optional(number("a part from 0 to 1", { min: 0, max: 1 }), "Part of the capacity that is away.", {
      fallback: 1,
    }),
    why: optional(text("text"), "The reason.", { mistakenFor: ["name", "reason"] }),
  }),
  (day) => ({ from: day }),
);

const couldAdd = object("could-add", "capacity that could be added", {
  capacity: required(
    number("a number of people above 0, such as 0.2", { min: 0, open: true }),
    "how many more of them there would be; 0.2 is a day a week.",
    ["share", "people", "fte"],
  ),
  cost: optional(moneyFromZero(), "Money, once, if it is added; their rate is paid as before.", {
    fallback: 0,
    mistakenFor: ["price", "rate"],
  }),
  from: optional(date(), "First day on which it would be there; by default the plan's start.", {
    mistakenFor: ["start", "after"],
  }),
});

export const person = object("person", "a person", {
  id: required(id("person"), "their id."),
  name: required(text("a name"), "their name."),
  role: optional(text("text"), "What they do."),
  rate: optional(moneyFromZero(), "Money per person-day.", {
    fallback: 0,
    mistakenFor: ["dayRate", "cost", "costPerDay"],
  }),
  share: optional(number("a share of a day, such as 0.5", { min: 0 }), "What a bare id means in a task.", {
    fallback: 1,
  }),
  capacity: optional(
    number("a number of people, such as 0.4", { min: 0 }),
    "How many of them there are; 0.4 is two days a week.",
    {
      fallback: 1,
      mistakenFor: ["availability", "available", "fte"],
    },
  ),
  calendar: optional(calendarName(), "Their calendar; by default the plan's."),
  away: optional(listOf(absence), "Absences.", {
    mistakenFor: ["holidays", "vacation", "leave", "absences", "absent"],
  }),
  couldAdd: optional(couldAdd, "More of them that could be had; no figure counts it unless it is taken in.", {
    mistakenFor: ["extra", "more", "couldAddCapacity"],
  }),
});

export const stakeholder = object("stakeholder", "a stakeholder", {
  id: required(id("stakeholder"), "their id."),
  name: required(text("a name"), "their name."),
  role: optional(text("text"), "Their part in it."),
  interest: optional(text("text"), "What they want of it."),
  stance: optional(choice("supports", "neutral", "resists"), "Where they stand."),
  inform: optional(
    object("inform", "how a stakeholder is informed", {
      how: optional(text("text"), "By what means."),
      every: optional(choice("week", "two-weeks", "month", "quarter", "milestone"), "How often."),
      owner: optional(who(), "Who sees to it."),
      what: optional(text("text"), "What they are told.", { mistakenFor: ["message", "content", "about"] }),
      from: optional(
        date(),
        "The first day they are told, from which the rhythm runs; by default the plan's start.",
        {
          mistakenFor: ["start", "since", "first"],
        },
      ),
    }),
    "How they are kept informed.",
  ),
  approvesUpTo: optional(moneyFromZero(), "Money they may approve."),
  delegate: optional(
    who(),
    "Who may sign in their place, up to the same sum or their own limit, if that is less.",
    { mistakenFor: ["deputy"] },
  ),
});

export const phase = object("phase", "a phase", {
  name: required(label("phase", "defines"), "its name.", ["id", "title"]),
  calendar: optional(calendarName(), "Calendar of its tasks; by default the plan's."),
  ...ROLES,
});

const holiday = shorthand(
  date(),
  object("holiday", "a holiday", {
    from: required(date(), "its first day.", ["date", "start"]),
    to: optional(date(), "Its last day; by default the first.", { mistakenFor: ["until", "end"] }),
    name: optional(text("text"), "What it is called."),
  }),
  (day) => ({ from: day }),
);

export const WEEKDAYS = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;
/** Calendars that always exist. */
export const GIVEN_CALENDARS = ["weekdays", "every-day"] as const;

const calendar = object("calendar", "a calendar", {
  like: optional(calendarName(), "Starts from that calendar; own workdays replace, own holidays add.", {
    mistakenFor: ["base", "extends"],
  }),
  workdays: optional(
    listOf(choice(...WEEKDAYS), 1),
    "Days of the week that hold work; Monday to Friday unless said.",
    {
      mistakenFor: ["days", "weekdays"],
    },
  ),
  holidays: optional(listOf(holiday), "Days that hold no work.", { mistakenFor: ["closed", "off"] }),
});

export const calendars = mapOf("calendars by name", calendar, (name, place, reading) => {
  if (GIVEN_CALENDARS.some((given) => given === name)) {
    const remedy = `Give it another name, with \`like: ${name}\`, and name that one in \`calendar\`.`;
    reading.report(place, "given-calendar", `\`${name}\` always exists and cannot be changed.`, remedy, {
      received: name,
    });
  }
  reading.labels.calendar.set(name, place);
});
