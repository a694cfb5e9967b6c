/**
 * Compiles the vector kernel and writes packages/core/src/kernel/bytes.ts.
 *
 *   node packages/core/kernel/build.mjs            writes the file
 *   node packages/core/kernel/build.mjs --print    prints the module in base64 and writes nothing
 */
import { writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import asc from "assemblyscript/asc";

const here = dirname(fileURLToPath(import.meta.url));

/**
 * The module as bytes. No collector, no start function, one import: the memory, whose first page is the kernel's.
 *
 * @returns {Promise<Uint8Array>}
 */
export async function compileKernel() {
  let bytes;
  const { error, stderr } = await asc.main(
    [
      "assembly/index.ts",
      "--baseDir",
      here,
      "-O3",
      "--converge",
      "--noAssert",
      "--enable=simd",
      "--runtime=stub",
      "--importMemory",
      "--noExportMemory",
      "--zeroFilledMemory",
      "--memoryBase=65536",
      // AS112: functions shared between the source files take vectors; none of them is exported.
      "--disableWarning",
      "--outFile=kernel.wasm",
    ],
    {
      writeFile: (name, contents) => {
        if (name === "kernel.wasm") bytes = contents;
      },
    },
  );
  if (error) throw new Error(`The kernel does not compile:\n${stderr.toString()}`);
  return bytes;
}

/** The text of bytes.ts. */
export function sourceOf(bytes) {
  const base64 = Buffer.from(bytes).toString("base64");
  return [
    "/**",
    ` * The vector kernel, ${bytes.length.toLocaleString("en-US")} bytes of WebAssembly in base64: written by packages/core/kernel/build.mjs from the`,
    " * sources beside it. Do not edit.",
    " */",
    "export const kernelBytes =",
    `  "${base64}";`,
    "",
  ].join("\n");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const bytes = await compileKernel();
  if (process.argv.includes("--print")) process.stdout.write(`${Buffer.from(bytes).toString("base64")}\n`);
  else {
    writeFileSync(join(here, "../src/kernel/bytes.ts"), sourceOf(bytes));
    process.stdout.write(`bytes.ts: ${bytes.length} bytes of WebAssembly\n`);
  }
}
