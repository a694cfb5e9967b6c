// DEVELOPERS.md names files, folders and scripts; all of them are there. Common practice, no source.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "../examples/places.ts";

const SKIPPED = new Set(["node_modules", "dist", ".git", ".leeway"]);

/** Paths from the root, with slashes; a folder ends in one. */
function pathsIn(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}${entry.name}`;
    if (!entry.isDirectory()) return [path];
    return SKIPPED.has(entry.name) ? [] : [`${path}/`, ...pathsIn(`${path}/`)];
  });
}

const text = readFileSync(`${root}DEVELOPERS.md`, "utf8");
const spans = [...text.matchAll(/`([^`\n]+)`/g)].map(([, span = ""]) => span);
/** What looks like a path: an ending we use, a slash at the end, or slashes between words. */
const PATH = /^(?:[\w-]+\/)*(?:[\w.-]+\.(?:ts|mjs|md|yaml|json)|[\w-]+\/|[\w-]+\/[\w-]+)$/;
// NAME and plan.yaml stand for any file, and dist/ is made.
const named = spans
  .flatMap((span) => span.split(" "))
  .filter((word) => PATH.test(word) && !/NAME|^plan\.yaml$|\bdist\//.test(word));

it("names paths that are there", () => {
  const all = pathsIn("").map((path) => `/${path}`);
  expect(named.length).toBeGreaterThan(100);
  const missing = named.filter(
    (word) => !all.some((path) => ["", "/", ".ts"].some((end) => path.endsWith(`/${word}${end}`))),
  );
  expect(missing).toEqual([]);
});

it("names scripts that can be run", () => {
  const { scripts } = JSON.parse(readFileSync(`${root}package.json`, "utf8"));
  const run = spans.flatMap((span) =>
    [...span.matchAll(/\bnpm (?:run (?:-s )?)?([a-z-]+)/g)].map(([, name = ""]) => name),
  );
  expect(run.length).toBeGreaterThan(5);
  expect(run.filter((name) => !(name in scripts))).toEqual([]);
});

it("has a row for every room of the house", () => {
  const rows = text.split("\n").filter((line) => line.startsWith("| `"));
  // A second name in a row is that of a folder beside the first.
  const rooms = rows.flatMap((row) => {
    const names = [...(row.split("|")[1] ?? "").matchAll(/`([\w/]+\/)`/g)].map(([, name = ""]) => name);
    const beside = (names[0] ?? "").replace(/[^/]+\/$/, "");
    return names.map((name) => (existsSync(join(root, name)) ? name : beside + name));
  });
  const there = ["packages/core/src/", "packages/", "apps/", "tests/"].flatMap((house) =>
    readdirSync(join(root, house), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !SKIPPED.has(entry.name))
      .map(({ name }) => `${house}${name}/`),
  );
  expect(there.filter((room) => !rooms.some((one) => one.startsWith(room)))).toEqual([]);
});
