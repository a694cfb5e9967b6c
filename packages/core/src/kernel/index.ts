export { type Arena, bytesOfCalendar, bytesOfRows } from "./arena.ts";
export type { KernelCalendar } from "./calendar.ts";
export { bytesOfDrawer } from "./drawerBy.ts";
export { loadKernel } from "./kernel.ts";
export { plainKernel } from "./plainKernel.ts";
export { bytesOfPieces, bytesOfTable } from "./tablesFor.ts";
export type { Drawing, Kernel } from "./types.ts";
export { warmUp } from "./warmUp.ts";
