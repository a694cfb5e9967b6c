/** What the placement order looks at; tasks by index, sorted by id. */
export interface OrderTask {
  id: string;
  priority: number;
  /** As-written realised duration, in working days. */
  duration: number;
  /** Its moments are facts (started or finished): placed before all others, moved by no link. */
  placed: boolean;
  after: {
    task: number;
    kind: "finish-to-start" | "start-to-start" | "finish-to-finish" | "start-to-finish";
    lag: number;
  }[];
}

/**
 * The order in which tasks are placed: always a task whose predecessors are all placed; among those the highest
 * `priority`, then the longest tail (rounded to 1e-6), then the id in code-point order. It depends on as-written
 * values only, so it is the same in every iteration, and it is a topological order.
 *
 * The tail of a task is the as-written length of the longest chain from its start to the end of the network
 * (plan format, "People"). Serial schedule generation with a priority list: Kelley (1963), "The critical-path
 * method: resources planning and scheduling", in Muth & Thompson, Industrial Scheduling (recalled).
 *
 * Returns indices into `tasks`. Expects no loop. Cost: a sort of m, and m * log(width of the network).
 */
export function placementOrder(tasks: readonly OrderTask[]): Int32Array {
  const m = tasks.length;
  const successors: { task: number; kind: OrderTask["after"][number]["kind"]; lag: number }[][] = tasks.map(
    () => [],
  );
  const waiting = new Int32Array(m);
  tasks.forEach((task, j) => {
    for (const link of task.after) {
      (successors[link.task] as (typeof successors)[number]).push({
        task: j,
        kind: link.kind,
        lag: link.lag,
      });
      if (!task.placed) waiting[j] = (waiting[j] as number) + 1;
    }
  });
  const tail = tails(tasks, successors);
  const ranked = rankedByTail(tasks, tail) ?? rankedByAll(tasks, tail);
  const rank = new Int32Array(m);
  ranked.forEach((i, r) => {
    rank[i] = r;
  });
  const eligible = leastFirst(m);
  for (let i = 0; i < m; i++) if (waiting[i] === 0) eligible.push(rank[i] as number);
  const order = new Int32Array(m);
  for (let k = 0; k < m; k++) {
    const i = ranked[eligible.pop()] as number;
    order[k] = i;
    for (const link of successors[i] as (typeof successors)[number]) {
      if ((tasks[link.task] as OrderTask).placed) continue;
      waiting[link.task] = (waiting[link.task] as number) - 1;
      if (waiting[link.task] === 0) eligible.push(rank[link.task] as number);
    }
  }
  return order;
}

function rankedByAll(tasks: readonly OrderTask[], tail: Float64Array): Int32Array {
  return Int32Array.from(tasks, (_, i) => i).sort((a, b) => {
    const x = tasks[a] as OrderTask;
    const y = tasks[b] as OrderTask;
    if (x.placed !== y.placed) return x.placed ? -1 : 1;
    if (x.priority !== y.priority) return y.priority - x.priority;
    if (tail[a] !== tail[b]) return (tail[b] as number) - (tail[a] as number);
    return x.id < y.id ? -1 : 1;
  });
}

/**
 * The same for tasks in order of ids of which none is placed and all have one priority, where tail and index fit into one
 * whole number each: numbers are sorted without calling anything. undefined: not such tasks.
 */
function rankedByTail(tasks: readonly OrderTask[], tail: Float64Array): Int32Array | undefined {
  const m = tasks.length;
  const keys = new Float64Array(m);
  for (let i = 0; i < m; i++) {
    const { id, placed, priority } = tasks[i] as OrderTask;
    const before = tasks[i - 1];
    if (placed || (before !== undefined && (priority !== before.priority || before.id > id)))
      return undefined;
    const key = i - m * (tail[i] as number);
    if (!Number.isSafeInteger(key)) return undefined;
    keys[i] = key;
  }
  return Int32Array.from(keys.sort(), (key) => ((key % m) + m) % m);
}

/** A heap of up to `most` whole numbers, the least of which comes first. */
function leastFirst(most: number): { push(value: number): void; pop(): number } {
  const heap = new Int32Array(most);
  let size = 0;
  return {
    push(value) {
      let at = size++;
      while (at > 0) {
        const parent = (at - 1) >> 1;
        if ((heap[parent] as number) <= value) break;
        heap[at] = heap[parent] as number;
        at = parent;
      }
      heap[at] = value;
    },
    pop() {
      const least = heap[0] as number;
      const last = heap[--size] as number;
      let at = 0;
      for (let child = 1; child < size; child = 2 * at + 1) {
        if (child + 1 < size && (heap[child + 1] as number) < (heap[child] as number)) child++;
        if ((heap[child] as number) >= last) break;
        heap[at] = heap[child] as number;
        at = child;
      }
      heap[at] = last;
      return least;
    },
  };
}

type Successors = { task: number; kind: OrderTask["after"][number]["kind"]; lag: number }[][];

/** tail(i), rounded to 1e-6; successors first, by an explicit stack (a chain may be thousands of tasks long). */
function tails(tasks: readonly OrderTask[], successors: Successors): Float64Array {
  const m = tasks.length;
  const tail = new Float64Array(m);
  const pending = Int32Array.from(successors, (list) => list.length);
  const ready: number[] = [];
  for (let i = 0; i < m; i++) if (pending[i] === 0) ready.push(i);
  while (ready.length > 0) {
    const i = ready.pop() as number;
    const d = (tasks[i] as OrderTask).duration;
    let longest = d;
    for (const { task: j, kind, lag } of successors[i] as Successors[number]) {
      const dj = (tasks[j] as OrderTask).duration;
      const through =
        (kind === "finish-to-start" || kind === "finish-to-finish" ? d : 0) +
        lag +
        (tail[j] as number) -
        (kind === "finish-to-finish" || kind === "start-to-finish" ? dj : 0);
      if (through > longest) longest = through;
    }
    tail[i] = longest;
    for (const link of (tasks[i] as OrderTask).after) {
      pending[link.task] = (pending[link.task] as number) - 1;
      if (pending[link.task] === 0) ready.push(link.task);
    }
  }
  return tail.map((value) => Math.round(value * 1e6));
}
