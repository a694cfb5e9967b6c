export { briefSheet } from "./briefSheet.ts";
export { type BriefHtmlOptions, briefHtml, sectionHtml } from "./page/briefHtml.ts";
export { escapeHtml } from "./page/escapeHtml.ts";
export { preBriefHtml } from "./page/preBriefHtml.ts";
export { type PageFonts, pageStyle } from "./page/style.ts";
export { preBriefSheet } from "./preBriefSheet.ts";
export { sheetMarkdown } from "./sheet/markdown.ts";
export type * from "./sheet/types.ts";
