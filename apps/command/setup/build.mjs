/**
 * Builds one part: `node apps/command/setup/build.mjs command | notebook`.
 *
 * The result is built aside and moved in file by file, the entry last, so that a command started meanwhile
 * finds either the old build or the new one, never half of each.
 */
import { mkdirSync, readdirSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { root } from "./root.mjs";

const ssr = { noExternal: true, external: ["jsdom"], target: "node" };
const command = (input, format) => ({
  configFile: false,
  build: {
    ssr: true,
    target: "node20",
    minify: true,
    emptyOutDir: false,
    rollupOptions: {
      input,
      output: {
        format,
        entryFileNames: `[name].${format === "cjs" ? "cjs" : "mjs"}`,
        chunkFileNames: `[name]-[hash].${format === "cjs" ? "cjs" : "mjs"}`,
        // In one piece: a call from one to another is looked up by name, which loops over iterations would feel.
        codeSplitting: {
          groups: [
            {
              name: "engine",
              test: /packages.core.src.(calendar|forecast|kernel|sampling|simulate|plan.oneLine)/,
            },
          ],
          includeDependenciesRecursively: false,
        },
      },
    },
  },
  // Few files to read at start-up. jsdom finds its own files by path, so it stays where it is installed.
  ssr,
});

const PARTS = {
  command: {
    entry: "leeway.mjs",
    configs: [
      // What is run with the code that the engine compiled of it here (src/start/loadProgram.ts): CommonJS, for an engine
      // of Node 20 takes no compiled code for other modules. The thread that a large forecast is shared out to is a file
      // of its own: it starts sooner for being small.
      command({ program: "src/program.ts", thread: "@leeway/parallel/node-worker" }, "cjs"),
      command({ leeway: "src/leeway.ts", worker: "src/worker.ts", makeReady: "src/makeReady.ts" }, "es"),
    ],
  },
  notebook: { entry: "index.html", configs: [{}] },
};

function moveIn(from, to, entry) {
  const files = readdirSync(from, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    .map((file) => join(file.parentPath, file.name).slice(from.length + 1));
  for (const file of [...files.filter((file) => file !== entry), entry]) {
    mkdirSync(dirname(join(to, file)), { recursive: true });
    renameSync(join(from, file), join(to, file));
  }
  const kept = new Set(files);
  for (const file of readdirSync(to, { recursive: true, withFileTypes: true })) {
    const path = join(file.parentPath, file.name);
    if (file.isFile() && !kept.has(path.slice(to.length + 1))) rmSync(path);
  }
}

const name = process.argv[2];
const { entry, configs } = PARTS[name];
const home = join(root, "apps", name);
// Named dist, so that whatever passes over built files passes over this one too.
const aside = join(root, ".leeway", `${name}-${process.pid}`, "dist");
try {
  process.chdir(home);
  for (const config of configs) {
    await build({
      ...config,
      root: home,
      logLevel: "warn",
      build: { emptyOutDir: true, ...config.build, outDir: aside },
    });
  }
  if (name === "command") {
    const { makeReady } = await import(pathToFileURL(join(aside, "makeReady.mjs")).href);
    await makeReady(join(root, "examples/quillmarsh-clinic.plan.yaml"));
  }
  moveIn(aside, join(home, "dist"), entry);
} finally {
  rmSync(dirname(aside), { recursive: true, force: true });
}
