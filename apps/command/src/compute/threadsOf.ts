import type { ParallelOptions } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";

/** The file the build puts beside the command's own. */
const worker = new URL("./worker.mjs", import.meta.url);

/** Threads for a question, so that it is quick and a signal is heard meanwhile. They never change a digit. */
export function threadsOf(workers: number | undefined): ParallelOptions {
  const shared = { pool: nodePool(worker), aside: true };
  return workers === undefined ? shared : { ...shared, workers };
}
