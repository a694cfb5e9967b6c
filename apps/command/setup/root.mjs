import { fileURLToPath } from "node:url";

/** Absolute path of the checkout, without a trailing slash. */
export const root = fileURLToPath(new URL("../../..", import.meta.url)).replace(/[\\/]$/, "");

/** The one package manager version everybody uses; it comes through npx, nothing global is needed. */
export const pnpm = "pnpm@12.21.0";
