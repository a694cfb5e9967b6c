/** A percentage is not parted from its sign at the end of a line, nor a currency from its sum. */
export function unbroken(text: string): string {
  return text.replaceAll(" %", "\u00a0%").replace(/\b([A-Z]{3}) (?=[−\d])/g, "$1\u00a0");
}
