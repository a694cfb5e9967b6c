/** One fenced block of a Markdown file, and the `text` block that follows it, if one does. */
export interface Block {
  language: string;
  code: string;
  /** What the README says is printed; absent where no `text` block follows. */
  output?: string;
  /** Lines of the file, for the title of a test. */
  line: number;
}

const FENCE = /^```(\w*)\n([\s\S]*?)^```$/gm;

/** The blocks of a README in order; `text` blocks belong to the block before them. */
export function readmeBlocks(markdown: string): Block[] {
  const blocks: Block[] = [];
  for (const { 1: language = "", 2: code = "", index } of markdown.matchAll(FENCE)) {
    const last = blocks.at(-1);
    if (language === "text" && last !== undefined) last.output = code;
    else blocks.push({ language, code, line: markdown.slice(0, index).split("\n").length });
  }
  return blocks;
}
