import { escapeHtml } from "./escapeHtml.ts";
import { type PageFonts, pageStyle } from "./style.ts";

/** A whole document round what it shows. Its policy allows its own style and type and nothing else. */
export function page({ title, main, fonts }: { title: string; main: string; fonts?: PageFonts }): string {
  const policy =
    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark"><title>${escapeHtml(title)}</title><style>${pageStyle(fonts)}</style></head>
<body>${main}</body></html>
`;
}
