/** Which places must be taken from the same plan: sets that are joined. */
export interface Together {
  /** Joins all of them; places that did not change are ignored. */
  join(places: Iterable<string | undefined>): void;
  /** The same for all places of one set. */
  rootOf(place: string): string;
}

/** @param changed  The places there are. */
export function together(changed: Iterable<string>): Together {
  const parent = new Map([...changed].map((place) => [place, place]));
  const rootOf = (place: string): string => {
    let at = place;
    for (;;) {
      const up = parent.get(at) ?? at;
      if (up === at) return at;
      const next = parent.get(up) ?? up;
      parent.set(at, next);
      at = next;
    }
  };
  return {
    rootOf,
    join(places) {
      let first: string | undefined;
      for (const place of places) {
        if (place === undefined || !parent.has(place)) continue;
        const root = rootOf(place);
        if (first === undefined) first = root;
        else if (root !== first) {
          // The smaller name stands for both, so that the order of joining does not matter.
          const [low, high] = root < first ? [root, first] : [first, root];
          parent.set(high, low);
          first = low;
        }
      }
    },
  };
}
