import { keepTogether } from "../../draw/keepTogether.ts";
import { escapeXml } from "../../figure/serialise.ts";

/** Text as it may stand in HTML, in content and in a quoted attribute; dates and sums are kept on one line. */
export function escapeHtml(text: string): string {
  return escapeXml(keepTogether(text));
}
