/** What the forward pass needs of a plan as data; single items are lists. */
export interface PlainPlan {
  start: string;
  holidays: { from: string; to: string }[];
  tasks: { id: string; days: number; after: string[] }[];
}

const DAY = 86_400_000;
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 10);

/** The working days a finish takes: Monday to Friday, holidays left out, from the start on. */
function dateOfWorkday(plan: PlainPlan, count: number): string {
  let ms = Date.parse(plan.start) - DAY;
  for (let left = count; left > 0; ) {
    ms += DAY;
    const date = iso(ms);
    const weekend = new Date(ms).getUTCDay() % 6 === 0;
    if (!weekend && !plan.holidays.some(({ from, to }) => from <= date && date <= to)) left--;
  }
  return iso(ms);
}

/**
 * The forward pass of the critical path method (Kelley & Walker 1959, "Critical-path planning and scheduling";
 * recalled from memory): early finish = duration + latest early finish of what it follows. Whole working days,
 * finish-to-start, one calendar, nobody limited. Written apart from the engine, to be compared with it.
 */
export function forwardPass(plan: PlainPlan): { finish: string; workingDays: number } {
  const byId = new Map(plan.tasks.map((task) => [task.id, task]));
  const finishes = new Map<string, number>();
  const finishOf = (id: string): number => {
    const known = finishes.get(id);
    if (known !== undefined) return known;
    const task = byId.get(id);
    if (task === undefined) throw new Error(`no task ${id}`);
    const finish = task.days + task.after.map(finishOf).reduce((a, b) => Math.max(a, b), 0);
    finishes.set(id, finish);
    return finish;
  };
  const workingDays = plan.tasks.map(({ id }) => finishOf(id)).reduce((a, b) => Math.max(a, b), 0);
  return { finish: dateOfWorkday(plan, workingDays), workingDays };
}
