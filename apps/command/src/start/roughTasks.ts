/**
 * Tasks in a plan's text, guessed from how many durations or efforts it names: so few letters say how long an answer takes
 * before the text is read as a plan. A wrong guess costs time or memory, never a figure.
 */
export function roughTasks(text: string): number {
  return text.match(/\b(?:duration|effort)"?:/g)?.length ?? 0;
}
