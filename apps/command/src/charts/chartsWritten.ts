import type { Drawn } from "./figureLists.ts";

/**
 * `--charts DIR`: writes the charts of a verb's answer into the folder; nothing where it was not asked for.
 *
 * @returns false when a file could not be written, after saying so
 */
export async function chartsWritten<V extends keyof Drawn>(
  verb: V,
  answer: Drawn[V],
  folder: string | undefined,
): Promise<boolean> {
  if (folder === undefined) return true;
  // Loaded only here: drawing needs a document and half a second that an answer does not.
  const [{ figureLists }, { writeFigures }] = await Promise.all([
    import("./figureLists.ts"),
    import("./writeFigures.ts"),
  ]);
  return writeFigures(figureLists[verb](answer), folder);
}
