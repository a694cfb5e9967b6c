import { execFileSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, realpathSync, rmSync, symlinkSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { root } from "../examples/places.ts";

/** What of a package.json the tests look at. */
export interface Manifest {
  name: string;
  license: string;
  dependencies?: Record<string, string>;
  devDependencies?: Record<string, string>;
  exports: Record<string, { types: string; default: string }>;
}

/** One package as it came out of its tarball. */
export interface Packed {
  manifest: Manifest;
  /** Where it was unpacked, as an absolute path. */
  folder: string;
  tarball: string;
  /** Relative to the folder. */
  files: string[];
}

/** A temporary folder of a user who installed the three libraries from their tarballs, and nothing else. */
export interface Installed {
  folder: string;
  packages: Packed[];
}

const OURS = "@leeway/";

/**
 * Packs the libraries and installs them as npm would, without the network: what a tarball's own package.json names stands in
 * node_modules, linked from where this checkout has it, and what it does not name is not to be found.
 */
export function install(): Installed {
  const folder = temporaryFolder();
  const tarballs = join(folder, "tarballs");
  execFileSync(process.execPath, [join(root, "apps/command/setup/pack.mjs"), tarballs], { stdio: "pipe" });
  const packages = readdirSync(tarballs).map((file) => unpack(join(tarballs, file), folder));
  for (const { manifest } of packages) {
    for (const name of Object.keys(manifest.dependencies ?? {})) {
      if (!name.startsWith(OURS)) link(folder, name, `packages/${manifest.name.slice(OURS.length)}`);
    }
  }
  return { folder, packages };
}

/** Puts a package that `from` (a folder of this checkout) depends on into the user's node_modules. */
export function link(folder: string, name: string, from: string): void {
  const path = join(folder, "node_modules", name);
  mkdirSync(dirname(path), { recursive: true });
  rmSync(path, { force: true });
  symlinkSync(realpathSync(join(root, from, "node_modules", name)), path);
}

function unpack(tarball: string, folder: string): Packed {
  const name = /leeway-(\w+)-/.exec(basename(tarball))?.[1] ?? "";
  const home = join(folder, "node_modules", OURS, name);
  mkdirSync(home, { recursive: true });
  execFileSync("tar", ["-xzf", tarball, "-C", home, "--strip-components=1"]);
  const manifest = JSON.parse(readFileSync(join(home, "package.json"), "utf8")) as Manifest;
  const files = readdirSync(home, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(home.length + 1));
  return { manifest, folder: home, tarball, files };
}
