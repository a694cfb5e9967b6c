import type { Task } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { figureText } from "../plan/figureText.ts";
import { readNumber } from "../plan/readNumber.ts";
import { delayUnit, taskUnit } from "../plan/unitWords.ts";
import { dateText, entryField, type FieldsOf, optionalDate, optionalText, whoField } from "./entryFields.ts";
import { estimatePart, shapePart } from "./estimatePart.ts";
import type { Reading } from "./listsElement.ts";
import { noteField } from "./noteField.ts";
import { peoplePicker } from "./peoplePicker.ts";
import { taskLinks } from "./taskLinks.ts";
import { costDue, taskNeeded, taskWhen } from "./taskWhen.ts";

interface TaskDetails extends FieldsOf {
  task: Task;
  path: string;
}

/** All of a task that its row has no room for: who works on it, what it waits for, what it costs, its dates, how far it is, who says so. */
export function taskDetails(on: TaskDetails): TemplateResult {
  const { task, path, plan } = on;
  const of = task.name;
  const remains = task.remaining === undefined ? "working days" : delayUnit(task.remaining);
  const point = task.milestone !== false;
  const own = (
    key: string,
    label: string,
    committed: string,
    read: (text: string) => Reading,
    kind: "text" | "number" | "date" = "text",
  ) => entryField(on, { path: `${path}.${key}`, label, of, committed, kind, read });
  const sentence = (key: "basis" | "note", label: string, committed = "") =>
    entryField(on, { path: `${path}.${key}`, label, of, committed, wraps: true, read: optionalText });
  const date = (key: "started" | "finished", label: string) =>
    own(key, label, dateText(task[key]), optionalDate, "date");
  const part = (key: "cost" | "costPerDay" | "remaining", label: string, unit: string) =>
    estimatePart({ ...on, label, of, estimate: task[key], path: `${path}.${key}`, unit });
  return html`<div class="entry-form">
    ${
      point
        ? nothing
        : html`<h3>Who works on it</h3>
          ${peoplePicker(on)}
          <p class="quiet">Where tasks need the same people at once, the higher priority goes first; empty is 0.</p>
          <div class="entry-fields">
            ${own("priority", "Priority", task.priority === 0 ? "" : String(task.priority), optionalPriority, "number")}
          </div>`
    }
    ${taskLinks(on)}
    <h3>What it costs</h3>
    ${part("cost", `Cost, ${plan.currency}`, plan.currency)}
    ${point ? nothing : part("costPerDay", `Cost each working day, ${plan.currency}`, plan.currency)}
    ${costDue(on)}
    ${taskWhen(on)}
    ${taskNeeded(on)}
    <h3>How far it is</h3>
    <p class="quiet">The whole plan is as of one day: what is neither started nor finished by then begins after it.${point ? "" : " Of what remains the likely figure will do."}</p>
    <div class="entry-fields">
      ${entryField(on, {
        path: "statusDate",
        label: "Whole plan as of",
        of,
        committed: dateText(plan.statusDate),
        kind: "date",
        read: optionalDate,
      })}
      ${point ? nothing : date("started", "Started")}
      ${date("finished", "Finished")}
      ${own("spent", `Spent so far, ${plan.currency}`, task.spent === undefined ? "" : figureText(task.spent), optionalMoney, "number")}
    </div>
    ${point ? nothing : part("remaining", `What remains, ${remains}`, remains)}
    <h3>Why these figures</h3>
    ${shapePart({ ...on, ...durationOf(on), of })}
    <div class="entry-fields">
      ${
        task.estimatedBy.length > 1
          ? nothing
          : whoField(on, {
              path: `${path}.estimatedBy`,
              label: "Estimated by",
              of,
              committed: task.estimatedBy[0] ?? "",
            })
      }
      ${sentence("basis", "Why they would know", task.basis)}
      ${noteField(on, { path: `${path}.note`, of, committed: task.note })}
    </div>
  </div>`;
}

function durationOf({ task, path }: TaskDetails) {
  const key = task.effort === undefined ? "duration" : "effort";
  return {
    label: `Between low and high, ${taskUnit(task)}`,
    estimate: task[key],
    path: `${path}.${key}`,
    unit: taskUnit(task),
  };
}

const optionalMoney = (text: string): Reading =>
  text.trim() === "" ? { value: undefined } : readNumber(text, "a sum of money", "12,000");
const optionalPriority = (text: string): Reading =>
  text.trim() === "" ? { value: undefined } : readNumber(text, "a number", "1, or -1 for what can wait");
