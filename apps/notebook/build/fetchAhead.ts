import type { Plugin } from "vite";

/** Chunks that every visit needs: each would otherwise be asked for only when the one before it has been read. */
const scripts = /(^|\/)(main|all)-[^/]*\.js$/;
/** Who has a plan here has no use for the answer to the example: it is fetched with what a first visit alone shows. */
const firstVisit = /(^|\/)_virtual_opening-answer-[^/]*\.js$/;
const shownFirst = '<template id="opening">';
/** The two types that every page is set in; they would be asked for when the first text is laid out. */
const type = /(^|\/)source-(sans-3-latin-wght|serif-4-latin-opsz)-normal-[^/]*\.woff2$/;

/**
 * Has the page's own scripts and type fetched all at once, beside the small script that starts the workers. Only
 * fetched: `modulepreload` would also compile the scripts, before that small one gets its turn.
 */
export function fetchAheadPlugin(): Plugin {
  return {
    name: "fetch-ahead",
    apply: "build",
    transformIndexHtml: {
      order: "post",
      handler: (html, { bundle = {} }) => {
        const files = new Map<string, "script" | "font">();
        const add = (name: string): void => {
          const chunk = bundle[name];
          if (files.has(name) || chunk?.type !== "chunk") return;
          files.set(name, "script");
          for (const inner of chunk.imports) add(inner);
        };
        for (const name of Object.keys(bundle)) {
          if (scripts.test(name)) add(name);
          else if (type.test(name)) files.set(name, "font");
        }
        const tags = [...files]
          .filter(([name]) => !html.includes(name))
          .map(([name, as]) => ({
            tag: "link",
            attrs: { rel: "preload", as, crossorigin: true, href: `./${name}` },
            injectTo: "head" as const,
          }));
        const answer = Object.keys(bundle).find((name) => firstVisit.test(name));
        if (answer === undefined) return tags;
        const link = `<link rel="preload" as="script" crossorigin href="./${answer}">`;
        return { html: html.replace(shownFirst, `$&${link}`), tags };
      },
    },
  };
}
