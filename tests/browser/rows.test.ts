import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { applyEdits } from "../../apps/notebook/src/plan/applyEdits.ts";
import type { Edit } from "../../apps/notebook/src/plan/edit.ts";
import { withEdits } from "../../apps/notebook/src/plan/withEdits.ts";

const examples = new URL("../../examples/", import.meta.url);
const texts = readdirSync(examples)
  .filter((name) => name.endsWith(".plan.yaml"))
  .map((name): [string, string] => [name, readFileSync(new URL(name, examples), "utf8")]);

const remarks = (text: string): string[] => (text.match(/#.*/g) ?? []).sort();

// The published format: a file written back keeps its comments and order. What is meant is told by the YAML library.
describe("rows added, taken away and moved in the text of a plan", () => {
  it.each(texts)("say in %s what they make of its data, and keep every remark", (_name, text) => {
    const { tasks } = parse(text);
    const item = { id: "new-one", name: "New: one, with a comma", duration: [1, 2, 4] };
    const more = { id: "new-two", name: "New two", duration: 3, after: ["new-one"] };
    const last = tasks.length - 1;
    const cases: Edit[][] = [
      ...[0, 1, Math.floor(last / 2), last, last + 1].map((add) => [{ path: "tasks", value: item, add }]),
      [
        { path: "tasks", value: item, add: 2 },
        { path: "tasks", value: more, add: 3 },
      ],
      [
        { path: "tasks[1].name", value: "Another name" },
        { path: "tasks", value: item, add: "last" },
        { path: "tasks", value: more, add: "last" },
      ],
      ...[0, 1, last - 1].map((swap) => [{ path: "tasks", value: undefined, swap }]),
    ];
    for (const edits of cases) {
      const made = applyEdits(text, edits);
      expect(made.problems).toEqual([]);
      expect(parse(made.text)).toEqual(withEdits(parse(text), edits));
      expect(remarks(made.text)).toEqual(remarks(text));
      expect(parse(made.text).tasks).not.toEqual(tasks);
    }
    const gone = [{ path: `tasks[${last}]`, value: undefined }];
    expect(parse(applyEdits(text, gone).text).tasks).toEqual(tasks.slice(0, -1));
    expect(withEdits(parse(text), gone)).toEqual(parse(applyEdits(text, gone).text));
  });
});
