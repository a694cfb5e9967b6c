import type { Plugin } from "vite";

/**
 * What the built page may do: load its own scripts, workers, styles, type and pictures, and nothing else. It may send
 * nothing anywhere, not even home: only `leeway open`, which is where a plan is saved to, opens its own address again.
 *
 * - Scripts: files of the page. No inline script, no `eval`; WebAssembly is the kernel that ships inside the bundle.
 * - Pictures: the mark, and a `blob:` while a chart is painted as PNG.
 * - Trusted types: no text becomes markup or the address of a script, but through Lit's own templates and the one rule
 *   in `src/trusted.ts`.
 *
 * Source: Content Security Policy Level 3 and Trusted Types (W3C), recalled.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob:",
  "worker-src 'self'",
  "connect-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types default lit-html",
].join("; ");

/** Puts the policy at the top of the built page. Not in development, where Vite itself injects inline styles. */
export function contentPolicyPlugin(): Plugin {
  return {
    name: "content-policy",
    apply: "build",
    transformIndexHtml: {
      // Last, so that nothing stands ahead of it.
      order: "post",
      handler: () => [
        {
          tag: "meta",
          attrs: { "http-equiv": "Content-Security-Policy", content: contentPolicy },
          injectTo: "head-prepend",
        },
      ],
    },
  };
}
