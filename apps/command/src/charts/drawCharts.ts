import type { Forecast } from "@leeway/core";

/** Stand-in until the charts are exported. */
export async function drawCharts(_forecast: Forecast, _folder: string): Promise<boolean> {
  return true;
}
