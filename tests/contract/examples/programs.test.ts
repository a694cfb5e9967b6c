// Documentation that runs: each program is started and what it prints is compared with the comment at its end.
// The comments are our own earlier output, so this shows that the documentation is true, not that the numbers are;
// the numbers are checked against outside sources in tests/reference.
// After a deliberate change of results: LEEWAY_WRITE_OUTPUT=1 npx vitest run tests/contract/examples, and read the diff.
import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { examples, examplesEnding, writing } from "./places.ts";
import { printedBy } from "./printedBy.ts";

const MARK = "// Prints";
const programs = examplesEnding(".ts");

describe("examples/*.ts", () => {
  it("are the programs the README promises", () => {
    expect(programs).toEqual([
      "bad-plan.ts",
      "chance-of-date.ts",
      "confident-date.ts",
      "custom-plan.ts",
      "what-if.ts",
    ]);
  });

  it.each(programs)("%s prints what its last lines say, and is short", async (name) => {
    const [code = "", comment = ""] = readFileSync(examples + name, "utf8").split(`${MARK}\n`);
    const printed = await printedBy(examples + name);
    if (writing) {
      const lines = printed.map((line) => `// ${line}`.trimEnd());
      writeFileSync(examples + name, `${code}${MARK}\n${lines.join("\n")}\n`);
      return;
    }
    const promised = comment.trimEnd().split("\n");
    expect(printed.map((line) => `// ${line}`.trimEnd())).toEqual(promised);
    expect(code.trimEnd().split("\n").length).toBeLessThanOrEqual(15);
  });
});
