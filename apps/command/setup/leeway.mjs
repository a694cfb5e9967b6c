/**
 * `npm run -s leeway -- VERB PLAN ...`: the built command, in this process, building first when it must.
 * Standard output belongs to the command; whatever setting up has to say goes to standard error.
 */
import { isFresh } from "./stamp.mjs";

if (!isFresh("command")) {
  const { setupOrExit } = await import("./setup.mjs");
  await setupOrExit({ say: (text) => process.stderr.write(text), parts: ["command"] });
}
// npm runs scripts at the root of the checkout; paths are meant from where the caller stands.
if (process.env.npm_lifecycle_event === "leeway" && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
await import("../dist/leeway.mjs");
