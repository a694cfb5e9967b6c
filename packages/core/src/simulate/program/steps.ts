/** Stands for a row that is not there. */
export const none = 0xffffffff;

/** Numbers of the steps: packages/core/kernel/assembly/program.ts has what each does and the order of its operands. */
export const step = {
  end: 0,
  draw: 1,
  uniforms: 2,
  occur: 3,
  fill: 4,
  fillBytes: 5,
  outcomes: 6,
  scale: 7,
  multiplyImpact: 8,
  addImpact: 9,
  sumDuration: 11,
  addCost: 12,
  addTaskCost: 13,
  addDailyCost: 14,
  addCostWhere: 15,
  place: 16,
  clearTold: 17,
  dates: 18,
  beginMarks: 19,
  mark: 20,
  sumImpact: 21,
  sumProducts: 22,
} as const;

/** Steps as they are written: 32-bit words, and doubles at multiples of eight bytes. */
export interface Steps {
  /** A step: its number, integers, doubles from the next multiple of eight bytes on, integers behind them. */
  add(op: number, integers: readonly number[], doubles?: readonly number[], behind?: readonly number[]): void;
  /** Bytes so far: where the next step begins. */
  length(): number;
  bytes(): Uint8Array;
}

export function newSteps(): Steps {
  let words = new Uint32Array(1 << 14);
  let doubles = new Float64Array(words.buffer);
  let next = 0;
  const reserve = (count: number) => {
    if (next + count <= words.length) return;
    const more = new Uint32Array(2 * words.length + count + (count & 1));
    more.set(words);
    words = more;
    doubles = new Float64Array(more.buffer);
  };
  const even = () => {
    next += next & 1;
  };
  return {
    add(op, integers, values = [], behind = []) {
      reserve(4 + integers.length + 2 * values.length + behind.length);
      words[next++] = op;
      for (let i = 0; i < integers.length; i++) words[next++] = integers[i] as number;
      even();
      for (let i = 0; i < values.length; i++, next += 2) doubles[next >> 1] = values[i] as number;
      for (let i = 0; i < behind.length; i++) words[next++] = behind[i] as number;
      even();
    },
    length: () => 4 * next,
    bytes: () => new Uint8Array(words.buffer, 0, 4 * next),
  };
}
