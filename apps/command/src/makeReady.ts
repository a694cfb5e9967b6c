import { readFileSync, writeFileSync } from "node:fs";
import { beside, keepCompiled, loadProgram } from "./start/loadProgram.ts";

/**
 * The last step of the build: leaves beside the program what it would compute, and the engine compile, at every start.
 *
 * @param example  Path of a plan, on which the program is run: what is not called is not compiled.
 */
export async function makeReady(example: string): Promise<void> {
  const program = loadProgram(beside(import.meta.url, "./program.cjs")) as typeof import("./program.ts");
  const { piecesFile, rehearse } = await program.rehearsal();
  writeFileSync(beside(import.meta.url, "./pieces.bin"), piecesFile());
  await rehearse(readFileSync(example, "utf8"));
  loadProgram(beside(import.meta.url, "./thread.cjs"));
  keepCompiled();
}
