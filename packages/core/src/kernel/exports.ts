/** The functions of the WebAssembly module (packages/core/kernel/assembly): rows are addresses in bytes. */
export interface KernelExports {
  /** Moves what the first page is used for to another place: packages/core/kernel/assembly/layout.ts. */
  usePage(at: number): void;
  /** One block by a program: packages/core/kernel/assembly/program.ts. */
  runProgram(
    program: number,
    rows: number,
    place: number,
    starts: number,
    top: number,
    told: number,
    seed: number,
    n: number,
  ): number;
  /** Integers at the ends of two rows become doubles in place; the largest distance between working days. */
  fillCalendar(days: number, length: number, order: number, count: number): number;
  /** Flags of days to a calendar's integers: packages/core/kernel/assembly/calendar.ts. */
  countDays(flags: number, length: number, cum: number, nth: number): number;
  /** The text of `length` characters stands at `charsAt`. */
  seedTen(length: number, out: number): void;
  /** A list of texts as in packages/core/kernel/assembly/told.ts. */
  seedStreams(list: number, from: number, to: number, decades: number, stride: number, words: number): void;
  /** What a program told of all blocks, added up: packages/core/kernel/assembly/told.ts. */
  addTold(what: number, told: number, toldBytes: number, blocks: number, n: number, out: number): void;
  /** Records as in packages/core/kernel/assembly/drawMany.ts. */
  drawMany(records: number, count: number, which: number, n: number): void;
  /** Layout of a side and a piece: packages/core/kernel/assembly/pert.ts. */
  pertTail(side: number, logs: number, out: number): void;
  pertBody(left: number, right: number, logs: number, split: number, out: number): void;
  /** Starts again, from the finishes of all iterations: packages/core/kernel/assembly/program.ts. */
  startsOf(step: number, out: number, zero: number, n: number): void;
  /** Tables from one to another of a list: packages/core/kernel/assembly/pert.ts. */
  pertTables(list: number, from: number, to: number, logCells: number): void;
  pertTable(piece: number, logCells: number, x: number, mirrored: number, table: number): void;
  fillLatin(w0: number, w1: number, w2: number, w3: number, out: number): void;
  fillPlain(w0: number, w1: number, w2: number, w3: number, out: number): void;
  lookUp(table: number, shift: number, scale: number, u: number, out: number, n: number, cut: number): number;
  lookUpOutcomes(
    values: number,
    upTo: number,
    count: number,
    u: number,
    out: number,
    n: number,
    cut: number,
  ): number;
  drawLatin(
    w0: number,
    w1: number,
    w2: number,
    w3: number,
    table: number,
    shift: number,
    scale: number,
    out: number,
    n: number,
    cut: number,
  ): number;
  occur(u: number, lo: number, hi: number, occurs: number, n: number): void;
  multiplyImpact(duration: number, occurs: number, draws: number, scale: number, n: number): void;
  addImpact(duration: number, occurs: number, draws: number, scale: number, n: number): void;
  raiseTo(out: number, from: number, n: number): void;
  raiseAfterEveryDay(out: number, from: number, lag: number, n: number): void;
  raiseAfterOnCalendar(
    days: number,
    order: number,
    last: number,
    out: number,
    from: number,
    lag: number,
    n: number,
  ): void;
  scaleTo(out: number, from: number, scale: number, n: number): void;
  settleEveryDay(
    lower: number,
    duration: number,
    start: number,
    finish: number,
    earliest: number,
    n: number,
  ): number;
  settleOnCalendar(
    days: number,
    order: number,
    last: number,
    lower: number,
    duration: number,
    start: number,
    finish: number,
    earliest: number,
    n: number,
  ): number;
  /** A row at 0 is none: packages/core/kernel/assembly/placeAny.ts. */
  raiseBy(
    days: number,
    order: number,
    last: number,
    out: number,
    from: number,
    lags: number,
    value: number,
    scale: number,
    n: number,
  ): void;
  settleAny(
    days: number,
    order: number,
    last: number,
    ownDays: number,
    ownOrder: number,
    ownLast: number,
    lower: number,
    upper: number,
    needed: number,
    waits: number,
    duration: number,
    start: number,
    finish: number,
    notBefore: number,
    floor: number,
    statusFloor: number,
    startsWork: number,
    n: number,
  ): number;
  largestOf(row: number, n: number): number;
  scaleByWork(days: number, last: number, amounts: number, from: number, to: number, n: number): void;
  /** Lists as in packages/core/kernel/assembly/people.ts; `days` 0: every day works. */
  freeFrom(
    days: number,
    order: number,
    last: number,
    list: number,
    count: number,
    start: number,
    finish: number,
    duration: number,
    most: number,
    n: number,
  ): void;
  markSharers(shared: number, moving: number, start: number, duration: number, n: number): number;
  /** `days` 0: every day works. */
  markFinish(
    days: number,
    gap: number,
    end: number,
    planFinish: number,
    finish: number,
    moves: number,
    n: number,
  ): void;
  markSimple(
    days: number,
    gap: number,
    end: number,
    movesI: number,
    movesJ: number,
    finishI: number,
    startJ: number,
    n: number,
  ): void;
  /** A link as in packages/core/kernel/assembly/markLink.ts. */
  markLink(link: number, n: number): void;
  anySet(row: number, n: number): number;
  addCost(total: number, part: number, n: number): number;
  addCostWhere(total: number, occurs: number, draws: number, scale: number, n: number): number;
  addTaskCost(
    total: number,
    once: number,
    perDay: number,
    people: number,
    duration: number,
    n: number,
  ): number;
  addDailyCost(total: number, once: number, rate: number, duration: number, n: number): number;
  addDaily(part: number, duration: number, rate: number, n: number): void;
  toScores(row: number, n: number): void;
  addScaled(out: number, row: number, factor: number, n: number): void;
  toChances(row: number, n: number): void;
  /** A ledger's parts as in packages/core/kernel/assembly/months.ts; `days` 0: every day works. */
  bookByMonth(
    count: number,
    byDay: number,
    known: number,
    booked: number,
    stride: number,
    moments: number,
    amounts: number,
    n: number,
  ): void;
  spreadByMonth(
    days: number,
    last: number,
    ends: number,
    count: number,
    byDay: number,
    known: number,
    booked: number,
    stride: number,
    start: number,
    finish: number,
    amounts: number,
    daily: number,
    n: number,
  ): void;
  /** Streams as in packages/core/kernel/assembly/worth.ts. */
  appraise(
    streams: number,
    count: number,
    daily: number,
    cost: number,
    net: number,
    payback: number,
    gained: number,
    n: number,
  ): void;
  /** These three leave their answers at `answersAt`. */
  sumMasked(duration: number, moves: number, base: number, n: number): void;
  sumProducts(x: number, y: number, n: number): void;
  /** Brackets as in packages/core/kernel/assembly/brackets.ts; the address after the last value stored. */
  absorb(values: number, n: number, brackets: number, count: number, tail: number): number;
  /** The same, told apart from other calls: packages/core/kernel/assembly/select.ts. */
  rankRow(
    row: number,
    n: number,
    ranks: number,
    wanted: number,
    scratch: number,
    room: number,
    out: number,
  ): void;
  selectRanks(values: number, n: number, wanted: number, scratch: number, room: number): number;
}
