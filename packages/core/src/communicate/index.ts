export { dueEvents } from "./dueEvents.ts";
export { type DueOptions, dueList, nextWorkday } from "./dueList.ts";
export { dueTable } from "./dueTable.ts";
export { rhythm } from "./rhythm.ts";
export { type RoleOptions, roleMatrix } from "./roles/roleMatrix.ts";
export type { Role, RoleFault, RoleLoad, RoleMatrix, RoleRow } from "./roles/types.ts";
export type { Due, DueList } from "./types.ts";
