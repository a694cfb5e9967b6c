// The libraries as somebody gets them: packed, unpacked elsewhere and used from plain Node, with nothing beside them but what
// their package.json names. Rules of packaging: Node's documentation of "exports" and the checks of publint (publint.dev/rules).
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { forecast, readPlan } from "@leeway/core";
import { publint } from "publint";
import ts from "typescript-api";
import { beforeAll, describe, expect, it } from "vitest";
import { examples, root, writing } from "../examples/places.ts";
import { exportedBy } from "./exported.ts";
import { type Installed, install, link, type Packed } from "./installed.ts";
import { type Entry, referencePages } from "./referencePages.ts";

let user: Installed;
beforeAll(() => {
  user = install();
}, 300_000);

const minimal = `${examples}minimal.plan.yaml`;

/** That types arrive as what they are: the second line must be refused, or the compiler would complain of the comment. */
const USE = `import { type Forecast, forecast, planFromData } from "@leeway/core";
import type { Figure } from "@leeway/charts";
const { plan } = planFromData({});
const answer: Forecast | undefined = plan && forecast(plan).forecast;
// @ts-expect-error a date is a text
const day: number | undefined = answer?.committed.date;
// @ts-expect-error a title is a text
export const title: number = ({} as Figure).title;
console.log(day);
`;

/** Every entry point, so that none is left out of what follows. */
function entries(): string[] {
  return user.packages.flatMap(({ manifest }) =>
    Object.keys(manifest.exports).map((entry) => join(manifest.name, entry)),
  );
}

function write(name: string, text: string): string {
  writeFileSync(join(user.folder, name), text);
  return name;
}

describe("the packed libraries", () => {
  it("give in plain Node what the sources give, on threads too", () => {
    link(user.folder, "jsdom", "."); // the user's own choice of a document
    const program = write(
      "use.mjs",
      `import { readFileSync } from "node:fs";
import { figureSvg, finishCurve } from "@leeway/charts";
import { briefOf, forecast, readPlan } from "@leeway/core";
import { forecastInParallel } from "@leeway/parallel";
import { nodePool } from "@leeway/parallel/node";
import { JSDOM } from "jsdom";

const { plan } = readPlan(readFileSync(process.argv[2], "utf8"));
const alone = forecast(plan, { iterations: 2048 }).forecast;
const pool = nodePool(new URL(import.meta.resolve("@leeway/parallel/node-worker")));
const shared = await forecastInParallel(plan, { iterations: 2048, pool, workers: 1, aside: true });
const svg = figureSvg(finishCurve(alone, { document: new JSDOM().window.document, width: 720 }));
console.log(JSON.stringify({ alone, shared: shared.forecast, svg: svg.slice(0, 4), brief: typeof briefOf }));
process.exit(0);
`,
    );
    const run = spawnSync(process.execPath, [program, minimal], { cwd: user.folder, encoding: "utf8" });
    expect(run.stderr).toBe("");
    const { plan } = readPlan(readFileSync(minimal, "utf8"));
    if (plan === undefined) throw new Error("The example has problems.");
    const expected = JSON.parse(JSON.stringify(forecast(plan, { iterations: 2048 }).forecast));
    const said = JSON.parse(run.stdout);
    expect(said.alone).toEqual(expected);
    expect(said.shared).toEqual(expected);
    expect(said).toMatchObject({ svg: "<svg", brief: "function" });
  });

  it("have types that a strict compiler resolves, those of what they depend on included", () => {
    const program = write(
      "use.mts",
      entries()
        .map((entry, index) => `import * as entry${index} from "${entry}";\nconsole.log(entry${index});\n`)
        .concat(USE)
        .join(""),
    );
    write(
      "tsconfig.json",
      JSON.stringify({
        compilerOptions: {
          module: "NodeNext",
          ...{ target: "ES2022", lib: ["ES2023", "DOM", "DOM.Iterable"], types: [] },
          ...{ strict: true, skipLibCheck: false, exactOptionalPropertyTypes: true, noEmit: true },
        },
        files: [program],
      }),
    );
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const run = spawnSync(process.execPath, [tsc, "-p", user.folder], { encoding: "utf8" });
    expect(run.stdout).toBe("");
    expect(run.status).toBe(0);
  });

  it("export no `any`", () => {
    expect(user.packages.flatMap((one) => declarations(one).flatMap(anyIn))).toEqual([]);
  });

  it("name every package they import, and import every package they name", () => {
    for (const one of user.packages) {
      const code = one.files.filter((file) => /\.(js|d\.ts)$/.test(file)).map((file) => read(one, file));
      const imported = code.flatMap((text) =>
        ts.preProcessFile(text).importedFiles.map(({ fileName }) => fileName),
      );
      const outside = imported.filter((name) => !name.startsWith(".") && !name.startsWith("node:"));
      const named = outside.map((name) =>
        name
          .split("/")
          .slice(0, name.startsWith("@") ? 2 : 1)
          .join("/"),
      );
      expect([...new Set(named)].sort()).toEqual(Object.keys(one.manifest.dependencies ?? {}).sort());
    }
  });

  it("hold code, types, licence and pages only: no maps, no sources, no paths of this machine", () => {
    const places = [root.replace(/\/$/, ""), homedir(), process.env.USER ?? ""].filter(
      (word) => word.length > 4,
    );
    for (const one of user.packages) {
      expect(one.files).toContain("LICENSE");
      expect(one.files).toContain("README.md");
      const odd = one.files.filter(
        (file) => !/^dist\/lib\/.+\.(js|d\.ts)$|^[A-Z]+(\.md)?$|^package\.json$/.test(file),
      );
      expect(odd).toEqual([]);
      for (const file of one.files) {
        const text = read(one, file);
        expect(text.includes("sourceMappingURL"), file).toBe(false);
        expect(
          places.filter((place) => text.includes(place)),
          file,
        ).toEqual([]);
        // A worker or a module that is still called by the name of its source would not be found.
        if (/\.(js|d\.ts)$/.test(file)) expect(text.match(/["']\.{1,2}\/[^"']*\.ts["']/g), file).toBeNull();
      }
    }
  });

  it("pass publint, warnings and suggestions included", async () => {
    for (const { folder, tarball } of user.packages) {
      const bytes = readFileSync(tarball);
      const data = bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength);
      const { messages } = await publint({ strict: true, pack: { tarball: data } });
      expect(messages, folder).toEqual([]);
    }
  });
});

