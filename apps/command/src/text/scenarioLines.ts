import type { Scenario, ScenarioChoice } from "@leeway/core";
import { wrap } from "./page.ts";

/** What was switched, so that a page on the table says that it is not the plan as it stands. */
export function scenarioLines(choice: ScenarioChoice, width: number): string[] {
  const parts = [
    ...(choice.with === undefined ? [] : [`with ${choice.with.join(", ")}`]),
    ...(choice.without === undefined ? [] : [`without ${choice.without.join(", ")}`]),
  ];
  return parts.length === 0 ? [] : wrap(`What if: ${parts.join("; ")}.`, width);
}

/** For JSON: the same as a key of its own, or nothing where the plan is as it stands. */
export function scenarioKey(choice: ScenarioChoice): Scenario {
  const { with: taken, without: left } = choice;
  if (taken === undefined && left === undefined) return {};
  return {
    scenario: {
      ...(taken === undefined ? {} : { with: taken }),
      ...(left === undefined ? {} : { without: left }),
    },
  };
}
