import { describe, expect, it, vi } from "vitest";
import { createTurns } from "../../apps/notebook/src/elements/turns.ts";

// Rules of this project's own, common practice, no source: one piece of work a frame, in sight first.
function bench(near: readonly string[]) {
  const frames: (() => void)[] = [];
  const idles: (() => void)[] = [];
  const done: string[] = [];
  const states: boolean[] = [];
  const keys = new Map<string, Element>();
  const key = (name: string): Element => {
    const known = keys.get(name);
    if (known !== undefined) return known;
    // Only identity matters to the turns; no member of it is read.
    const made: Element = Object.create(null);
    keys.set(name, made);
    return made;
  };
  const inSight = new Set(near.map(key));
  const turns = createTurns({
    afterFrame: (task) => frames.push(task),
    whenIdle: (task) => idles.push(task),
    isNear: (element) => inSight.has(element),
    busy: (waiting) => states.push(waiting),
  });
  const ask = (name: string, says = name): void => turns.take(key(name), () => done.push(says));
  const all = (tasks: (() => void)[]): void => {
    for (const task of tasks.splice(0)) task();
  };
  const frame = (): void => all(frames);
  const idle = (): void => all(idles);
  return { turns, ask, frame, idle, done, states, key };
}

describe("turns", () => {
  it("does one piece a frame, what is in sight first, the rest when idle, the latest work of each", () => {
    const { ask, frame, idle, done, states } = bench(["a", "b"]);
    ask("far");
    ask("a", "old");
    ask("b");
    ask("a");
    expect(done).toEqual([]);
    frame();
    expect(done).toEqual(["a"]);
    frame();
    expect(done).toEqual(["a", "b"]);
    frame();
    frame();
    expect(done).toEqual(["a", "b"]);
    idle();
    expect(done).toEqual(["a", "b", "far"]);
    expect(states).toEqual([true, false]);
  });

  it("lets what comes into sight overtake what waits for an idle moment", () => {
    const { ask, frame, idle, done } = bench(["a"]);
    ask("far");
    frame();
    ask("a");
    frame();
    expect(done).toEqual(["a"]);
    frame();
    idle();
    expect(done).toEqual(["a", "far"]);
  });

  it("holds while the answer goes first, and at most so long", () => {
    vi.useFakeTimers();
    try {
      const { turns, ask, frame, done } = bench(["a", "b"]);
      turns.hold(100);
      ask("a");
      frame();
      expect(done).toEqual([]);
      turns.go();
      frame();
      expect(done).toEqual(["a"]);
      ask("b");
      turns.hold(100);
      frame();
      expect(done).toEqual(["a"]);
      vi.advanceTimersByTime(101);
      frame();
      expect(done).toEqual(["a", "b"]);
    } finally {
      vi.useRealTimers();
    }
  });

  it("goes on after work that throws, and forgets work that is dropped", () => {
    const { turns, ask, frame, done, states, key } = bench(["a", "b"]);
    turns.take(key("a"), () => {
      throw new Error("broken");
    });
    ask("b");
    expect(frame).toThrow("broken");
    frame();
    expect(done).toEqual(["b"]);
    ask("b", "again");
    turns.drop(key("b"));
    frame();
    expect(done).toEqual(["b"]);
    expect(states).toEqual([true, false, true, false]);
  });
});
