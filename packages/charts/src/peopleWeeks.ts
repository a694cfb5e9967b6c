import type { PeopleLoad, PersonLoad } from "@leeway/core";
import { dayMs, isoToMs } from "./dates/dayToIso.ts";
import { emptyDrawing } from "./draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawWeeks } from "./people/drawWeeks.ts";
import { columnDays } from "./words/columnDays.ts";
import { formatDate } from "./words/formatDate.ts";
import { formatDays } from "./words/formatDays.ts";
import { groupDigits } from "./words/groupDigits.ts";
import { plainName, quoteName } from "./words/plainName.ts";

const most = 12;
/** Less of a day than this is no overload. */
const least = 0.05;

/**
 * People's load week by week against the capacity present: what the plan as written asks of them when nobody waits,
 * dark where that is more than there is, and the load that 80 % of the futures stay within. The twelve most
 * overloaded.
 *
 * Reads `people`, `weeks`, `respectCapacity`, `plan.start`.
 */
export function peopleWeeks(answer: PeopleLoad, options: ChartOptions): Figure {
  const { plan, respectCapacity } = answer;
  const people = answer.people.filter((person) => total(person.unlimited.asked) > 0).sort(heavier);
  const shown = people.length <= most + 1 ? people : people.slice(0, most);
  const rest = people.length - shown.length;
  const last = lastWeek(answer);
  const weeks = answer.weeks
    .slice(0, last + 1)
    .map((monday) => (isoToMs(monday) - isoToMs(plan.start)) / dayMs);
  const away = people.some(({ unlimited, present }) =>
    unlimited.asked.some((days, k) => days - (unlimited.over[k] ?? 0) > (present[k] ?? 0) + least),
  );
  const title = finding(people, answer);
  const worst = people.filter((person) => weeksOver(person) > 0).slice(0, 3);
  return {
    title,
    subtitle: `Days asked of each person, week by week, ${respectCapacity ? "were nobody to wait" : "as written"}; full: more than there is${away ? "; open: while away" : ""}. Line: capacity present; ticks: the load 80 % of futures stay within`,
    summary:
      people.length === 0
        ? "No task of this plan names a person."
        : `Weekly load of ${people.length === 1 ? "one person" : `${people.length} people`}. ${worst.length === 0 ? "In no week is anybody asked for more than there is." : `Most overloaded: ${worst.map((person) => `${quoteName(person.name)}, ${weeksWord(weeksOver(person))}, ${formatDays(total(person.unlimited.over), "day")} too many`).join("; ")}.`}${respectCapacity ? " The plan lets tasks wait for people, so what is too much is done later." : ""}`,
    table: {
      columns: [
        { name: "Person", align: "start" },
        { name: "Role", align: "start" },
        { name: "Asked in all", unit: "days", align: "end" },
        { name: "Weeks over capacity", align: "end" },
        { name: "Too much in all", unit: "days", align: "end" },
        { name: "Worst week", align: "end" },
        { name: "Asked in it", unit: "days", align: "end" },
        { name: "Too many in it", unit: "days", align: "end" },
        { name: "Present in it", unit: "days", align: "end" },
      ],
      rows: people.map((person) => {
        const week = worstWeek(person);
        return [
          plainName(person.name),
          person.role === undefined ? "" : plainName(person.role),
          columnDays(total(person.unlimited.asked)),
          groupDigits(weeksOver(person)),
          columnDays(total(person.unlimited.over)),
          formatDate(answer.weeks[week] ?? ""),
          columnDays(person.unlimited.asked[week] ?? 0),
          columnDays(person.unlimited.over[week] ?? 0),
          columnDays(person.present[week] ?? 0),
        ];
      }),
    },
    svg:
      people.length === 0 || weeks.length === 0
        ? emptyDrawing("No task of this plan names a person.", options)
        : drawWeeks(
            {
              start: plan.start,
              weeks,
              people: shown,
              figures: shown.map((person) => {
                const over = weeksOver(person);
                return over === 0 ? "none" : weeksWord(over);
              }),
              heading: "over capacity",
              rest: rest === 0 ? "" : `and ${rest} more, none asked for more days too many`,
            },
            options,
          ),
  };
}

function total(days: readonly number[]): number {
  return days.reduce((sum, each) => sum + each, 0);
}

function weeksOver(person: PersonLoad): number {
  return person.unlimited.over.filter((days) => days >= least).length;
}

function weeksWord(count: number): string {
  return count === 1 ? "1 week" : `${count} weeks`;
}

/** The week asked for most beyond what there is; where there is none, the one asked for most. */
function worstWeek({ unlimited }: PersonLoad): number {
  const measure = unlimited.over.some((days) => days >= least) ? unlimited.over : unlimited.asked;
  let worst = 0;
  measure.forEach((days, k) => {
    if (days > (measure[worst] ?? 0)) worst = k;
  });
  return worst;
}

/** Most days too many first, then most days asked, then by id, by code unit. */
function heavier(a: PersonLoad, b: PersonLoad): number {
  return (
    total(b.unlimited.over) - total(a.unlimited.over) ||
    total(b.unlimited.asked) - total(a.unlimited.asked) ||
    (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
  );
}

/** The last week in which anybody has anything to do, in the plan or in 80 % of the futures. */
function lastWeek({ people, weeks }: PeopleLoad): number {
  for (let k = weeks.length - 1; k > 0; k--)
    if (people.some((person) => (person.unlimited.asked[k] ?? 0) > 1e-6 || (person.p80[k] ?? 0) > 1e-6))
      return k;
  return 0;
}

function finding(people: readonly PersonLoad[], answer: PeopleLoad): string {
  const [first] = people;
  if (first === undefined) return "No task names a person";
  const week = worstWeek(first);
  const asked = `${formatDays(first.unlimited.asked[week] ?? 0, "day")}, ${columnDays(first.unlimited.over[week] ?? 0)} too many`;
  const monday = formatDate(answer.weeks[week] ?? "");
  const over = weeksOver(first);
  if (over === 0) return "Nobody is asked for more than there is of them";
  const others = people.filter((person) => weeksOver(person) > 0).length - 1;
  const more =
    others === 0 ? "" : `; ${others === 1 ? "one other is" : `${others} others are`} overloaded too`;
  return `${quoteName(first.name)} is asked for too much in ${weeksWord(over)}, most from ${monday}: ${asked}${more}`;
}
