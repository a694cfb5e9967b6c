import type { PlanDocument, TaskDocument } from "../../oracle/document.ts";
import { type RandomPlanOptions, randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** A random plan with everything a forecast reads, also what the oracle leaves out. */
export interface RichDocument extends PlanDocument {
  commitment: { finishOf?: string; confidence: number; finishBy: string; budget: number };
  correlations?: { between: string[]; coefficient: number }[];
  intervals: { id: string; name: string; from: string; to: string; atMost: number }[];
}

/** A random plan with correlations, an interval, targets and what is asked of it; same seed, same plan. */
export function richDocument(seed: number, options: RandomPlanOptions = {}): RichDocument {
  const document = randomPlanDocument(seededRng(seed), { tasks: [4, 10], ...options });
  const tasks = Array.isArray(document.tasks) ? document.tasks : [document.tasks];
  const drawn = tasks.filter((task) => !task.milestone && task.finished === undefined).map((t) => t.id);
  const costly = tasks.filter((task) => task.cost !== undefined).map((task) => `cost:${task.id}`);
  const between = [...drawn.slice(0, 3), ...costly.slice(0, 1)];
  const [first, last] = [tasks[0], tasks[tasks.length - 1]];
  if (first === undefined || last === undefined) throw new Error("a plan without tasks");
  return {
    ...document,
    commitment: { ...document.commitment, confidence: 0.7, finishBy: "2028-08-01", budget: 2000 },
    ...(between.length > 1 ? { correlations: [{ between, coefficient: 0.4 }] } : {}),
    intervals: [{ id: "span", name: "Span", from: first.id, to: last.id, atMost: 10 }],
    tasks: tasks.map((task, k): TaskDocument & { target?: string } =>
      k % 3 === 0 ? { ...task, target: document.start } : task,
    ),
  };
}
