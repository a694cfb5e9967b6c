/**
 * `npm test`: sets up, then lint and format, types of every package, and every test, the page's included.
 * The last line is `N passed, N failed`; lint and each package's types count as one check each.
 * `npm run check` (`--quick`) leaves out the tests that need a browser.
 */
import { existsSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { ensureChromium } from "./chromium.mjs";
import { root } from "./root.mjs";
import { runShown } from "./run.mjs";
import { setup } from "./setup.mjs";
import { tallyReport } from "./tally.mjs";

const quick = process.argv.includes("--quick");
let passed = 0;
let failed = 0;

async function check(title, work) {
  process.stdout.write(`\n== ${title}\n`);
  const good = await work();
  if (good) passed++;
  else failed++;
  process.stdout.write(`${good ? "passed" : "FAILED"}: ${title}\n`);
  return good;
}

const tool = (name) => join(root, "node_modules/.bin", name);

function typedPackages() {
  const dirs = ["examples", "tests"];
  for (const group of ["packages", "apps"]) {
    for (const name of readdirSync(join(root, group)).sort()) dirs.push(`${group}/${name}`);
  }
  return dirs.filter((dir) => existsSync(join(root, dir, "tsconfig.json")));
}

async function main() {
  const ready = await check("set up", async () => {
    try {
      await setup({ say: (text) => process.stdout.write(text) });
      return true;
    } catch (error) {
      process.stdout.write(`${error.message}\n`);
      return false;
    }
  });
  if (!existsSync(tool("vitest"))) return;

  const chromium = quick ? undefined : await ensureChromium();
  if (!quick) await check("Chromium for the tests of the page", async () => chromium !== undefined);
  await check("lint and format", async () => (await runShown(tool("biome"), ["check", "."])) === 0);
  for (const dir of typedPackages()) {
    await check(`types of ${dir}`, async () => (await runShown(tool("tsc"), ["-p", dir])) === 0);
  }

  process.stdout.write("\n== tests\n");
  const report = join(root, ".leeway/tests.report");
  rmSync(report, { force: true });
  const args = ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  if (quick) args.push("--project", "unit");
  if (!ready) process.stdout.write("(without a fresh build)\n");
  const env = { ...process.env, ...(chromium === undefined ? {} : { LEEWAY_CHROMIUM: chromium }) };
  const tally = tallyReport(report, await runShown(tool("vitest"), args, env));
  passed += tally.passed;
  failed += tally.failed;
}

await main();
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
