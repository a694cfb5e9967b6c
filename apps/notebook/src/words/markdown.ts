// Markdown as a part of the page, apart from the rest of it: it is loaded where there is a text to show.
import MarkdownIt, { type Token } from "markdown-it";

/** Longer texts are no text a person wrote for a page; they are shown as they stand. */
const longest = 100_000;

/** What cannot be seen and yet does something: controls, and turns of direction that have no end. */
const unseen = /[\p{Cc}\u202a-\u202e\u2066-\u2069](?<![\n\t])/gu;

/** What a link may lead to: nothing that runs, and nothing on the reader's disk. */
const schemes = /^(https?:|mailto:|#)/i;

const reader = new MarkdownIt({ html: false, linkify: false, typographer: false }).disable(["image"]);
reader.validateLink = (address) => schemes.test(address.trim());

/** Elements that a text may become. Everything else in it is text. */
const elements = new Set(
  "p h3 h4 h5 h6 ul ol li blockquote pre code em strong s a br hr table thead tbody tr th td".split(" "),
);

/**
 * A text in Markdown as nodes. No markup is ever parsed: each token of the reader becomes an element of the list above,
 * made by hand, its texts put in as text. HTML in the text stays text, pictures stay their Markdown, and a link leads
 * only to the web, a mail address or a place on the page. Headings begin below those of the sections and skip no level.
 *
 * Source: CommonMark with tables and strikethrough, as markdown-it reads them.
 */
export function markdownNodes(text: string, document: Document): DocumentFragment {
  const root = document.createDocumentFragment();
  const written = text.replace(unseen, "").replace(/[\u2028\u2029]/g, "\n");
  if (written.length > longest) {
    const pre = document.createElement("pre");
    pre.textContent = written;
    root.append(pre);
    return root;
  }
  const tokens = reader.parse(written, {});
  const levels = headingLevels(tokens);
  const open: Node[] = [root];
  const put = (node: Node): void => {
    open.at(-1)?.appendChild(node);
  };
  const walk = (list: readonly Token[]): void => {
    for (const token of list) {
      if (token.type === "inline") {
        walk(token.children ?? []);
        continue;
      }
      if (token.hidden) continue;
      const tag = levels.get(token.tag) ?? token.tag;
      if (token.nesting === 1 && elements.has(tag)) {
        const element = document.createElement(tag);
        dress(element, token);
        put(element);
        open.push(element);
      } else if (token.nesting === -1 && elements.has(tag)) {
        if (open.length > 1) open.pop();
      } else if (token.nesting === 0) {
        const node = leaf(token, tag, document);
        if (node !== undefined) put(node);
      }
    }
  };
  walk(tokens);
  return root;
}

function leaf(token: Token, tag: string, document: Document): Node | undefined {
  switch (token.type) {
    case "softbreak":
      return document.createTextNode("\n");
    case "hardbreak":
    case "hr":
      return document.createElement(tag);
    case "code_inline": {
      const code = document.createElement("code");
      code.textContent = token.content;
      return code;
    }
    case "fence":
    case "code_block": {
      const pre = document.createElement("pre");
      const code = document.createElement("code");
      code.textContent = token.content;
      pre.append(code);
      return pre;
    }
    default:
      return token.content === "" ? undefined : document.createTextNode(token.content);
  }
}

function dress(element: HTMLElement, token: Token): void {
  if (token.tag === "a") {
    const address = String(token.attrGet("href") ?? "");
    if (!schemes.test(address)) return;
    element.setAttribute("href", address);
    if (!address.startsWith("#")) {
      element.setAttribute("target", "_blank");
      element.setAttribute("rel", "noopener noreferrer");
    }
  }
  const start = token.tag === "ol" ? token.attrGet("start") : null;
  if (start !== null && /^\d{1,9}$/.test(String(start))) element.setAttribute("start", String(start));
}

/** The headings a text uses, put below those of the sections: the first kind becomes h3, the next one h4. */
function headingLevels(tokens: readonly Token[]): ReadonlyMap<string, string> {
  const used = [
    ...new Set(tokens.filter(({ type }) => type === "heading_open").map(({ tag }) => tag)),
  ].sort();
  return new Map(used.map((tag, k) => [tag, `h${Math.min(6, 3 + k)}`]));
}

/** The same as markup, for a page that is written as text: it holds the elements above and escaped text, nothing else. */
export function markdownHtml(text: string, document: Document): string {
  const root = document.createElement("div");
  root.append(markdownNodes(text, document));
  return root.innerHTML;
}
