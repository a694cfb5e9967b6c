/** C0 and C1 controls, line breaks included: a terminal obeys some of them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROLS = /[\u0000-\u001f\u007f-\u009f]+/g;

/** Text from a plan as one line a terminal only shows: control characters become a space. */
export function plainText(text: string): string {
  return text.replace(CONTROLS, " ");
}

/** A copy of plain data with every text in it made plain. */
export function plainTexts<T>(value: T): T {
  // JSON keeps the shape: only texts are replaced, each by a text.
  return JSON.parse(JSON.stringify(value), (_key, part: unknown) =>
    typeof part === "string" ? plainText(part) : part,
  ) as T;
}
