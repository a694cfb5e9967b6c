import type { CalendarDefinition, Plan, Task } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { statedAt } from "../plan/stated.ts";
import {
  chosenField,
  dateText,
  entryField,
  type FieldsOf,
  optionalChance,
  optionalDate,
  percentText,
  tickField,
} from "./entryFields.ts";

type OfTask = FieldsOf & { task: Task; path: string };

/** When a task may be worked on. */
export function taskWhen(on: OfTask): TemplateResult {
  const { task, path, plan } = on;
  const of = task.name;
  const date = (key: "notBefore" | "target", label: string) =>
    entryField(on, {
      path: `${path}.${key}`,
      label,
      of,
      committed: dateText(task[key]),
      kind: "date",
      read: optionalDate,
    });
  const calendars = [...plan.calendars.keys()].map((name) => [name, calendarName(name)] as const);
  const own = statedAt(on.stated, `${path}.calendar`);
  const whose = plan.phases.find(({ name }) => name === task.phase)?.calendar;
  const without = `its ${whose === undefined ? "plan" : "phase"}'s: ${calendarName(whose ?? plan.calendar)}`;
  return html`<h3>Dates</h3>
    <div class="entry-fields">
      ${date("notBefore", "Not before")}
      ${date("target", "Target")}
      ${chosenField(on, {
        path: `${path}.calendar`,
        label: "Calendar",
        of,
        committed: typeof own === "string" ? own : "",
        choices: [["", without], ...calendars],
      })}
      ${
        task.milestone === false
          ? chosenField(on, {
              path: `${path}.unbroken`,
              label: "Not across a day off of",
              of,
              committed: task.unbroken ?? "",
              choices: [["", "none"], ...calendars],
              refuses: (name) => tooLong(task, plan.calendars.get(name)),
            })
          : nothing
      }
      ${tickField(on, {
        path: `${path}.holdToPlan`,
        label: "Never before its start in the plan as written",
        of,
        committed: task.holdToPlan,
      })}
    </div>`;
}

/** Whether a task is needed, and what for. */
export function taskNeeded(on: OfTask): TemplateResult {
  const { task, path, plan } = on;
  const of = task.name;
  const responses = [...plan.risks, ...plan.assumptions].flatMap((entry) =>
    entry.responses.map(({ id, action }) => [id, `“${action}” is adopted`] as const),
  );
  const delivers = plan.purpose.scopeIn.map(({ id, name }) => [id, name] as const);
  const choice = (
    key: "onlyIf" | "scope" | "detail",
    label: string,
    choices: readonly (readonly [string, string])[],
  ) => chosenField(on, { path: `${path}.${key}`, label, of, committed: task[key] ?? "", choices });
  return html`<h3>Whether it is needed, and what for</h3>
    <div class="entry-fields">
      ${entryField(on, {
        path: `${path}.chance`,
        label: "Chance it is needed, %",
        of,
        committed: task.chance === 1 ? "" : percentText(task.chance),
        kind: "number",
        read: optionalChance,
      })}
      ${responses.length === 0 ? nothing : choice("onlyIf", "Needed only if", [["", "nothing: in any case"], ...responses])}
      ${delivers.length === 0 ? nothing : choice("scope", "Delivers", [["", "not said"], ...delivers])}
      ${choice("detail", "How firm it is", [
        ["", "not said"],
        ["firm", "firm: near, and known in detail"],
        ["outline", "an outline: far off"],
      ])}
    </div>`;
}

const due = [
  ["", "evenly over the task"],
  ["start", "at its start"],
  ["finish", "at its finish"],
] as const;

/** When the cost of a task falls due; nothing where it costs nothing of its own, or has no length. */
export function costDue(on: OfTask): TemplateResult | typeof nothing {
  const { task, path } = on;
  if (task.cost === undefined || task.milestone !== false) return nothing;
  const committed = task.due === "evenly" ? "" : task.due;
  return html`<div class="entry-fields">${chosenField(on, { path: `${path}.due`, label: "The cost falls due", of: task.name, committed, choices: due })}</div>`;
}

/** A calendar by its name; those that always exist in words. */
function calendarName(name: Plan["calendar"]): string {
  return name === "weekdays" ? "Monday to Friday" : name === "every-day" ? "every day" : name;
}

const week = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const;

/** Why a task does not fit between two days off that come round each week: no plan could be computed with it. */
function tooLong({ name, duration }: Task, calendar: CalendarDefinition | undefined): string | undefined {
  if (calendar === undefined || duration?.unit !== "days" || calendar.workdays.length === week.length) return;
  const days = duration.kind === "range" ? duration.high : duration.kind === "fixed" ? duration.value : 0;
  const works = [...week, ...week].map((day) => (calendar.workdays.includes(day) ? "w" : " ")).join("");
  const most = Math.max(...works.split(" ").map((run) => run.length));
  if (days <= most) return;
  return `“${name}” takes up to ${days} working days, and “${calendarName(calendar.name)}” has a day off after ${most}. Choose another calendar, or make it two tasks.`;
}
