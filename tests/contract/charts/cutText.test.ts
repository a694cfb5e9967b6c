// How a text is shortened. Source: the ellipsis stands for whole words left out (common practice, no source); letters as
// a reader counts them and words: Unicode Standard Annex 29 (recalled).
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutText } from "../../../packages/charts/src/words/cutText.ts";

describe("cutText(text, most)", () => {
  it("cuts at the end of a word", () => {
    expect(cutText("Promise 1 October all the same", 26)).toBe("Promise 1 October all the…");
    expect(cutText("The school programme is sold before we know", 40)).toBe(
      "The school programme is sold before we…",
    );
  });
  it("leaves no comma before the dots", () =>
    expect(cutText("Fit-out of the leased shop, with its drains", 31)).toBe("Fit-out of the leased shop…"));
  it("keeps a word that just fits", () => expect(cutText("one two three", 7)).toBe("one two…"));
  it("does not cut for a few letters, where they are allowed", () => {
    expect(cutText("We ask for a small sum", 20, 5)).toBe("We ask for a small sum");
    expect(cutText("We ask for a small sum", 16, 5)).toBe("We ask for a…");
  });
  it("cuts a word that is longer than the room between letters", () =>
    expect(cutText("e\u0301e\u0301e\u0301", 2)).toBe("e\u0301e\u0301…"));
  it("cuts a language without spaces between its words", () => {
    const cut = cutText("歯科医院の開院を十月一日に約束する", 9);
    expect(cut.endsWith("…")).toBe(true);
    expect(cut.length).toBeGreaterThan(5);
    expect(cut.length).toBeLessThanOrEqual(10);
  });

  it("is never longer than the room and never ends within a word that fits", () => {
    const word = fc.stringMatching(/^[a-z]{1,9}$/);
    fc.assert(
      fc.property(
        fc.array(word, { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 10, max: 60 }),
        (words, most) => {
          const text = words.join(" ");
          const cut = cutText(text, most);
          if (text.length <= most) {
            expect(cut).toBe(text);
            return;
          }
          expect(cut.length).toBeLessThanOrEqual(most + 1);
          expect(cut.endsWith("…")).toBe(true);
          const kept = cut.slice(0, -1).split(" ");
          expect(words.slice(0, kept.length)).toEqual(kept);
          // No more words would have gone in.
          expect(words.slice(0, kept.length + 1).join(" ").length).toBeGreaterThan(most);
        },
      ),
      { seed: 20270120 },
    );
  });
});
