/** A file as a shell word: quoted where a space or sign in it would be taken apart; PLAN for standard input. */
export function shellWord(name: string): string {
  if (name === "standard input") return "PLAN";
  return /^[\w./:@%+,=-]+$/.test(name) ? name : `'${name.replaceAll("'", "'\\''")}'`;
}
