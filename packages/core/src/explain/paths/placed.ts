import type { Block } from "../../simulate/block.ts";
import type { Model } from "../../simulate/model.ts";

/** A task that holds a share of a person, with its place in the order of placement. */
export interface Sharer {
  task: number;
  share: number;
  position: number;
}

/** A block whose tasks are placed, and what is needed to tell why they stand where they stand. */
export interface Placed {
  model: Model;
  block: Block;
  /** As-written starts, the floor of tasks that hold to the plan; undefined while that plan itself is placed. */
  planned: Float64Array | undefined;
  /** By task: its place in the order of placement. */
  position: Int32Array;
  /** By person: the tasks that hold a share of them, in the order of placement; empty without limits. */
  sharers: Sharer[][];
}

/** Puts a block and its model together; the block may be filled again and again. */
export function placedOf(model: Model, block: Block, planned: Float64Array | undefined): Placed {
  const position = new Int32Array(model.tasks.length);
  const sharers: Sharer[][] = model.people.map(() => []);
  model.order.forEach((task, at) => {
    position[task] = at;
    const { holds, progress } = model.tasks[task] as Model["tasks"][number];
    if (!model.limitedPeople || progress?.finished === true) return;
    for (const { person, share } of holds) sharers[person]?.push({ task, share, position: at });
  });
  return { model, block, planned, position, sharers };
}
