import type { Brief } from "@leeway/core";
import { formatDate } from "../../words/formatDate.ts";
import { formatPercent } from "../../words/formatPercent.ts";
import { chanceWords, rough } from "../says.ts";
import { strong, text } from "../sheet/build.ts";
import type { Block, Section } from "../sheet/types.ts";

/** Benefit against cost, and what a week later costs. What the plan does not state is said to be missing. */
export function worthSection(brief: Brief): Section {
  return {
    key: "worth",
    title: "Benefit against cost, and the cost of delay",
    blocks: [benefitBlock(brief), delayBlock(brief)],
  };
}

export function benefitBlock(brief: Brief): Block {
  const { appraisal, benefits } = brief.worth;
  if (benefits.stated === 0)
    return text(strong("Benefit: "), "none is stated, so it cannot be set against the cost.");
  if (benefits.valued === 0)
    return text(
      strong("Benefit: "),
      `${benefits.stated} stated, none worth money, so it cannot be set against the cost.`,
    );
  if (appraisal === undefined)
    return text(
      strong("Benefit: "),
      "stated, but not over how many years it counts; the plan has no appraisal.",
    );
  const { net, payback, years, discountRate } = appraisal;
  const paid =
    payback.p50 === undefined
      ? `Fewer than half of the futures are paid back within ${years} years.`
      : `Paid back by ${formatDate(payback.p50, "short")} in half of the futures${
          payback.p80 === undefined ? "" : `, by ${formatDate(payback.p80, "short")} in 8 of 10`
        }.`;
  return text(
    strong("Net value "),
    `over ${years} years, benefits discounted at ${Number((100 * discountRate).toPrecision(4))} %, cost not: `,
    strong(rough(brief, net.p50)),
    ` in the middle, 8 in 10 between ${rough(brief, net.p10)} and ${rough(brief, net.p90)}; above nought ${chanceWords(appraisal.chancePositive)}. ${paid}`,
  );
}

export function delayBlock(brief: Brief): Block {
  const { lateness } = brief.worth;
  if (lateness === undefined)
    return text(strong("Cost of delay: "), "the plan does not say what finishing late costs.");
  const once = lateness.once === 0 ? "" : `, and ${rough(brief, lateness.once)} once when late at all`;
  return text(
    strong("Cost of delay: "),
    strong(`${rough(brief, lateness.perWeek)} a week`),
    ` after ${formatDate(lateness.after, "short")}${once}. Late in ${formatPercent(lateness.chance)} of futures; `,
    `expected ${rough(brief, lateness.mean)}${lateness.chance > 0 ? `, ${rough(brief, lateness.meanWhenLate)} when late` : ""}, beside the total and in no sum here.`,
  );
}
