import { formatDate } from "@leeway/charts";
import type { Due, DueList, Forecast } from "@leeway/core";
import { explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainText, plainTexts } from "./plainText.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** Columns of the date, indent and space behind it included. */
const DATE = 14;

/** Who has to be told of what, how and when, month by month. */
export function informText(asGiven: DueList, forecast: Forecast, page: Page): string {
  const { due, until, without } = plainTexts(asGiven);
  const level = Math.round(forecast.committed.confidence * 100);
  const head = `${due.length === 1 ? "1 occasion" : `${due.length} occasions`} to inform somebody until ${formatDate(until, "long")}, the finish at ${level} %.`;
  const lines = [page.strong(plainText(forecast.plan.title)), "", ...wrap(head, page.width)];
  let [month, day] = ["", ""];
  for (const each of due) {
    if (each.date.slice(0, 7) !== month) {
      month = each.date.slice(0, 7);
      lines.push("", page.strong(`${MONTHS[Number(month.slice(5)) - 1]} ${month.slice(0, 4)}`));
    }
    const date = each.date === day ? "" : formatDate(each.date, "weekday").replace(/ \d{4}$/, "");
    day = each.date;
    const [first = "", ...rest] = wrap(sentence(each), page.width - DATE - 2);
    lines.push(`  ${date.padEnd(DATE - 2)}${first}`, ...rest.map((line) => `${" ".repeat(DATE)}  ${line}`));
  }
  if (without.length > 0) {
    lines.push("", page.strong("Not said in the plan"));
    const names = {
      every: "how often",
      owner: "who sees to it",
      how: "by what means",
      what: "what they are told",
    };
    for (const { name, missing } of without) {
      const said = wrap(`${name}: ${missing.map((key) => names[key]).join(", ")}`, page.width - 4);
      lines.push(...said.map((line, k) => `${k === 0 ? "  " : "    "}${line}`));
    }
  }
  const rule =
    "A day without work on the plan's calendar is moved to the next one with work; milestones stay on the day committed to.";
  const { plan, seed } = forecast;
  const stamp = explanationStamp({ ...forecast, seed: plainText(seed), sha256: plan.sha256 });
  return `${[...lines, "", ...wrap(rule, page.width), ...wrap(stamp, page.width)].join("\n")}\n`;
}

function sentence({ stakeholder, owner, how, what, milestone, movedFrom }: Due): string {
  const about = milestone === undefined ? "" : ` about ${milestone.name}`;
  const said = what === undefined ? "" : `: ${what}`;
  const by = [how, owner?.name].filter((part) => part !== undefined).join(", ");
  const moved = movedFrom === undefined ? "" : ` [from ${formatDate(movedFrom, "weekday")}]`;
  return `${stakeholder.name}${about}${said}${by === "" ? "" : ` (${by})`}${moved}`;
}
