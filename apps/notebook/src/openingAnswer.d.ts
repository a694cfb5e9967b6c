declare module "virtual:opening-answer" {
  import type { Forecast } from "@leeway/core";

  /** The answer to the plan that the page opens on; undefined in development. */
  const answer: Forecast | undefined;
  export default answer;
}
