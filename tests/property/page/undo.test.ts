// Undo and redo on the page, against a list of whole texts and a place in it: the plainest undo there is.
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type History, record, redo, startHistory, undo } from "../../../apps/notebook/src/store/history.ts";
import { changeBetween } from "../../../apps/notebook/src/store/textChange.ts";

const SEED = 20270201;
/** Few letters, so that texts share much; halves of a sign outside the first plane, which a cut may part. */
const text = fc
  .array(fc.constantFrom("a", "b", "\n", "é", "\ud83d\ude00", "\ud83d\ude01", "\ud83d", "\ude00"), {
    maxLength: 12,
  })
  .map((parts) => parts.join(""));
/** Steps kept: the older ones are forgotten. */
const longest = 500;

function times(n: number, step: (history: History) => History, from: History): History {
  let history = from;
  for (let i = 0; i < n; i++) history = step(history);
  return history;
}

describe("undo and redo", () => {
  it("give every text back, however edits, undos and redos follow each other", () => {
    const action = fc.oneof(text, fc.constant("undo" as const), fc.constant("redo" as const));
    fc.assert(
      fc.property(text, fc.array(action, { maxLength: 40 }), (first, actions) => {
        let history = startHistory(first);
        let texts = [first];
        let at = 0;
        for (const one of actions) {
          if (one === "undo") {
            history = undo(history);
            at = Math.max(0, at - 1);
          } else if (one === "redo") {
            history = redo(history);
            at = Math.min(texts.length - 1, at + 1);
          } else {
            history = record(history, one);
            if (one !== texts[at]) texts = [...texts.slice(0, ++at), one];
          }
          expect(history.present).toBe(texts[at]);
          expect([history.past.length, history.future.length]).toEqual([at, texts.length - 1 - at]);
        }
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });

  it("go all the way back and all the way forward", () => {
    fc.assert(
      fc.property(fc.array(text, { minLength: 1, maxLength: 30 }), (texts) => {
        const different = texts.filter((one, i) => one !== texts[i - 1]);
        const [first = ""] = different;
        const end = different.slice(1).reduce(record, startHistory(first));
        const steps = different.length - 1;
        const back = different.map((_, n) => times(n, undo, end).present);
        expect(back).toEqual([...different].reverse());
        const start = times(steps, undo, end);
        expect(different.map((_, n) => times(n, redo, start).present)).toEqual(different);
        expect(times(steps, redo, start)).toEqual(end);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it(`reach ${longest} steps back, and no further`, () => {
    const texts = Array.from({ length: longest + 10 }, (_, n) => `cost: ${n}`);
    const end = texts.reduce(record, startHistory("at first"));
    expect(times(longest, undo, end).present).toBe("cost: 9");
    expect(times(longest + 20, undo, end).present).toBe("cost: 9");
  });
});

describe("a step", () => {
  it("holds no more than what was replaced, and what replaced it", () => {
    fc.assert(
      fc.property(text, text, text, text, (start, old, fresh, end) => {
        const { at, removed, inserted } = changeBetween(start + old + end, start + fresh + end);
        expect(at).toBeGreaterThanOrEqual(
          Math.min(start.length, (start + old + end).length, (start + fresh + end).length),
        );
        expect(removed.length).toBeLessThanOrEqual(old.length);
        expect(inserted.length).toBeLessThanOrEqual(fresh.length);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  // 400 texts of 100,000 letters, kept, would be 40 MB: a part cut out of a text may keep all of it (V8).
  it("keeps no text in memory that it was cut out of", () => {
    setFlagsFromString("--expose-gc");
    const collect: unknown = runInNewContext("gc");
    const used = (): number => {
      if (typeof collect === "function") collect();
      return process.memoryUsage().heapUsed;
    };
    const plan = "a line of a plan\n".repeat(3000);
    const notes = ["said in one way, at some length", "told in another, and as long"];
    const edited = (n: number): string => JSON.parse(JSON.stringify(`${plan}${notes[n % 2]} ${n}\n${plan}`));
    let history = startHistory(edited(0));
    const before = used();
    for (let n = 1; n <= 400; n++) history = record(history, edited(n));
    expect(used() - before).toBeLessThan(4e6);
    expect(times(400, undo, history).present).toBe(edited(0));
  });
});
