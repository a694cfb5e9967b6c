import { formatDate, formatDays, formatMoney, formatPercent, roundSignificant } from "@leeway/charts";
import type { Loss, PeopleLoad } from "@leeway/core";

/** A difference of sums: two significant digits, with the currency. */
function roughMoney({ plan }: PeopleLoad, value: number, signed = false): string {
  return formatMoney(roundSignificant(value, 2), plan.currency, signed);
}

/** What limited people cost at the committed level. */
export function limitsSentence(load: PeopleLoad): string {
  const { limits, respectCapacity } = load;
  if (load.people.length === 0) return "The plan names no people, so nobody is waited for.";
  if (limits === undefined) {
    return "The plan does not respect capacity, and some task asks for more of a person than there is.";
  }
  const level = formatPercent(limits.confidence);
  const [kept, free] = [formatDate(limits.with.date, "long"), formatDate(limits.without.date, "long")];
  const { workingDays, money } = limits.effect;
  const apart = [
    ...(Math.abs(workingDays) < 0.05
      ? []
      : [`${formatDays(Math.abs(workingDays))} ${workingDays > 0 ? "later" : "earlier"}`]),
    ...(Math.abs(money) < 0.5
      ? []
      : [`${roughMoney(load, Math.abs(money))} ${money > 0 ? "dearer" : "cheaper"}`]),
  ];
  const said =
    apart.length === 0
      ? `Limited people cost nothing at ${level}: ${kept} either way.`
      : `With limited people the commitment at ${level} is ${apart.join(" and ")}: ${kept}, without limits ${free}.`;
  return respectCapacity
    ? said
    : `The plan does not respect capacity: its dates are those without limits. Were it to: ${said}`;
}

/** What happens to the commitment when somebody is away. */
export function lossSentences(load: PeopleLoad): string[] {
  const { loss } = load;
  if (loss === undefined) return [];
  const { before, after, effect, days } = loss;
  const part = loss.part === 1 ? "" : `${formatPercent(loss.part)} of `;
  const span =
    loss.from === loss.to
      ? `on ${formatDate(loss.from, "weekday")}`
      : `from ${formatDate(loss.from, "weekday")} to ${formatDate(loss.to, "weekday")}`;
  const who = `Without ${part}${loss.person.name} for ${formatDays(days)}, ${span}`;
  const level = formatPercent(load.limits?.confidence ?? Number.NaN);
  const at = load.limits === undefined ? "the committed level" : level;
  const money = Math.abs(effect.money) < 0.5 ? "" : `, ${roughMoney(load, effect.money, true)}`;
  const moved =
    Math.abs(effect.workingDays) < 0.05
      ? `${who}, the finish at ${at} stays ${formatDate(before.date, "long")}${money}.`
      : `${who}, the finish at ${at} moves from ${formatDate(before.date, "long")} to ` +
        `${formatDate(after.date, "long")}: ${formatDays(effect.workingDays, "working day", true)}${money}.`;
  return [moved, ...chanceSentence(loss), ...touchedSentence(loss)];
}

function chanceSentence({ chance }: Loss): string[] {
  const said = (pair: [number, number] | undefined, what: string) =>
    pair === undefined ? [] : [`${what} from ${formatPercent(pair[0])} to ${formatPercent(pair[1])}`];
  const parts = [
    ...said(chance.finishBy, "the date asked for"),
    ...said(chance.budget, "the budget"),
    ...said(chance.both, "both"),
  ];
  return parts.length === 0 ? [] : [`Chances change for ${parts.join(", for ")}.`];
}

function touchedSentence({ stopped, goOn, person }: Loss): string[] {
  const waits = stopped.length === 0 ? "" : `Stops, as the plan is written: ${stopped.join(", ")}.`;
  const without = goOn.length === 0 ? "" : `Goes on without ${person.name}: ${goOn.join(", ")}.`;
  if (stopped.length + goOn.length === 0) return ["Nothing is asked of them then, as the plan is written."];
  return [waits, without].filter((text) => text !== "");
}
