export { briefSheet } from "./briefSheet.ts";
export { preBriefSheet } from "./preBriefSheet.ts";
export { sheetMarkdown } from "./sheet/markdown.ts";
export type * from "./sheet/types.ts";
