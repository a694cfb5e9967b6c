import { execFile } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { build, type Plugin } from "vite";
import type { Opening } from "./drawOpening.ts";
import { openingPlanFile } from "./openingPlan.ts";

const name = "virtual:opening-answer";
const run = promisify(execFile);
const here = (file: string): string => fileURLToPath(new URL(file, import.meta.url));

/**
 * The answer to the plan that the page opens on, computed while the page is built: same plan, same seed, same answer.
 * A first visit reads it before the page's own scripts have arrived. Its markup waits in a template, since who comes back
 * finds a plan of their own here. In development there is none, and the page computes it.
 */
export function openingAnswerPlugin(): Plugin {
  let building = false;
  let opening: Opening | undefined;
  return {
    name: "opening-answer",
    configResolved: ({ command }) => {
      building = command === "build";
    },
    async buildStart() {
      if (building) opening = await draw();
    },
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    load: (id) =>
      id === `\0${name}`
        ? `export default ${opening === undefined ? undefined : `JSON.parse(${JSON.stringify(JSON.stringify(opening.forecast))})`};`
        : undefined,
    transformIndexHtml: (html) =>
      opening === undefined
        ? html
        : html.replace(
            "</leeway-page>",
            `$&<template id="opening">${opening.html.replaceAll("$", "$$$$")}</template>`,
          ),
  };
}

async function draw(): Promise<Opening> {
  const folder = mkdtempSync(join(tmpdir(), "leeway-opening-"));
  try {
    await build({
      configFile: false,
      logLevel: "error",
      root: here("."),
      publicDir: false,
      build: {
        ssr: here("drawOpening.ts"),
        outDir: folder,
        minify: false,
        rollupOptions: { output: { entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" } },
      },
      ssr: { noExternal: true, target: "node" },
    });
    const drawing = join(folder, "drawOpening.mjs");
    const { stdout } = await run(process.execPath, [here("drawApart.mjs"), drawing, openingPlanFile], {
      maxBuffer: 1e8,
    });
    return JSON.parse(stdout);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
