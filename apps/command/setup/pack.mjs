/**
 * `npm run pack-packages [FOLDER]`: builds the three libraries as plain JavaScript with their types and packs each as it would
 * be published. FOLDER is .leeway/packed unless named; the three tarballs in it are written anew.
 *
 * While developing, packages are read as sources; `publishConfig` in their package.json puts what is built here in their place.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pnpm, root } from "./root.mjs";
import { runQuietly } from "./run.mjs";

const PACKAGES = ["core", "parallel", "charts"];

async function build(name) {
  const home = join(root, "packages", name);
  const built = join(home, "dist/lib");
  rmSync(built, { recursive: true, force: true });
  const tsc = join(root, "node_modules/typescript/bin/tsc");
  // Types are checked by `npm test`, once a package; here they are only written out.
  await run(process.execPath, [tsc, "-p", join(home, "tsconfig.build.json"), "--noCheck"]);
  for (const file of readdirSync(built, { recursive: true })) {
    if (/\.(js|d\.ts)$/.test(file)) mend(join(built, file));
  }
}

/** What the compiler leaves as it is: names of sources in types and in the address of a worker, pointers to declarations. */
function mend(path) {
  const text = readFileSync(path, "utf8");
  const mended = text
    .replace(/^\/\/\/ <reference path=.*\n/gm, "")
    .replace(/((?:from |import\()"\.{1,2}\/[^"]+)\.ts"/g, '$1.js"')
    .replace(/(new URL\("\.\/\w+)\.ts(", import\.meta\.url\))/g, "$1.js$2");
  if (mended !== text) writeFileSync(path, mended);
}

async function run(program, args) {
  const { code, output } = await runQuietly(program, args, { ...process.env, CI: "true" });
  if (code === 0) return;
  process.stderr.write(`${output.trim()}\n`);
  process.exit(1);
}

const folder = resolve(process.argv[2] ?? join(root, ".leeway/packed"));
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
await Promise.all(PACKAGES.map(build));
const each = PACKAGES.flatMap((name) => ["--filter", `./packages/${name}`]);
await run("npx", ["--yes", pnpm, "--recursive", ...each, "pack", "--pack-destination", folder]);
process.stdout.write(`${readdirSync(folder).join("\n")}\n`);
