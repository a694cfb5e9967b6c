/** A command to copy, and what it answers. */
export type Next = [command: string, answers: string];

/**
 * Where to look next: commands, each with what it answers beside it where all of that fits; a command is never
 * wrapped or cut.
 */
export function nextLines(rows: readonly Next[], width: number): string[] {
  const widest = Math.max(...rows.map(([command]) => [...command].length));
  const fits = rows.every(([, answers]) => 2 + widest + 2 + [...answers].length <= width);
  const lines = rows.map(([command, answers]) =>
    fits ? `  ${command.padEnd(widest)}  ${answers}` : `  ${command}`,
  );
  return ["What to look at next", ...lines];
}
