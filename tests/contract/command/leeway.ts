import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const here = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));

/** The built command. */
export const builtCommand = here("apps/command/dist/leeway.mjs");
/** What `npm run leeway` starts: builds first when the build is stale. */
export const startedCommand = here("apps/command/setup/leeway.mjs");
export const examplePlan = here("examples/quillmarsh-clinic.plan.yaml");

export interface Ended {
  code: number | null;
  out: string;
  err: string;
}
export interface RunOptions {
  input?: string | Buffer;
  cwd?: string;
  env?: Record<string, string>;
  program?: string;
}

/** Runs the command as a person would, in a process of its own, without a terminal. */
export function leeway(words: string[], options: RunOptions = {}): Promise<Ended> {
  const { input = "", cwd = temporaryFolder(), env = {}, program = builtCommand } = options;
  const { COLUMNS: _, ...inherited } = process.env;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...words], { cwd, env: { ...inherited, ...env } });
    let out = "";
    let err = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      err += text;
    });
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, out, err }));
    child.stdin.on("error", () => {}); // a call refused before it reads its input
    child.stdin.end(input);
  });
}

/** Builds the command when it is stale; for `beforeAll`. */
export async function build(): Promise<void> {
  const { code, err } = await leeway(["--version"], { program: startedCommand });
  if (code !== 0) throw new Error(`the command could not be built:\n${err}`);
}

/** Two tasks, one range, money, and a commitment that asks for everything there is a chance of. */
export const smallPlan = `format: 1
title: Shed roof
currency: EUR
start: 2027-02-01
commitment:
  confidence: 0.7
  finishBy: 2027-02-19
  budget: 2600
tasks:
  - id: strip
    name: Strip the old roof
    duration: [2, 3, 6]
    cost: 400
  - id: felt
    name: Lay the felt
    after: [strip]
    duration: [4, 5, 9]
    cost: [1500, 1800, 3000]
    target: 2027-02-17
  - id: done
    name: Roof closed
    milestone: true
    after: [felt]
intervals:
  - { id: open, name: Shed without a roof, from: strip, to: done, atMost: 9 }
risks:
  - id: rain
    name: A week of rain
    probability: 0.3
    impacts: [{ tasks: [felt], delay: [2, 3, 5] }]
    responses:
      - { id: tarpaulin, action: Hire a tarpaulin, cost: 120, probability: 0.05 }
`;
