export { briefSheet } from "./briefSheet.ts";
export { type BriefHtmlOptions, briefHtml } from "./page/briefHtml.ts";
export { preBriefHtml } from "./page/preBriefHtml.ts";
export type { PageFonts } from "./page/style.ts";
export { preBriefSheet } from "./preBriefSheet.ts";
export { sheetMarkdown } from "./sheet/markdown.ts";
export type * from "./sheet/types.ts";
