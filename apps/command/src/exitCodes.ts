/** What the command's exit says. */
export const exitCodes = {
  done: 0,
  /** Done, but the check found what `--fail-on` asked about. */
  found: 1,
  /** The plan or the call is invalid; every problem is on standard error. */
  invalid: 2,
  /** Stopped by a signal; nothing half-written. */
  stopped: 3,
  /** A fault of the program itself; the code sysexits.h calls EX_SOFTWARE (recalled from memory). */
  broken: 70,
} as const;
