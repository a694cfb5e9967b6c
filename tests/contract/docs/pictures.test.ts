// The README's pictures: small, as wide as said, and taken of parts the page still has. They are taken by hand, with
// `node apps/command/setup/pictures.mjs`, because a picture says nothing a test could compare.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../examples/places.ts";

interface Picture {
  file: string;
  top?: number;
  within?: string;
  part?: string;
}

const script = join(root, "apps/command/setup/pictures.mjs");
const { pictures, view } = (await import(/* @vite-ignore */ script)) as {
  pictures: Picture[];
  view: { viewport: { width: number } };
};
const readme = readFileSync(`${root}README.md`, "utf8");
const shown = [...readme.matchAll(/!\[(.+)\]\(docs\/pictures\/(.+)\)/g)];

describe("the README's pictures", () => {
  it("are those the script takes, each with words for who does not see it, the answer first", () => {
    expect(shown.map(([, , file]) => file)).toEqual(pictures.map(({ file }) => file));
    expect(readdirSync(`${root}docs/pictures`).sort()).toEqual(pictures.map(({ file }) => file).sort());
    for (const [, words = ""] of shown) expect(words.length).toBeGreaterThan(40);
    expect(pictures[0]?.top).toBeGreaterThan(0);
  });

  it.each(pictures)("$file is a PNG of less than 200 kB, no wider than the page", ({ file, part }) => {
    const bytes = readFileSync(`${root}docs/pictures/${file}`);
    // PNG (third edition), 5.2 and 11.2.1: eight bytes of signature, then IHDR with width and height.
    expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect(bytes.length).toBeLessThan(200_000);
    const width = bytes.readUInt32BE(16);
    if (part === undefined) expect(width).toBe(view.viewport.width);
    else expect(width).toBeLessThanOrEqual(view.viewport.width);
  });

  it.each(pictures.filter(({ part }) => part !== undefined))(
    "$file: the page has such a part",
    ({ within, part }) => {
      const elements = `${root}apps/notebook/src/elements/`;
      const sources = readdirSync(elements).map((file) => readFileSync(elements + file, "utf8"));
      const [, chart] = /^leeway-figure\[chart="(\w+)"\]$/.exec(part ?? "") ?? [];
      const owner = sources.find((text) => text.includes(`<leeway-figure chart="${chart}"`));
      expect(owner, part).toBeDefined();
      const name = /class (\w+)/.exec(owner ?? "")?.[1] ?? "";
      expect(name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)).toBe(`-${within}`);
    },
  );
});
