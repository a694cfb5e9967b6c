import { spawn } from "node:child_process";
import { root } from "./root.mjs";

/**
 * Runs a program at the root of the checkout, its output kept aside.
 *
 * @returns {Promise<{ code: number, output: string }>} code 127 when the program is not there
 */
export function runQuietly(program, args, env = process.env) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: root, env, stdio: ["ignore", "pipe", "pipe"] });
    let output = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding("utf8").on("data", (text) => {
        output += text;
      });
    }
    child.on("error", (error) => resolve({ code: 127, output: error.message }));
    child.on("close", (code) => resolve({ code: code ?? 1, output }));
  });
}

/** The same with its output shown as it comes. Resolves to the exit code. */
export function runShown(program, args, env = process.env) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: root, env, stdio: ["ignore", "inherit", "inherit"] });
    child.on("error", (error) => {
      process.stderr.write(`${program}: ${error.message}\n`);
      resolve(127);
    });
    child.on("close", (code) => resolve(code ?? 1));
  });
}
