/** Id of the message of a field, from its path. */
export function messageId(path: string): string {
  return `message-${path.replace(/[^a-z0-9]+/gi, "-")}`;
}
