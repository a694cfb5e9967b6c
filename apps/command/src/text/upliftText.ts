import { formatDate, formatMoney, formatPercent, roundSignificant, roundToLimits } from "@leeway/charts";
import { STAGE_UPLIFTS, UPLIFT_BOUNDS, type UpliftAnswer, type UpliftedPlan } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";

const percent = (value: number) => `${Number(value.toFixed(value < 10 ? 2 : 1))} %`;

/** An uplift for optimism beside the forecast, with what it is for and what it is not. */
export function upliftText(given: UpliftAnswer, page: Page): string {
  const answer = plainTexts(given);
  const { width, strong } = page;
  const { plan, seed, iterations, design, version } = answer;
  const stamp = { seed, iterations, design, version, sha256: plan.sha256 };
  const blocks: string[][] = [
    [explanationHead(plan.title, stamp, page)],
    [...wrap(finding(answer), width).map(strong), ...wrap(upliftWords(answer), width)],
    comparison(answer, width),
    cautions(answer).flatMap((text) => wrap(`Note: ${text}`, width, "  ")),
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

function finding({ uplifted, committed, hasMoney }: UpliftAnswer): string {
  const level = formatPercent(committed.confidence);
  const later =
    uplifted.finish === undefined
      ? []
      : [
          uplifted.finish.date === committed.date
            ? "on the same day as"
            : uplifted.finish.date > committed.date
              ? "later than"
              : "earlier than",
        ].map((word) => `finishes ${word} the forecast at ${level}`);
  const dearer =
    uplifted.cost === undefined || !hasMoney
      ? []
      : [
          `costs ${uplifted.cost > committed.cost ? "more" : "less"} than ${later.length > 0 ? "it" : `the forecast at ${level}`}`,
        ];
  return `The plan as written with this uplift ${[...later, ...dearer].join(" and ")}.`;
}

function upliftWords({ asked, management, plan }: UpliftAnswer): string {
  if (asked.table === "stages") {
    return `Uplift: ${percent(asked.capital)} of the cost, ${STAGE_UPLIFTS[asked.kind].name}, stage ${asked.stage}. The table has none for duration.`;
  }
  const { duration, capital } = asked.uplift;
  const kinds = asked.mix.map(
    ({ kind, part }) => `${UPLIFT_BOUNDS[kind].name}${asked.mix.length > 1 ? ` ${formatPercent(part)}` : ""}`,
  );
  const side = (what: string, value: typeof capital) =>
    value === undefined
      ? []
      : [
          `${percent(value.result)} of the ${what}${asked.mitigated > 0 ? ` (upper bound ${percent(value.upper)}, ${formatPercent(asked.mitigated)} of it managed)` : ""}`,
        ];
  const paid = management > 0 ? `; ${formatMoney(management, plan.currency)} for managing it added` : "";
  return `Uplift: ${[...side("duration", duration), ...side("cost", capital)].join(", ")}; ${kinds.join(", ")}${paid}.`;
}

function comparison(answer: UpliftAnswer, width: number): string[] {
  const { uplifted, upper, committed, plan, hasMoney, asked } = answer;
  const money = (value: number | undefined) =>
    value === undefined ? "no uplift" : formatMoney(roundSignificant(value, 4), plan.currency);
  const date = (iso: string | undefined) => (iso === undefined ? "no uplift" : formatDate(iso, "weekday"));
  const row = (name: string, finish: string, cost: string) => [name, finish, ...(hasMoney ? [cost] : [])];
  const cells = ({ finish, cost }: UpliftedPlan) => [date(finish?.date), money(cost)] as const;
  const mitigated = asked.table === "bounds" && asked.mitigated > 0;
  const sum = roundToLimits(committed.cost, committed.costLow, committed.costHigh);
  return table(
    [
      { heading: "", align: "left" },
      { heading: "finish", align: "left" },
      ...(hasMoney ? [{ heading: "cost", align: "right" as const }] : []),
    ],
    [
      row("plan as written", date(uplifted.asWritten.date), money(uplifted.asWritten.cost)),
      ...(upper === undefined ? [] : [row("with the upper bound", ...cells(upper))]),
      row(mitigated ? "with what is left of it" : "with the uplift", ...cells(uplifted)),
      row(
        `forecast at ${formatPercent(committed.confidence)}`,
        date(committed.date),
        formatMoney(sum, plan.currency),
      ),
    ],
    width,
  );
}

function cautions({ asked }: UpliftAnswer): string[] {
  const bounds = asked.table === "bounds";
  const low =
    bounds && [asked.uplift.duration, asked.uplift.capital].some((side) => side?.belowLower === true);
  return [
    bounds
      ? "Bounds: Mott MacDonald (2002), Review of Large Public Procurement in the UK, Table 2, as in HM Treasury's supplementary Green Book guidance on optimism bias. UK public procurement; no law of nature for other work."
      : "Uplifts by stage: Scottish Transport Appraisal Guidance, Technical Database, Table 13.4.",
    "It is for early estimates without priced risks; it begins from evidence and falls as risks are identified and costed (Green Book 5.43 to 5.46). It is not contingency.",
    "Take one or the other: the forecast holds ranges and risks already, and an uplift on top of its contingency counts the same thing twice. Where the forecast is far below the uplift, ask which risks it does not hold.",
    "All cost of the plan is taken as capital cost. Your own organisation's rules for appraisal and funding come first.",
    ...(low
      ? [
          "What is left is below the lower bound, which even well managed projects needed: say what evidence there is.",
        ]
      : []),
  ];
}
