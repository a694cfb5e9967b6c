import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll } from "vitest";

const folders: string[] = [];
// Not when the process exits: the runner kills its workers. Registered first, so it runs after the file's own hooks.
afterAll(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** A folder of its own with these files, gone when the tests of the file have ended, however they ended. */
export function temporaryFolder(files: Record<string, string | Buffer> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), "leeway-"));
  folders.push(folder);
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}