// To write the pages anew: npm run -s reference
describe("docs/reference", () => {
  const pages = `${root}docs/reference/`;
  let found: Entry[] | undefined;
  const entriesOf = (): Entry[] => {
    found ??= user.packages.flatMap(({ manifest, folder }) =>
      Object.entries(manifest.exports)
        .filter(([entry]) => entry !== "./node-worker") // a file to start, with nothing to call
        .map(([entry, { types }]) => ({
          name: join(manifest.name, entry),
          exported: exportedBy(join(folder, "dist/lib"), types.slice("./dist/lib/".length)),
        })),
    );
    return found;
  };

  it("has a docstring for everything that is exported", () => {
    const all = entriesOf().flatMap(({ exported }) => exported);
    expect(all.length).toBeGreaterThan(500);
    expect(all.filter(({ doc }) => doc === "").map(({ name, file }) => `${file}: ${name}`)).toEqual([]);
  });

  it("is current and lists everything; if not: npm run -s reference", () => {
    const expected = referencePages(entriesOf());
    if (writing) {
      rmSync(pages, { recursive: true, force: true });
      mkdirSync(pages, { recursive: true });
      for (const [file, text] of expected) writeFileSync(pages + file, text);
    }
    expect(readdirSync(pages).sort()).toEqual([...expected.keys()].sort());
    const stale = [...expected].filter(([file, text]) => readFileSync(pages + file, "utf8") !== text);
    expect(stale.map(([file]) => file)).toEqual([]);
  });
});

function read({ folder }: Packed, file: string): string {
  return readFileSync(join(folder, file), "utf8");
}

function declarations(one: Packed): ts.SourceFile[] {
  return one.files
    .filter((file) => file.endsWith(".d.ts") && /\bany\b/.test(read(one, file)))
    .map((file) => ts.createSourceFile(file, read(one, file), ts.ScriptTarget.Latest, true));
}

function anyIn(file: ts.SourceFile): string[] {
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (node.kind === ts.SyntaxKind.AnyKeyword) found.push(`${file.fileName}: ${node.parent.getText()}`);
    node.forEachChild(look);
  };
  look(file);
  return found;
}
