/**
 * `npm start`: sets up, prints the example plan's forecast and serves the notebook on loopback until stopped.
 * `npm start -- --once` prints and ends.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";
import { runShown } from "./run.mjs";
import { serve } from "./serve.mjs";
import { setupOrExit } from "./setup.mjs";

const unknown = process.argv.slice(2).filter((word) => word !== "--once");
if (unknown.length > 0) {
  process.stderr.write(`${unknown.join(" ")}: npm start knows only --once (print the example and end).\n`);
  process.exit(2);
}
await setupOrExit({ say: (text) => process.stderr.write(text) });

const plan = "examples/quillmarsh-clinic.plan.yaml";
process.stdout.write(`$ npm run -s leeway -- forecast ${plan}\n\n`);
const code = await runShown(process.execPath, [join(root, "apps/command/dist/leeway.mjs"), "forecast", plan]);
if (code !== 0 || process.argv.includes("--once")) process.exit(code);

const page = join(root, "apps/notebook/dist");
if (!existsSync(join(page, "index.html"))) {
  process.stderr.write("The notebook has not been built, so there is nothing to serve.\n");
  process.exit(2);
}
try {
  const { address } = await serve(page);
  process.stdout.write(`\nThe notebook is at ${address} (Ctrl+C stops it).\n`);
} catch (error) {
  process.stderr.write(`The notebook could not be served on 127.0.0.1: ${error.message}\n`);
  process.exitCode = 2;
}
for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => process.exit(0));
// npm passes a signal on to its shell only: when that is gone, so is whoever wanted the page.
const parent = process.ppid;
setInterval(() => {
  if (process.ppid !== parent) process.exit(0);
}, 1000).unref();
