/**
 * Builds one part: `node apps/command/setup/build.mjs command | notebook`.
 *
 * The result is built aside and moved in file by file, the entry last, so that a command started meanwhile
 * finds either the old build or the new one, never half of each.
 */
import { mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";
import { root } from "./root.mjs";

const PARTS = {
  command: {
    entry: "leeway.mjs",
    config: {
      configFile: false,
      build: {
        ssr: true,
        target: "node20",
        minify: true,
        rollupOptions: {
          // The thread a large forecast is shared out to is a file of its own: it starts sooner for being small.
          input: {
            leeway: "src/leeway.ts",
            worker: "@leeway/parallel/node-worker",
            makePieces: "src/makePieces.ts",
          },
          output: { entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" },
        },
      },
      // Few files to read at start-up. jsdom finds its own files by path, so it stays where it is installed.
      ssr: { noExternal: true, external: ["jsdom"], target: "node" },
    },
  },
  notebook: { entry: "index.html", config: {} },
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
const { entry, config } = PARTS[name];
const home = join(root, "apps", name);
// Named dist, so that whatever passes over built files passes over this one too.
const aside = join(root, ".leeway", `${name}-${process.pid}`, "dist");
try {
  process.chdir(home);
  await build({
    ...config,
    root: home,
    logLevel: "warn",
    build: { ...config.build, outDir: aside, emptyOutDir: true },
  });
  if (name === "command") {
    const { piecesFile } = await import(pathToFileURL(join(aside, "makePieces.mjs")).href);
    writeFileSync(join(aside, "pieces.bin"), piecesFile());
  }
  moveIn(aside, join(home, "dist"), entry);
} finally {
  rmSync(dirname(aside), { recursive: true, force: true });
}
