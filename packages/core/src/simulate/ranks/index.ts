export { bytesOfRanks } from "./bytesOfRanks.ts";
export { rankKeeper } from "./rankKeeper.ts";
export { ranksFrom } from "./ranksFrom.ts";
export type { KeptRanks, RankKeeper } from "./types.ts";
