// A link of a page leads to a file that is there, and to a heading that is there. Anchors are made as GitHub makes them (its
// rule, from memory): small letters, punctuation dropped, spaces become hyphens, a repeated one is numbered.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import MarkdownIt from "markdown-it";
import { expect, it } from "vitest";
import { root } from "../examples/places.ts";

const SKIPPED = new Set(["node_modules", "dist", ".git", ".leeway"]);

function pagesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : pagesIn(path);
    return entry.name.endsWith(".md") ? [path] : [];
  });
}

interface Page {
  links: string[];
  anchors: Set<string>;
}

const markdown = new MarkdownIt({ html: true });

function read(page: string): Page {
  const tokens = markdown.parse(readFileSync(join(root, page), "utf8"), {});
  const inline = tokens.flatMap(({ children }) => children ?? []);
  const links = inline
    .map((token) => token.attrGet("href") ?? token.attrGet("src"))
    .filter((link) => link !== null)
    .map(String);
  const anchors = new Set<string>();
  tokens.forEach(({ type }, index) => {
    if (type !== "heading_open") return;
    const text = (tokens[index + 1]?.children ?? []).map(({ content }) => content).join("");
    const slug = text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}_\- ]/gu, "")
      .replace(/ /g, "-");
    let anchor = slug;
    for (let count = 1; anchors.has(anchor); count++) anchor = `${slug}-${count}`;
    anchors.add(anchor);
  });
  return { links, anchors };
}

it("every link within the pages of the project leads somewhere", () => {
  const pages = new Map(pagesIn(".").map((page): [string, Page] => [page, read(page)]));
  const all = [...pages].flatMap(([page, { links }]) => links.map((link) => ({ page, link })));
  const ours = all.filter(({ link }) => !/^[a-z]+:/.test(link));
  expect(ours.length).toBeGreaterThan(500);
  const broken = ours.filter(({ page, link }) => {
    const [file = "", anchor] = decodeURI(link).split("#");
    const target = file === "" ? page : join(dirname(page), file);
    if (target.startsWith("..") || !existsSync(join(root, target))) return true;
    return anchor !== undefined && pages.get(target)?.anchors.has(anchor) !== true;
  });
  expect(broken).toEqual([]);
});
