export { qualityBars } from "./qualityBars.ts";
export type * from "./types.ts";
