/**
 * `npm run setup`: installs and builds what is missing or stale; a fraction of a second when nothing is.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { withLock } from "./lock.mjs";
import { pnpm, root } from "./root.mjs";
import { runQuietly } from "./run.mjs";
import { currentStamp, isFresh, keepStamp } from "./stamp.mjs";

/** A step failed; the message says in words what to run. */
export class SetupError extends Error {}

async function install() {
  const args = ["--yes", pnpm, "install", "--frozen-lockfile", "--reporter=append-only"];
  // Without a terminal pnpm refuses to ask; CI=true is its way of being told not to.
  const { code, output } = await runQuietly("npx", args, { ...process.env, CI: "true" });
  if (code === 0) return;
  const command = `npx --yes ${pnpm} install`;
  const advice = output.includes("OUTDATED_LOCKFILE")
    ? `pnpm-lock.yaml does not match the package.json files. Run \`${command}\` and commit the lockfile.`
    : code === 127
      ? "npx was not found. Install Node 20.19 or later with npm, then run `npm run setup`."
      : `The packages could not be installed. Check the network, then run \`${command} --frozen-lockfile\`.`;
  throw new SetupError(`${output.trim()}\n${advice}`);
}

async function build(part) {
  const script = join(root, "apps/command/setup/build.mjs");
  const { code, output } = await runQuietly(process.execPath, [script, part]);
  if (code !== 0) {
    throw new SetupError(
      `${output.trim()}\nThe ${part} could not be built. The reason is above; to see it again run ` +
        `\`node apps/command/setup/build.mjs ${part}\`.`,
    );
  }
}

const DOING = {
  install: "Installing packages",
  command: "Building the command",
  notebook: "Building the notebook",
};

async function step(name, work, say) {
  if (isFresh(name)) return;
  say(`${DOING[name]} ...\n`);
  // Taken before the work: what changes while it runs is stale afterwards.
  const stamp = currentStamp(name);
  await work();
  keepStamp(name, stamp);
}

/**
 * Brings the checkout up to date.
 *
 * @param {{ say?: (text: string) => void, parts?: ("command" | "notebook")[] }} options
 *   `say` gets one line per step done, nothing when all stands.
 * Throws SetupError when a step fails.
 */
export async function setup({ say = () => {}, parts = ["command", "notebook"] } = {}) {
  const [major, minor] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new SetupError(`Node ${process.versions.node} is too old: install Node 20.19 or later.`);
  }
  const wanted = parts.filter(
    (part) => part === "command" || existsSync(join(root, "apps/notebook/vite.config.ts")),
  );
  if (["install", ...wanted].every(isFresh)) return;
  await withLock(async () => {
    await step("install", install, say);
    for (const part of wanted) await step(part, () => build(part), say);
  });
}

/** The same for an entry script: a failure is printed in words and ends the process with code 2. */
export async function setupOrExit(options) {
  try {
    await setup(options);
  } catch (error) {
    process.stderr.write(`${error instanceof SetupError ? error.message : error.stack}\n`);
    process.exit(2);
  }
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await setupOrExit({ say: (text) => process.stdout.write(text) });
  process.stdout.write("Ready: `npm start`, or `npm run -s leeway -- help`.\n");
}
