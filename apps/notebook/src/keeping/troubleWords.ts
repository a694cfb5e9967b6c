/** Why the browser does not keep the plan, and what to do; an error of our own says it itself. */
export function unkeptWords(error: unknown): string {
  if (error instanceof Error && !(error instanceof DOMException)) return error.message;
  if (error instanceof DOMException && error.name === "QuotaExceededError")
    return "This browser has no room left for the plan. It is whole on this page: save it to a file before you close it.";
  return "This browser does not let the page keep anything. The plan is whole on this page: save it to a file before you close it.";
}

/** Why a file could not be written, and what to do. The names of errors: File System Standard (WHATWG), recalled. */
export function unwrittenWords(error: unknown, file: string): string {
  const why = error instanceof DOMException ? reasons[error.name] : undefined;
  const words = error instanceof Error ? error.message : String(error);
  const rule = why === undefined ? `${file} could not be written: ${words}` : `${file} ${why}.`;
  return `${rule} The plan is whole on this page: use “Save as …” to choose a place, or download it.`;
}

const reasons: Readonly<Record<string, string>> = {
  NotFoundError: "was moved or deleted",
  NotAllowedError: "may not be written to by this page any more",
  SecurityError: "may not be written to by this page any more",
  NoModificationAllowedError: "is held by another program, or may only be read",
  QuotaExceededError: "finds no room on the disk",
};
