/**
 * Three slow schedulers in whole days, to judge the engine by; written from the papers' descriptions, sharing
 * nothing with it. One resource: every task asks for a share of one crew.
 */
export interface CrewTask {
  id: string;
  duration: number;
  share: number;
  after: readonly string[];
}

/**
 * Tasks placed one by one in the given order, each on the earliest day from which the crew has its share free
 * throughout (serial schedule generation: Kelley 1963; Kolisch 1996, EJOR 90, 320-333; recalled).
 */
export function oneByOne(
  tasks: readonly CrewTask[],
  order: readonly string[],
  crew: number,
): Map<string, number> {
  const start = new Map<string, number>();
  const load: number[] = [];
  for (const id of order) {
    const task = tasks.find((candidate) => candidate.id === id);
    if (task === undefined) throw new Error(id);
    let day = Math.max(0, ...task.after.map((other) => finishOf(tasks, start, other)));
    const days = () => Array.from({ length: task.duration }, (_, k) => day + k);
    while (days().some((d) => (load[d] ?? 0) + task.share > crew)) day += 1;
    for (const d of days()) load[d] = (load[d] ?? 0) + task.share;
    start.set(id, day);
  }
  return start;
}

/**
 * Graham's scheduler (1966, 1969): day by day, whoever is free takes the first task of the list that is
 * ready.
 */
export function takingTurns(
  tasks: readonly CrewTask[],
  list: readonly string[],
  crew: number,
): Map<string, number> {
  const start = new Map<string, number>();
  for (let day = 0; start.size < tasks.length; day++) {
    for (const id of list) {
      const task = tasks.find((candidate) => candidate.id === id);
      if (task === undefined || start.has(id)) continue;
      const ready = task.after.every((other) => start.has(other) && finishOf(tasks, start, other) <= day);
      const held = tasks.reduce((sum, other) => sum + (runsOn(other, start, day) ? other.share : 0), 0);
      if (ready && held + task.share <= crew) start.set(id, day);
    }
  }
  return start;
}

/** Every order in which no task stands before one it waits for. */
export function allOrders(tasks: readonly CrewTask[], done: readonly string[] = []): string[][] {
  if (done.length === tasks.length) return [[...done]];
  return tasks
    .filter((task) => !done.includes(task.id) && task.after.every((other) => done.includes(other)))
    .flatMap((task) => allOrders(tasks, [...done, task.id]));
}

export function lengthOf(tasks: readonly CrewTask[], start: ReadonlyMap<string, number>): number {
  return Math.max(...tasks.map((task) => finishOf(tasks, start, task.id)));
}

function finishOf(tasks: readonly CrewTask[], start: ReadonlyMap<string, number>, id: string): number {
  const task = tasks.find((candidate) => candidate.id === id);
  return (start.get(id) ?? Number.NaN) + (task?.duration ?? Number.NaN);
}

function runsOn(task: CrewTask, start: ReadonlyMap<string, number>, day: number): boolean {
  const from = start.get(task.id);
  return from !== undefined && from <= day && day < from + task.duration;
}
