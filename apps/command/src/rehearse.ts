import { computeForecast } from "./compute/computeForecast.ts";
import { forecastText } from "./text/forecastText.ts";
import { pageOf } from "./text/page.ts";
import "./verbs/forecast.ts";

export { piecesFile } from "./makePieces.ts";

/** Answers about a plan to nobody, so that the engine compiles what it takes. */
export async function rehearse(text: string): Promise<void> {
  const { forecast } = await computeForecast({ text, options: {}, workers: 1 });
  if (forecast === undefined) return;
  JSON.stringify(forecast);
  forecastText(forecast, pageOf({}, { isTTY: false }), { planName: "plan.yaml", responses: true }, {});
}
