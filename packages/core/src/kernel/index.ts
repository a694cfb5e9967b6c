export type { AnyWork } from "./anyWork.ts";
export { type Arena, bytesOfCalendar, bytesOfRows } from "./arena.ts";
export type { BenefitStream } from "./benefitStream.ts";
export { bytesOfStreams } from "./benefitWriter.ts";
export type { KernelCalendar } from "./calendar.ts";
export { bytesOfDrawer } from "./drawerBy.ts";
export type { KernelExports } from "./exports.ts";
export { joinKernel, type KernelEntry, leaveMemory, loadKernel, loadSharedKernel } from "./kernel.ts";
export { bytesOfLedger, type Ledger, newLedger } from "./ledger.ts";
export type { LinkRows } from "./linkRows.ts";
export { bytesOfLink } from "./linkWriter.ts";
export { bytesOfPeople, type SharedPerson, type Sharer, type WantedShare } from "./peopleLists.ts";
export { plainKernel } from "./plainKernel.ts";
export { quickCalendar } from "./quickCalendar.ts";
export { dropSpare, spareMemory, touch, touchMemory } from "./spare.ts";
export {
  bytesOfPieces,
  bytesOfSharedPieces,
  bytesOfTable,
  sharePieces,
  type TablesToMake,
} from "./tablesFor.ts";
export type { Drawing, Kernel } from "./types.ts";
export { makePieces, warmUp } from "./warmUp.ts";
