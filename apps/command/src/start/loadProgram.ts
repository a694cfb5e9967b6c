import { readFileSync, writeFileSync } from "node:fs";
import Module, { createRequire } from "node:module";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import vm from "node:vm";
import { crc32 } from "node:zlib";

/** A built file that was run, and what the engine made of it. */
interface Loaded {
  file: string;
  source: Buffer;
  script: vm.Script;
  module: { exports: unknown };
}

const loaded = new Map<string, Loaded>();

/**
 * Runs a built file (CommonJS) and those beside it that it asks for, with the code that the engine compiled of them when
 * they were built (`keepCompiled`): reading a megabyte of program anew costs a tenth of a second at every start. What was
 * compiled by another engine, or is missing, is compiled as usual.
 *
 * Errors: whatever the program throws while it is loaded.
 */
export function loadProgram(file: string): unknown {
  const known = loaded.get(file);
  if (known !== undefined) return known.module.exports;
  const source = readFileSync(file);
  const script = new vm.Script(Module.wrap(source.toString("utf8")), {
    filename: file,
    cachedData: compiledOf(file, source),
    importModuleDynamically: vm.constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
  });
  const module = { exports: {} };
  loaded.set(file, { file, source, script, module });
  const others = createRequire(file);
  const require = (id: string): unknown =>
    id.startsWith(".") ? loadProgram(others.resolve(id)) : others(id);
  const run: Run = script.runInThisContext();
  try {
    run.call(module.exports, module.exports, require, module, file, dirname(file));
  } catch (error) {
    // Half of it is worse than none.
    loaded.delete(file);
    throw error;
  }
  return module.exports;
}

type Run = (exports: unknown, require: unknown, module: unknown, file: string, folder: string) => void;

/** Keeps what the engine has compiled of all that was run, beside each file. For the build. */
export function keepCompiled(): void {
  for (const { file, source, script } of loaded.values()) {
    writeFileSync(nameFor(file), Buffer.concat([sumOf(source), script.createCachedData()]));
  }
}

/** The path of a file beside another. */
export function beside(url: string, name: string): string {
  return fileURLToPath(new URL(name, url));
}

/**
 * The engine itself compares no more than its own version and the length of the source. A build that was cut short, or is
 * going on, may leave one file of before beside another of after.
 */
function compiledOf(file: string, source: Buffer): Buffer | undefined {
  try {
    const kept = readFileSync(nameFor(file));
    return sumOf(source).equals(kept.subarray(0, sumLength)) ? kept.subarray(sumLength) : undefined;
  } catch {
    return undefined;
  }
}

const sumLength = 4;

function sumOf(source: Buffer): Buffer {
  const sum = Buffer.alloc(sumLength);
  sum.writeUInt32LE(crc32(source));
  return sum;
}

function nameFor(file: string): string {
  return `${file}.compiled`;
}
