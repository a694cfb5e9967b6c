/**
 * `node packages/charts/gallery/build.mjs [plan.yaml ...]`: every chart of the example plans as one page without scripts,
 * packages/charts/dist/gallery.html. Plans are those in examples/ unless some are named.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { JSDOM } from "jsdom";
import { build } from "vite";

const root = fileURLToPath(new URL("../../../", import.meta.url));
const named = process.argv.slice(2);
const files =
  named.length > 0
    ? named
    : ["quillmarsh-clinic", "brackenford-food-bank", "ostrel-ferry-ticketing"].map((name) =>
        join(root, "examples", `${name}.plan.yaml`),
      );

const output = await build({
  configFile: false,
  root,
  logLevel: "error",
  build: { ssr: join(root, "packages/charts/gallery/entry.ts"), write: false, target: "node20" },
  ssr: { noExternal: true },
});
const folder = mkdtempSync(join(tmpdir(), "leeway-gallery-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
const bundle = join(folder, "gallery.mjs");
writeFileSync(bundle, output.output[0].code);
const { figuresOf, galleryPage, readPlan } = await import(pathToFileURL(bundle).href);

const plans = files.map((file) => {
  const { plan, problems } = readPlan(readFileSync(file, "utf8"));
  if (plan === undefined)
    throw new Error(`${file}: ${problems.length} problems; \`leeway check\` lists them.`);
  return { title: plan.title, file: basename(file), shown: figuresOf(plan) };
});
const { document } = new JSDOM("").window;
const page = galleryPage(plans, document);
const target = join(root, "packages/charts/dist/gallery.html");
mkdirSync(join(root, "packages/charts/dist"), { recursive: true });
writeFileSync(target, page);
console.log(`Wrote ${target}: ${plans.length} plans, ${Math.round(page.length / 1000)} kB.`);
