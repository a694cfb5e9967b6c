import { exitCodes } from "./exitCodes.ts";

/**
 * A signal ends the command with its own code, temporary files removed; a reader that has seen enough
 * (`| head`) ends it quietly.
 */
export function handleStops(): void {
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
    process.on(signal, () => {
      process.stderr.write(`${process.stderr.isTTY ? "\r\u001b[K" : ""}Stopped; nothing is half-written.\n`);
      process.exit(exitCodes.stopped);
    });
  }
  for (const stream of [process.stdout, process.stderr]) {
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") process.exit(exitCodes.done);
      throw error;
    });
  }
}

/**
 * Lets a signal that came during a long computation be heard before anything is written: handlers run only
 * between turns of the event loop, and signals are read in the turn before this resolves.
 */
export function hearStops(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
