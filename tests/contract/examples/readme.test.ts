// Documentation that runs: `ts` blocks are started, `sh` blocks that call the command are run through the built
// command, and what either prints is compared with the `text` block below it. `yaml` blocks are excerpts and must
// stand in an example plan word for word. The printed figures are our own, see programs.test.ts.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { verbs } from "../../../apps/command/src/call/verbs.ts";
import { examples, examplesEnding, root, writing } from "./places.ts";
import { printedBy } from "./printedBy.ts";
import { type Block, readmeBlocks } from "./readmeBlocks.ts";

const COMMAND = `${root}apps/command/dist/leeway.mjs`;
const CALL = "npm run -s leeway -- ";
const REST = "...\n";
// Under tests/, so that packages resolve; a hidden name that git ignores.
const SCRATCH = fileURLToPath(new URL(".leeway/", import.meta.url));

function runCommand(line: string): string {
  if (!existsSync(COMMAND)) throw new Error("The command is not built: run `npm run setup` first.");
  const words = line.slice(CALL.length).split(" ");
  const env = { PATH: process.env.PATH, COLUMNS: "100" }; // plain text, whatever terminal the tests run in
  const run = spawnSync(process.execPath, [COMMAND, ...words], { cwd: root, encoding: "utf8", env });
  expect(run.stderr).toBe("");
  return run.stdout;
}

async function runProgram(code: string, name: string): Promise<string> {
  mkdirSync(SCRATCH, { recursive: true });
  const file = `${SCRATCH}${name}.ts`;
  try {
    writeFileSync(file, code);
    return `${(await printedBy(file)).join("\n")}\n`;
  } finally {
    rmSync(file, { force: true });
  }
}

/** What a block shows of the output: all of it, or, where it ends in a line of dots, as many lines from the top. */
function shownPart(whole: string, output: string): string {
  if (!output.endsWith(`\n${REST}`)) return whole;
  const lines = output.split("\n").length - REST.split("\n").length;
  const shown = whole.split("\n").slice(0, lines);
  expect(shown).toHaveLength(lines);
  return `${shown.join("\n")}\n${REST}`;
}

function compare(readme: string, block: Block, whole: string): void {
  if (block.output === undefined) return;
  const printed = shownPart(whole, block.output);
  if (printed === block.output) return;
  if (!writing) expect(printed).toBe(block.output);
  const before = `${block.code}\`\`\`\n\n\`\`\`text\n`;
  const text = readFileSync(root + readme, "utf8");
  writeFileSync(
    root + readme,
    text.replace(`${before}${block.output}`, () => `${before}${printed}`),
  );
}

const PAGES = [
  "README.md",
  "docs/planners.md",
  "docs/programs.md",
  "packages/core/README.md",
  "packages/charts/README.md",
];

it("README.md lists every verb", () => {
  const text = readFileSync(`${root}README.md`, "utf8");
  const table = text.split("## The command")[1]?.split("## ")[0] ?? "";
  const listed = new Set([...table.matchAll(/`([a-z]+)/g)].map(([, word]) => word));
  expect(verbs.map(({ name }) => name).filter((name) => name !== "help" && !listed.has(name))).toEqual([]);
});

describe.each(PAGES)("%s", (readme) => {
  const blocks = readmeBlocks(readFileSync(root + readme, "utf8"));
  const programs = blocks.filter(({ language }) => language === "ts");
  const calls = blocks.filter(({ language, code }) => language === "sh" && code.startsWith(CALL));

  it("has a program or a call with its output", () => {
    expect([...programs, ...calls].filter(({ output }) => output !== undefined).length).toBeGreaterThan(0);
  });

  if (programs.length > 0) {
    it.each(programs)("prints what it says: program at line $line", async (block) => {
      compare(readme, block, await runProgram(block.code, `${readme.replace(/\W/g, "-")}-${block.line}`));
    });
  }

  if (calls.length > 0) {
    it.each(calls)("prints what it says: call at line $line", (block) => {
      const lines = block.code.trimEnd().split("\n");
      compare(readme, block, lines.map(runCommand).join(""));
    });
  }

  it("shows plans that read where it shows a whole one", () => {
    const whole = blocks.filter(
      ({ language, code }) => language === "yaml" && /^tasks:$/m.test(code) && /^title:/m.test(code),
    );
    for (const { code, line } of whole) expect([line, readPlan(code).problems]).toEqual([line, []]);
    if (readme === "README.md") expect(whole).toHaveLength(1);
  });

  it("quotes the example plans word for word", () => {
    const plans = examplesEnding(".plan.yaml").map((name) => readFileSync(examples + name, "utf8"));
    const excerpts = blocks.filter(({ language }) => language === "yaml").map(({ code }) => code);
    expect(excerpts.filter((code) => !plans.some((plan) => plan.includes(code)))).toEqual([]);
  });
});
