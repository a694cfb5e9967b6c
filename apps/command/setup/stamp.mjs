/**
 * Stamps: what a step was last done for, so that doing it again costs nothing.
 *
 * A stamp is a hash over the step's inputs, kept in `.leeway/`. Installing looks at contents (few files, and a
 * fresh checkout has fresh times); building looks at path, size and time of change, because reading every
 * source would cost more than the command itself.
 */
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

const SKIPPED = new Set(["node_modules", "dist", ".vite", "coverage"]);

function listFiles(path, found) {
  const stat = statSync(path, { throwIfNoEntry: false });
  if (stat === undefined) return;
  if (stat.isDirectory()) {
    for (const name of readdirSync(path).sort()) {
      if (!SKIPPED.has(name)) listFiles(join(path, name), found);
    }
  } else found.push({ path, stat });
}

function packages() {
  const dirs = ["examples", "tests"];
  for (const group of ["packages", "apps"]) {
    for (const name of readdirSync(join(root, group)).sort()) dirs.push(`${group}/${name}`);
  }
  return dirs.filter((dir) => existsSync(join(root, dir, "package.json")));
}

/** What decides which packages are installed, relative to the root. */
function manifests() {
  const files = ["package.json", "pnpm-lock.yaml", "pnpm-workspace.yaml", ".npmrc"];
  for (const dir of packages()) files.push(`${dir}/package.json`);
  return files;
}

function sources(step) {
  const paths = [...manifests(), "tsconfig.base.json", "apps/command/setup/build.mjs"];
  for (const dir of packages()) if (dir.startsWith("packages/")) paths.push(`${dir}/src`);
  if (step === "command") paths.push("apps/command/src");
  if (step === "notebook") paths.push("apps/notebook", "examples");
  return paths;
}

/**
 * Hash over a step's inputs as they are now.
 *
 * @param {"install" | "command" | "notebook"} step
 * @returns {string} hex
 */
export function currentStamp(step) {
  const hash = createHash("sha256").update(process.versions.node.split(".")[0]);
  if (step === "install") {
    for (const name of manifests()) {
      const path = join(root, name);
      if (existsSync(path)) hash.update(`${name}\n`).update(readFileSync(path));
    }
    return hash.digest("hex");
  }
  const found = [];
  for (const name of sources(step)) listFiles(join(root, name), found);
  for (const { path, stat } of found) hash.update(`${path} ${stat.size} ${stat.mtimeMs}\n`);
  return hash.digest("hex");
}

/** The stamp of the last time the step succeeded; empty when it never did. */
export function lastStamp(step) {
  try {
    return readFileSync(join(root, ".leeway", `${step}.stamp`), "utf8");
  } catch {
    return "";
  }
}

/** Notes that the step succeeded for inputs with this stamp. */
export function keepStamp(step, stamp) {
  mkdirSync(join(root, ".leeway"), { recursive: true });
  const path = join(root, ".leeway", `${step}.stamp`);
  writeFileSync(`${path}.${process.pid}`, stamp);
  renameSync(`${path}.${process.pid}`, path);
}

const RESULTS = {
  install: "node_modules/.modules.yaml",
  command: "apps/command/dist/leeway.mjs",
  notebook: "apps/notebook/dist/index.html",
};

/** Whether the step's result stands and nothing it depends on has changed since. */
export function isFresh(step) {
  return existsSync(join(root, RESULTS[step])) && lastStamp(step) === currentStamp(step);
}
