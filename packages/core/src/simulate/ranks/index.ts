export { bytesOfRanks } from "./bytesOfRanks.ts";
export { rankKeeper } from "./rankKeeper.ts";
export { ranksFrom } from "./ranksFrom.ts";
export { type SettledRanks, settledRanks } from "./settledRanks.ts";
export type { KeptRanks, RankKeeper } from "./types.ts";
