/** The first line of a text, cut short: what came, as a problem tells it. */
export function oneLine(text: string, most = 60): string {
  const line = (text.split(/[\r\n\u2028\u2029]/, 1)[0] ?? "").trim();
  return line.length > most ? `${line.slice(0, most - 3)}...` : line;
}
