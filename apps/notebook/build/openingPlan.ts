import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";
import { parse } from "yaml";

const name = "virtual:opening-plan";
/** The plan that the page opens on. */
export const openingPlanFile = fileURLToPath(
  new URL("../../../examples/quillmarsh-clinic.plan.yaml", import.meta.url),
);

/**
 * The plan that the page opens on, as text and, parsed while the page is built, as data: its first answer then need
 * not wait for a parser that is still cold. The text is read all the same and has the last word.
 */
export function openingPlanPlugin(): Plugin {
  return {
    name: "opening-plan",
    resolveId: (id) => (id === name ? `\0${name}` : undefined),
    load(id) {
      if (id !== `\0${name}`) return undefined;
      this.addWatchFile(openingPlanFile);
      const text = readFileSync(openingPlanFile, "utf8");
      const data = JSON.stringify(JSON.stringify(parse(text)));
      return `export const text = ${JSON.stringify(text)};\nexport const stated = JSON.parse(${data});\n`;
    },
  };
}
