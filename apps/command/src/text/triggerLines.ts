import { triggerAsks, triggerCondition, triggerStands, triggersSentence } from "@leeway/charts";
import type { TriggerNow, TriggersNow } from "@leeway/core";
import { type Page, wrap } from "./page.ts";

const ORDER: readonly TriggerNow["state"][] = ["tripped", "close", "unknown", "quiet"];
const MARKS = { tripped: "TRIPPED", close: "close", unknown: "not measured", quiet: "quiet" };

/** Where every agreed return trigger stands, the worst first. */
export function triggerLines(now: TriggersNow, { width, strong }: Page): string[] {
  const sorted = [...now.triggers].sort((a, b) => ORDER.indexOf(a.state) - ORDER.indexOf(b.state));
  return [
    ...wrap(triggersSentence(now), width),
    ...sorted.flatMap((trigger) => {
      const condition = `we come back when ${triggerCondition(now, trigger)}`;
      const name = trigger.name === undefined ? "" : ` (${trigger.name})`;
      const [first = "", ...rest] = wrap(`${MARKS[trigger.state]}: ${condition}${name}.`, width - 2);
      const stands = [triggerStands(now, trigger), triggerAsks(trigger)].filter((text) => text !== "");
      return [
        `  ${trigger.state === "tripped" ? strong(first) : first}`,
        ...rest.map((line) => `    ${line}`),
        ...wrap(stands.join(" "), width - 4).map((line) => `    ${line}`),
      ];
    }),
  ];
}
