import { answerInThread } from "./compute/answerAside.ts";
import { computeForecast, takeUp } from "./compute/computeForecast.ts";
import { main as answerCall } from "./main.ts";
import type { Ahead } from "./start/helpAhead.ts";
import { forecastText } from "./text/forecastText.ts";
import { pageOf } from "./text/page.ts";

export { piecesFile } from "./makePieces.ts";
export { answerInThread };

/** @param ahead  A thread that was started already. */
export function main(words: readonly string[], ahead?: Ahead): Promise<number> {
  takeUp(ahead);
  return answerCall(words);
}

/** Answers about a plan to nobody, so that the engine compiles what it takes. */
export async function rehearse(text: string): Promise<void> {
  const { forecast } = await computeForecast({ text, options: {}, workers: 1 });
  if (forecast === undefined) return;
  JSON.stringify(forecast);
  forecastText(forecast, pageOf({}, { isTTY: false }), { planName: "plan.yaml", responses: true }, {});
}
