import { loadKernel } from "./kernel.ts";
import { bytesOfPieces, bytesOfTable } from "./tablesFor.ts";

/**
 * Has the kernel compiled and the pieces made from which PERT tables come, so that the first simulation need not: for a
 * thread that waits for its plan.
 *
 * Cost: about 15 milliseconds, once.
 */
export function warmUp(): void {
  const kernel = loadKernel(bytesOfPieces + 4 * bytesOfTable);
  for (const mode of [0.1, 0.2, 0.3, 0.45]) kernel?.table("pert", mode);
}
