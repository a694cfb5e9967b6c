/** Something `size` px long that would like its centre at `at`. */
export interface Wish {
  at: number;
  size: number;
}

/**
 * Moves labels along one axis until none overlap, as little as possible.
 *
 * Order is kept (ties by place in the list). Where labels want the same room they form a block, and the block
 * goes to the mean of what its members want: the least-squares answer, found by pooling adjacent violators
 * (Barlow, Bartholomew, Bremner & Brunk 1972, Statistical Inference under Order Restrictions; recalled).
 *
 * @param gap  Least room between two labels, px.
 * @returns The centre of each label, in the order given; or undefined when they do not all fit in `min` to `max`.
 *
 * Cost  n log n.
 */
export function placeAlong(wishes: readonly Wish[], min: number, max: number, gap = 4): number[] | undefined {
  const room = wishes.reduce((sum, w) => sum + w.size, 0) + gap * Math.max(0, wishes.length - 1);
  if (room > max - min + 1e-9) return undefined;
  const order = wishes
    .map((wish, index) => ({ wish, index }))
    .sort((a, b) => a.wish.at - b.wish.at || a.index - b.index);

  // Measured from the place a label would have if all were packed at `min`, the rule "no overlap" is
  // "never descending", and the limits are the same for all of them: 0 to the room that is left.
  const packed: number[] = [];
  let edge = min;
  for (const { wish } of order) {
    packed.push(edge + wish.size / 2);
    edge += wish.size + gap;
  }
  const blocks: { sum: number; count: number }[] = [];
  order.forEach(({ wish }, k) => {
    blocks.push({ sum: wish.at - (packed[k] ?? 0), count: 1 });
    for (;;) {
      const last = blocks[blocks.length - 1];
      const before = blocks[blocks.length - 2];
      if (last === undefined || before === undefined) break;
      if (before.sum / before.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  });
  const spare = Math.max(0, max - min - room);
  const centres = new Array<number>(wishes.length).fill(0);
  let k = 0;
  for (const block of blocks) {
    const shift = Math.max(0, Math.min(spare, block.sum / block.count));
    for (let member = 0; member < block.count; member++, k++) {
      const item = order[k];
      if (item !== undefined) centres[item.index] = (packed[k] ?? 0) + shift;
    }
  }
  return centres;
}
