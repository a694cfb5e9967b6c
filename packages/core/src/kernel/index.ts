export { type Arena, bytesOfCalendar, bytesOfRows } from "./arena.ts";
export type { KernelCalendar } from "./calendar.ts";
export { loadKernel } from "./kernel.ts";
export { plainKernel } from "./plainKernel.ts";
export type { Kernel } from "./types.ts";
