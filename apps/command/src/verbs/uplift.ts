import { type Plan, type UpliftAnswer, type UpliftAsked, upliftedPlan } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { moneyOption } from "../call/moneyOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { forecastEach } from "../estimating/forecastBoth.ts";
import { upliftOption } from "../estimating/upliftOption.ts";
import { upliftText } from "../text/upliftText.ts";
import { answerVerb } from "./answerVerb.ts";

/** Shows what an uplift for optimism would make of the plan as written, beside what the forecast says. */
export function upliftVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  const { asked, problems } = upliftOption(
    call.options.get("kind") ?? [],
    values.text("mitigated"),
    values.text("stage"),
  );
  const management = moneyOption(values, "management");
  return answerVerb<UpliftAnswer>(call, values, {
    options,
    problems: [...problems, ...management.problems],
    rowsAsTasks: (plan) => plan.tasks.length + 8,
    async ask(plan) {
      if (asked === undefined) return { problems: [] }; // its problems have ended the call already
      const { forecasts, problems: found } = await forecastEach([plan], options);
      const [forecast] = forecasts ?? [];
      if (forecast === undefined) return { problems: found };
      const sum = management.value ?? 0;
      const uplifted = withUplift(plan, asked, "result", sum);
      if (uplifted === undefined) {
        const rule = "With the uplift it would run past the end of the calendar.";
        return { problems: [callProblem("beyond-calendar", "--kind", rule, "Shorten the plan.")] };
      }
      const { seed, iterations, version, design, committed, asWritten } = forecast;
      const upper =
        asked.table === "bounds" && asked.mitigated > 0 ? withUplift(plan, asked, "upper", 0) : undefined;
      const answer: UpliftAnswer = {
        plan: forecast.plan,
        seed,
        iterations,
        version,
        design,
        asked,
        management: sum,
        uplifted,
        ...(upper && { upper }),
        committed,
        asWritten,
        hasMoney: forecast.cost.sd > 0 || forecast.cost.mean !== 0,
      };
      return { answer, problems: found };
    },
    text: (answer, page) => upliftText(answer, page),
  });
}

function withUplift(plan: Plan, asked: UpliftAsked, side: "result" | "upper", management: number) {
  if (asked.table === "stages") return upliftedPlan(plan, { cost: asked.capital }, management);
  const { duration, capital } = asked.uplift;
  return upliftedPlan(
    plan,
    { ...(duration && { duration: duration[side] }), ...(capital && { cost: capital[side] }) },
    management,
  );
}
