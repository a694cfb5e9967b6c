import type { Reach, ReachStep, ReachWay } from "@leeway/core";
import { formatChance } from "../words/formatChance.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { quoteName } from "../words/plainName.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { enumerated } from "./enumerated.ts";
import { reachSpends } from "./speaksOfMoney.ts";
import { statedSum } from "./statedSum.ts";

/** What is asked: "finish by Friday 1 October 2027 within EUR 640,000, 8 times in 10". */
function wish({ asked, plan }: Reach): string {
  const parts = [
    ...(asked.finishBy === undefined ? [] : [`finish by ${formatDate(asked.finishBy, "long")}`]),
    ...(asked.sum === undefined
      ? []
      : [`${asked.finishBy === undefined ? "stay " : ""}within ${statedSum(asked.sum, plan.currency)}`]),
  ];
  const level = formatChance(asked.confidence);
  return parts.join(" ") + (level.includes("%") ? ` with a chance of ${level}` : `, ${level}`);
}

/** "hold 8 times in 10", "hold in 65 %". */
function held(confidence: number): string {
  const level = formatChance(confidence);
  return level.includes("%") ? `in ${level}` : level;
}

/** The sentence everything else explains: what to do, what chance that leaves, and what it costs. */
export function reachSentence(reach: Reach): string {
  const { answer, ways, best, chance } = reach;
  const [way] = ways;
  if (answer === "already") {
    return `To ${wish(reach)}: nothing more is needed, the plan as it stands does it in ${formatPercent(chance)}.`;
  }
  if (way !== undefined) {
    return `To ${wish(reach)}: ${deeds(way)}: then ${formatPercent(way.chance)}.${price(reach, way)}`;
  }
  const { asked, plan } = reach;
  if (asked.finishBy !== undefined && asked.finishBy < plan.start) {
    return `To ${wish(reach)}: nothing can, the plan starts on ${formatDate(plan.start, "long")}.`;
  }
  const options = reach.options.responses + reach.options.scope + reach.options.capacity;
  if (options === 0) {
    return `To ${wish(reach)}: nothing in the plan does. It names no response, optional scope or capacity to add; as it stands it is ${formatPercent(chance)}.`;
  }
  if (best === undefined || best.steps.length === 0) {
    return `To ${wish(reach)}: nothing in the plan does, and nothing in it helps: as it stands it is ${formatPercent(chance)}.`;
  }
  return `To ${wish(reach)}: nothing in the plan does. The most it can do is ${formatPercent(best.chance)}, from ${formatPercent(chance)} as it stands.`;
}

/** The other way, and where it stands. */
export function otherSentences(reach: Reach): string[] {
  const [first, second] = reach.ways;
  if (first === undefined) {
    const { best, asked } = reach;
    if (best === undefined || best.steps.length === 0) return [];
    const date = formatDate(best.outlook.date, "long");
    const cost = reachSpends(reach)
      ? ` and ${formatMoney(roundSignificant(best.outlook.cost, 3), reach.plan.currency)}, each by itself`
      : "";
    const level = held(asked.confidence);
    return [`For that, ${deeds(best)}.${price(reach, best)} What holds ${level} then is ${date}${cost}.`];
  }
  const stands = `As it stands, it is ${formatPercent(reach.chance)}.`;
  if (second === undefined) return [stands];
  return [stands, `Or ${deeds(second)}: then ${formatPercent(second.chance)}.${price(reach, second)}`];
}

/** Above this many steps a sentence points to the table. */
const MOST_NAMED = 4;

/** By how much a chance told from so many futures may be off, by sampling alone. */
export function samplingSentence({ stamp, chance, ways, best }: Reach): string {
  const told = ways[0]?.chance ?? best?.chance ?? chance;
  // 95 % of runs lie within 1.96 standard errors of a share; Latin hypercube sampling errs less.
  const points = 196 * Math.sqrt(Math.max(told * (1 - told), 0.01) / stamp.iterations);
  const size = points < 1 ? "less than 1 point" : `about ${Math.ceil(points)} points`;
  return `By sampling alone a chance may be off by ${size} of 100; differences on the same draws by less.`;
}

/** "adopt “A” and “B”, drop “C”, add 0.2 of “D”". */
function deeds({ steps }: ReachWay): string {
  if (steps.length > MOST_NAMED) return `take the ${steps.length} steps below`;
  const of = (kind: ReachStep["kind"]) => steps.filter((step) => step.kind === kind);
  const names = (list: readonly ReachStep[]) => enumerated(list.map(({ name }) => quoteName(name)));
  const [responses, scope, capacity] = [of("response"), of("scope"), of("capacity")];
  return [
    ...(responses.length === 0 ? [] : [`adopt ${names(responses)}`]),
    ...(scope.length === 0 ? [] : [`drop ${names(scope)}`]),
    ...(capacity.length === 0
      ? []
      : [
          `add ${enumerated(
            capacity.map(
              ({ name, capacity: more, from }) =>
                `${more} of ${quoteName(name)}${from === undefined ? "" : ` from ${formatDate(from, "short")}`}`,
            ),
          )}`,
        ]),
  ].join(", ");
}

/** As a further sentence; none where the plan has no money. */
function price(reach: Reach, { cost }: ReachWay): string {
  if (!reachSpends(reach)) return "";
  return cost < 0.005 ? " It costs no money." : ` It costs ${statedSum(cost, reach.plan.currency)}.`;
}
