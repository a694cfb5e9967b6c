/**
 * Every line break outside quotes as CRLF: files that went through several hands mix them, and a parser looks for one
 * kind only. A quote opens only at the beginning of a cell (RFC 4180, section 2, rule 5).
 */
export function withLineEnds(text: string, delimiter: string): string {
  const parts: string[] = [];
  let kept = 0;
  let at = 0;
  let opens = true;
  while (at < text.length) {
    const char = text[at];
    if (char === '"' && opens) {
      at = behindQuotes(text, at);
      opens = false;
    } else if (char === "\r" || char === "\n") {
      parts.push(text.slice(kept, at));
      at += char === "\r" && text[at + 1] === "\n" ? 2 : 1;
      kept = at;
      opens = true;
    } else {
      opens = char === delimiter;
      at++;
    }
  }
  parts.push(text.slice(kept));
  return parts.join("\r\n");
}

/** The place behind the closing quote; the end of the text where none closes. */
function behindQuotes(text: string, open: number): number {
  let at = open + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote === -1) return text.length;
    if (text[quote + 1] !== '"') return quote + 1;
    at = quote + 2;
  }
}
