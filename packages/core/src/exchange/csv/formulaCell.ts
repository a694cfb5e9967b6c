/**
 * A cell that a spreadsheet would take for a formula: = + - @, a tab, a line break, and the full-width forms; with any
 * apostrophes ahead of it, so that taking one away always gives back what stood there.
 *
 * Source  OWASP, CSV Injection (https://owasp.org/www-community/attacks/CSV_Injection); CWE-1236. Recalled.
 */
const FORMULA = /^'*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;
/** A negative number is no formula. */
const NEGATIVE = /^-(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i;

/** A text as it can stand in a table: an apostrophe ahead of what would be a formula. */
export function neutralised(text: string): string {
  return FORMULA.test(text) && !NEGATIVE.test(text) ? `'${text}` : text;
}

/** The text before `neutralised`. */
export function asItWas(cell: string): string {
  return cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;
}
