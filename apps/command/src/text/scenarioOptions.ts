import type { ScenarioChoice } from "@leeway/core";

/** The options that take these ids in and leave those out, in a command to be typed; a space before each. */
export function scenarioOptions({ with: taken = [], without: left = [] }: ScenarioChoice): string {
  const option = (name: string, ids: readonly string[]) =>
    ids.length === 0 ? "" : ` --${name} ${ids.join(",")}`;
  return option("with", taken) + option("without", left);
}
