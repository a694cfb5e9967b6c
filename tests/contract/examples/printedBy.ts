import { vi } from "vitest";

/** Runs a module once and gives the lines it printed with `console.log`; what it throws passes through. */
export async function printedBy(file: string): Promise<string[]> {
  const lines: string[] = [];
  const spy = vi.spyOn(console, "log").mockImplementation((...values: unknown[]) => {
    lines.push(...values.map(String).join(" ").split("\n"));
  });
  try {
    await import(/* @vite-ignore */ file);
  } finally {
    spy.mockRestore();
  }
  return lines;
}
