import { n as keepCompiled, r as loadProgram, t as beside } from "./loadProgram-B5wgumI1.mjs";
import { readFileSync, writeFileSync } from "node:fs";
// src/makeReady.ts
/**
* The last step of the build: leaves beside the program what it would compute, and the engine compile, at every start.
*
* @param example  Path of a plan, on which the program is run: what is not called is not compiled.
*/
async function makeReady(example) {
	const { piecesFile, rehearse } = await loadProgram(beside(import.meta.url, "./program.cjs")).rehearsal();
	writeFileSync(beside(import.meta.url, "./pieces.bin"), piecesFile());
	await rehearse(readFileSync(example, "utf8"));
	loadProgram(beside(import.meta.url, "./thread.cjs"));
	keepCompiled();
}
export { makeReady };
