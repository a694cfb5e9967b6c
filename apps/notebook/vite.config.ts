import { defineConfig } from "vite";
import { contentPolicyPlugin } from "./build/contentPolicy.ts";
import { fetchAheadPlugin } from "./build/fetchAhead.ts";
import { offlinePlugin } from "./build/offline.ts";
import { openingAnswerPlugin } from "./build/openingAnswer.ts";
import { openingPlanPlugin } from "./build/openingPlan.ts";

// base "./": the built folder works from any path. Nothing is inlined as a data: address, which the content
// policy would refuse for fonts. The worker is a module, so that it shares the engine's chunks.
export default defineConfig({
  root: import.meta.dirname,
  base: "./",
  publicDir: "public",
  build: {
    outDir: "dist",
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  worker: { format: "es" },
  plugins: [
    openingAnswerPlugin(),
    openingPlanPlugin(),
    fetchAheadPlugin(),
    contentPolicyPlugin(),
    offlinePlugin(),
  ],
});
