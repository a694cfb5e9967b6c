// What is depended on is what DEVELOPERS.md says, with the licence it says, in the one version the lockfile has. The licence is
// the one the installed package states about itself.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import MarkdownIt from "markdown-it";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { root } from "../examples/places.ts";
import type { Manifest } from "./installed.ts";

const rooms = ["packages", "apps"].flatMap((group) =>
  readdirSync(join(root, group)).map((name) => `${group}/${name}`),
);
const folders = [".", "examples", "tests", ...rooms];
const manifests = folders.map((folder) => ({ folder, manifest: manifestOf(folder) }));

interface Dependency {
  name: string;
  range: string;
  folder: string;
  /** Whether whoever uses a library or an app gets it too. */
  runtime: boolean;
}

const dependencies = manifests.flatMap(({ folder, manifest }) => {
  const list = (kind: "dependencies" | "devDependencies", runtime: boolean): Dependency[] =>
    Object.entries(manifest[kind] ?? {})
      .filter(([name]) => !name.startsWith("@leeway/"))
      .map(([name, range]) => ({ name, range, folder, runtime }));
  return [...list("dependencies", rooms.includes(folder)), ...list("devDependencies", false)];
});

function manifestOf(folder: string): Manifest {
  return JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8")) as Manifest;
}

/** Rows of the tables under the heading about dependencies, a cell a text; headings of the tables left out. */
function tables(): string[][][] {
  const text = readFileSync(`${root}DEVELOPERS.md`, "utf8");
  const tokens = new MarkdownIt().parse(text.slice(text.indexOf("## Dependencies")), {});
  const found: string[][][] = [];
  for (const [index, { type }] of tokens.entries()) {
    if (type === "tbody_open") found.push([]);
    if (type === "tr_open" && tokens[index - 1]?.type !== "thead_open") found.at(-1)?.push([]);
    if (type === "td_open")
      found
        .at(-1)
        ?.at(-1)
        ?.push(tokens[index + 1]?.content ?? "");
  }
  return found;
}

const [runtime = [], development = []] = tables();
const words = (cell = ""): string[] => cell.split(",").map((word) => word.trim());

describe("the tables of DEVELOPERS.md", () => {
  it("name every package the libraries and apps run on, who uses it and what for", () => {
    const used = new Map<string, Set<string>>();
    for (const { name, folder, runtime } of dependencies) {
      if (!runtime) continue;
      used.set(name, (used.get(name) ?? new Set()).add(folder.slice(folder.indexOf("/") + 1)));
    }
    const said = runtime.map(([name = "", , users]): [string, string[]] => [name, words(users).sort()]);
    expect(new Map(said)).toEqual(new Map([...used].map(([name, users]) => [name, [...users].sort()])));
    for (const [name, , , purpose = ""] of runtime) expect(purpose.length, name).toBeGreaterThan(4);
  });

  it("name every package that builds and tests them, and no other", () => {
    const running = new Set(runtime.map(([name]) => name));
    const others = new Set(dependencies.filter(({ name }) => !running.has(name)).map(({ name }) => name));
    expect(development.flatMap(([names]) => words(names)).sort()).toEqual([...others].sort());
  });

  it("give each the licence it states itself", () => {
    const rows = [...runtime, ...development].flatMap(([names, licences]) =>
      words(names).map((name, index): [string, string | undefined] => [name, words(licences)[index]]),
    );
    for (const [name, licence] of rows) {
      const folder = dependencies.find((each) => each.name === name)?.folder ?? ".";
      const home = join(root, folder, "node_modules", name);
      const stated = (JSON.parse(readFileSync(join(home, "package.json"), "utf8")) as Partial<Manifest>)
        .license;
      // jstat states none in its package.json; its licence file does.
      const file = join(home, "LICENSE");
      const text = stated === undefined && existsSync(file) ? readFileSync(file, "utf8") : "";
      const own = stated ?? (/Permission is hereby granted, free of charge/.test(text) ? "MIT" : "none");
      expect(own, name).toBe(licence);
    }
  });
});

describe("pnpm-lock.yaml", () => {
  const lock = parse(readFileSync(`${root}pnpm-lock.yaml`, "utf8")) as {
    importers: Record<
      string,
      Record<"dependencies" | "devDependencies", Record<string, { specifier: string }>>
    >;
  };

  it("holds exactly what the package.json files ask for, so that setting up frozen installs it", () => {
    for (const { folder, manifest } of manifests) {
      for (const kind of ["dependencies", "devDependencies"] as const) {
        const locked = Object.entries(lock.importers[folder]?.[kind] ?? {}).map(([name, { specifier }]) => [
          name,
          specifier,
        ]);
        expect(Object.fromEntries(locked), `${folder} ${kind}`).toEqual(manifest[kind] ?? {});
      }
    }
  });

  it("is of one version each: no ranges", () => {
    const loose = dependencies.filter(({ range }) => !/^(npm:[a-z@/-]+@)?\d+\.\d+\.\d+$/.test(range));
    expect(loose).toEqual([]);
  });
});
