import type { Check, Found } from "../context.ts";
import { pathLengthIndex, timeLeft } from "../network/timeLeft.ts";
import { thresholds } from "../thresholds.ts";

/** The two indices of the trade, where they fall below its threshold. */
export const checkIndices: Check = ({ written, late: { due, finished } }) => {
  const left = written === undefined ? undefined : timeLeft(written);
  const path = left === undefined ? 1 : pathLengthIndex(left);
  const done = due === 0 ? 1 : finished / due;
  const low = (index: number) => index < thresholds.index - 1e-9;
  return [
    ...(low(path)
      ? [
          {
            code: "cpli-low",
            path: "commitment.finishBy",
            ids: [],
            says: `The critical path length index is ${path.toFixed(2)}.`,
          } satisfies Found,
        ]
      : []),
    ...(low(done)
      ? [
          {
            code: "bei-low",
            path: "statusDate",
            ids: [],
            says: `${finished} of ${due} tasks due are finished: an index of ${done.toFixed(2)}.`,
          } satisfies Found,
        ]
      : []),
  ];
};
