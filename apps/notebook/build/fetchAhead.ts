import type { Plugin } from "vite";

/** Chunks that every visit needs: each would otherwise be asked for only when the one before it has been read. */
const needed = /(^|\/)(main|all|_virtual_opening-answer)-[^/]*\.js$/;

/** Has the page's own scripts fetched all at once, beside the small one that starts the workers. */
export function fetchAheadPlugin(): Plugin {
  return {
    name: "fetch-ahead",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (html, { bundle = {} }) => {
        const files = new Set<string>();
        const add = (name: string): void => {
          const chunk = bundle[name];
          if (files.has(name) || chunk?.type !== "chunk") return;
          files.add(name);
          for (const inner of chunk.imports) add(inner);
        };
        for (const name of Object.keys(bundle)) if (needed.test(name)) add(name);
        return [...files]
          .filter((name) => !html.includes(name))
          .map((name) => ({
            tag: "link",
            attrs: { rel: "modulepreload", crossorigin: true, href: `./${name}` },
            injectTo: "head" as const,
          }));
      },
    },
  };
}
