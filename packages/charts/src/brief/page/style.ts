import { type Palette, palette } from "../../palette.ts";

/** The type a page carries with it, so that it looks and breaks the same everywhere: WOFF2 as data URLs. */
export interface PageFonts {
  serif: string;
  sans: string;
}

function colours(theme: Palette): string {
  return `--paper:${theme.paper};--ink:${theme.ink};--quiet:${theme.inkQuiet};--hairline:${theme.hairline};--committed:${theme.committed};--written:${theme.asWritten};--edge:${theme.rangeEdge};--tint:${theme.rangeWide}`;
}

function face(family: string, url: string): string {
  return `@font-face{font-family:"${family}";src:url(${url}) format("woff2");font-weight:200 900;font-display:block}`;
}

/**
 * The look of a brief: paper and ink, one scale (1 / 1.25 / 1.6), print always light. Sizes are in points on paper,
 * 8.5 at least for what is read.
 */
export function pageStyle(fonts?: PageFonts): string {
  const faces = fonts === undefined ? "" : face("Brief Serif", fonts.serif) + face("Brief Sans", fonts.sans);
  return `${faces}
:root{color-scheme:light dark;${colours(palette("light"))};--serif:"Brief Serif","Source Serif 4",Georgia,"Times New Roman","Liberation Serif",serif;--sans:"Brief Sans","Source Sans 3","Segoe UI","Helvetica Neue",Arial,"Liberation Sans",sans-serif}
@media screen and (prefers-color-scheme:dark){:root{${colours(palette("dark"))}}}
*{box-sizing:border-box}
html{background:var(--paper)}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.4 var(--serif);overflow-wrap:break-word;hyphens:manual}
main{max-width:70rem;margin:0 auto;padding:1.5rem}
h1,h2,p,ul,table,figure{margin:0}
h1{font-size:1rem;font-weight:600;letter-spacing:.01em}
h2{font-size:1rem;font-weight:650;margin-bottom:.25rem}
.head{color:var(--quiet);font-family:var(--sans);font-size:.875rem}
header{border-bottom:2px solid var(--ink);padding-bottom:.35rem;margin-bottom:.75rem;display:flex;flex-wrap:wrap;justify-content:space-between;gap:.1rem 1.5rem;align-items:baseline}
section p+p,section p+ul,section ul+p,section table+p,section p+table,section ul+ul{margin-top:.4rem}
ul{padding-left:1.25em}
li+li{margin-top:.2rem}
li::marker{color:var(--quiet)}
strong{font-weight:650}
a{color:inherit;text-decoration:underline dotted 1px;text-underline-offset:.15em}
.quiet{color:var(--quiet)}
.decision{margin-bottom:.75rem}
.decision h2{font-family:var(--sans);font-size:.875rem;font-weight:400;color:var(--quiet);margin:0}
.decision p:first-of-type{font-size:1.6rem;line-height:1.22}
.decision p+p{margin-top:.5rem;font-size:1.25rem;line-height:1.3}
.decision p.quiet{font-size:.9375rem}
table{border-collapse:collapse;width:100%;font-family:var(--sans);font-size:.9375rem;line-height:1.3;font-variant-numeric:tabular-nums}
th,td{padding:.15rem .75rem .15rem 0;vertical-align:top;text-align:left;font-weight:400;border-bottom:1px solid var(--hairline)}
th:last-child,td:last-child{padding-right:0}
thead th{color:var(--quiet)}
.end{text-align:right}
.whole th,.whole td{font-weight:650;border-bottom:0}
.bars{width:3.6rem}
.bar{display:block;width:3rem;height:.5rem;margin-top:.3rem}
.bar .days{fill:var(--committed)}.bar .money{fill:var(--edge)}.bar .less{fill:none;stroke:var(--edge)}
.commitment{border-top:1px solid var(--hairline);padding-top:.5rem;margin-bottom:.75rem}
.commitment tbody tr:first-child{color:var(--committed)}
.commitment tbody tr:first-child th,.commitment tbody tr:first-child td{font-weight:650}
.beside{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:.5rem 1.75rem;margin-top:.5rem;align-items:start}
.futures{display:block;width:100%;height:auto;font:11.7px var(--sans);font-variant-numeric:tabular-nums;fill:var(--ink)}
.futures text{paint-order:stroke;stroke:var(--paper);stroke-width:3px;stroke-linejoin:round}
.futures line{stroke-width:1.25}
.futures line.committed{stroke:var(--committed);stroke-width:2}.futures text.committed{fill:var(--committed);font-weight:650}
.futures line.written{stroke:var(--written);stroke-dasharray:5 3}.futures text.written{fill:var(--written)}
.futures line.asked{stroke:var(--ink);stroke-dasharray:.1 3.5;stroke-linecap:round;stroke-width:1.75}
.futures .axis{stroke:var(--ink);stroke-width:1}
.futures .quiet{fill:var(--quiet)}
.futures .made{fill:var(--committed)}
.futures .missed{fill:var(--paper);stroke:var(--ink);stroke-width:1.1}
figcaption{color:var(--quiet);font-family:var(--sans);font-size:.875rem;margin-top:.15rem}
.columns{columns:2;column-gap:1.75rem}
.columns section{border-top:1px solid var(--hairline);padding:.4rem 0 .75rem}
.columns h2,.columns p:has(+ul),.columns ul:has(+p){break-after:avoid}.columns ul+p{break-before:avoid;break-inside:avoid}.columns .drivers{break-inside:avoid}.columns li{font-family:var(--sans)}
.columns li,.columns tr{break-inside:avoid}.columns li:last-child:not(:first-child){break-before:avoid}
.outcome{border-top:2px solid var(--ink);padding-top:.4rem}
.boxes th{white-space:nowrap}.box{white-space:nowrap;font-family:var(--sans)}
.box span:first-child{font-size:1.15em;line-height:1}
footer{margin-top:.6rem;color:var(--quiet);font:.875rem/1.35 var(--sans)}
footer h2,caption,.away{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
footer p+p{margin-top:.15rem}
@media screen and (max-width:52rem){
main{padding:1rem}
.beside{grid-template-columns:minmax(0,1fr)}
.columns{columns:1}
.decision p:first-of-type{font-size:1.25rem}.decision p+p{font-size:1.05rem}
.scroll table,.scroll tbody,.scroll tr,.scroll td,.scroll th{display:block}
.scroll thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.scroll tr{border-bottom:1px solid var(--hairline);padding:.25rem 0}
.scroll th,.scroll td{border:0;padding:0;text-align:left;white-space:normal}
.scroll.outcome td:empty{display:none}.commitment.scroll tbody tr{display:grid;grid-template-columns:auto 1fr auto;column-gap:.75rem}.commitment.scroll tbody th{grid-column:1/-1}
.box{display:inline-block!important;margin-right:1rem}
}
@page{size:A4;margin:10mm 12mm}
@media print{
:root{color-scheme:light;${colours(palette("light"))};--paper:#fff}
html{font-size:8.5pt}
main{max-width:none;padding:0}
body{line-height:1.26}
.decision{margin-bottom:.5rem}.decision p:first-of-type{font-size:1.45rem;line-height:1.18}
.decision p+p{font-size:1.12rem;margin-top:.3rem;line-height:1.22}
.decision p.quiet,.decision h2,.head,caption,figcaption,table,footer{font-size:1rem}.columns li,td,th{line-height:1.22}
header{margin-bottom:.5rem;padding-bottom:.2rem}
section p+p,section p+ul,section ul+p,section table+p,section p+table,section ul+ul{margin-top:.22rem}
li+li{margin-top:.08rem}
th,td{padding-top:.06rem;padding-bottom:.06rem}
.commitment{padding-top:.3rem;margin-bottom:.4rem}
.columns section{padding:.25rem 0 .45rem}
.columns h2{margin-bottom:.1rem}
.outcome{padding-top:.25rem}
footer{margin-top:.3rem;line-height:1.22}
a{text-decoration:none}
.brief{height:276.6mm;display:grid;grid-template-rows:auto auto auto minmax(0,1fr) auto auto;overflow:hidden}
.brief .columns{overflow:clip;overflow-clip-margin:4px;min-height:0}
.prebrief .columns{column-fill:balance}
}`.replace(/\n/g, "");
}
