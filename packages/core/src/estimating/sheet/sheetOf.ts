import type { Id, Opinion, Plan, Task } from "../../plan/types.ts";
import { asWrittenValue } from "../../sampling/asWrittenValue.ts";
import { estimateQuantile } from "../../sampling/estimateQuantile.ts";
import { type Askable, askableOf } from "../askable.ts";
import type { WrittenAnswers } from "../interview/opinionFrom.ts";
import { latestOpinions } from "../latestOpinions.ts";
import { inUnit } from "../pool/restate.ts";
import { SHEET_COLUMNS, type SheetKey } from "./columns.ts";

/** Which tasks the sheet asks about. */
export interface SheetOptions {
  /** Everything that can be asked for: not only tasks the person has to do with, and certain costs too. */
  all?: boolean;
}

/** One row of a person's sheet. */
export interface SheetRow {
  askable: Askable;
  cells: Record<SheetKey, string>;
}

/** The sheet as rows of cells, headings first. */
export function sheetCells(rows: readonly SheetRow[]): string[][] {
  return [
    SHEET_COLUMNS.map(({ heading }) => heading),
    ...rows.map(({ cells }) => SHEET_COLUMNS.map(({ key }) => cells[key])),
  ];
}

/**
 * What one person is asked on a sheet of their own: the estimates of the tasks they do, answer for or are consulted on.
 * Their own last opinion stands in it, so that it comes back unchanged where nothing is new; nobody else's does, and not
 * the plan's estimate either, because whoever sees a number first stays near it (Tversky & Kahneman 1974, Science 185,
 * 1124-1131, recalled).
 */
export function sheetOf(plan: Plan, person: Id, { all = false }: SheetOptions = {}): SheetRow[] {
  const names = new Map(plan.tasks.map(({ id, name }) => [id, name]));
  return plan.tasks
    .filter((task) => all || isFor(task, person))
    .flatMap((task) =>
      askableOf(plan, task)
        .filter(({ of }) => all || of !== "cost" || costIsOpen(task, person))
        .map((askable): SheetRow => {
          const needs = task.after.map((link) => names.get(link.task) ?? link.task);
          const { of, unitWords } = askable;
          return {
            askable,
            cells: {
              task: task.id,
              name: task.name,
              needs: needs.join("; "),
              aside: asideWords(askable),
              of,
              unit: unitWords,
              ...answersNow(plan, task, person, askable),
            },
          };
        }),
    );
}

/** What the register counts on its own. */
function asideWords({ events, holds }: Askable): string {
  return [
    ...events.map((name) => `if it happens: ${name}`),
    ...holds.map((name) => `if it does not hold: ${name}`),
  ].join("; ");
}

/** A cost that is certain in the plan is a price and no estimate, unless this person has spoken of it. */
function costIsOpen({ cost, opinions }: Task, person: Id): boolean {
  if (cost !== undefined && cost.kind !== "fixed") return true;
  return (opinions ?? []).some(({ by, of }) => by === person && of === "cost");
}

function isFor(
  { people, responsible, accountable, consulted, estimatedBy, opinions }: Task,
  id: Id,
): boolean {
  return (
    people.some((each) => each.id === id) ||
    [responsible, accountable, consulted, estimatedBy].some((ids) => ids.includes(id)) ||
    (opinions ?? []).some(({ by }) => by === id)
  );
}

/** The cells of a person's last opinion, as one-in-ten values in the unit the task is asked in now. */
function answersNow(plan: Plan, task: Task, person: Id, { of, unit }: Askable): Required<WrittenAnswers> {
  const own = (task.opinions ?? []).filter(({ by }) => by === person);
  const [last] = latestOpinions(own, of);
  const blank = { basis: "", high: "", low: "", likely: "", dissent: "" };
  if (last === undefined) return blank;
  const daysPerWeek = plan.calendars.get(task.calendar)?.workdays.length ?? 5;
  const { low, likely, high } = oneInTenOf(last, unit === "weeks" ? "weeks" : "days", daysPerWeek);
  return {
    basis: last.basis ?? "",
    high: String(high),
    low: String(low),
    likely: String(likely),
    dissent: last.dissent ?? "",
  };
}

function oneInTenOf({ estimate, of }: Opinion, unit: "days" | "weeks", daysPerWeek: number) {
  const counted = of === "cost" ? estimate : inUnit(estimate, unit, daysPerWeek);
  if (counted.kind === "range" && counted.bounds === "p10-p90") {
    return { low: counted.low, likely: asWrittenValue(counted), high: counted.high };
  }
  const low = estimateQuantile(counted, 0.1);
  const high = estimateQuantile(counted, 0.9);
  return { low, likely: Math.min(high, Math.max(low, asWrittenValue(counted))), high };
}
