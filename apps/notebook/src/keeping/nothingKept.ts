import { storageName } from "./storageName.ts";

let known: Promise<boolean> | undefined;

/**
 * Whether this browser keeps no plan of this page, told without opening its storage; false where the browser does not list
 * what it stores. Asked once, at the beginning.
 */
export function nothingKept(): Promise<boolean> {
  known ??= look();
  return known;
}

async function look(): Promise<boolean> {
  try {
    const stored = await indexedDB.databases?.();
    return stored !== undefined && !stored.some(({ name }) => name === storageName);
  } catch {
    return false;
  }
}
