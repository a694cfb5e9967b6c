// Many edits at once against the same edits one by one: the text must be the same to the letter.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readPlan, setInPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { setManyInPlan } from "../../../packages/core/src/plan/edit/setManyInPlan.ts";

const example = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../../../examples/${name}.plan.yaml`, import.meta.url)), "utf8");
const HEAD = "format: 1\ntitle: T\nstart: 2027-01-04\n";

const texts: [string, string][] = [
  ["an example", example("minimal")],
  [
    "tasks in brackets",
    `${HEAD}tasks: [{ id: a, name: A, duration: 3 }, { id: b, name: B, duration: 2 }] # end\n`,
  ],
  ["no line break at the end", `${HEAD}tasks:\n  - id: a\n    name: A\n    duration: 3 # days`],
  ["a single task", `${HEAD}tasks:\n  id: a\n  name: A\n  duration: 3\n`],
  [
    "line ends of another system",
    `${HEAD}tasks:\n  - id: a\n    name: A\n    duration: 3\n`.replaceAll("\n", "\r\n"),
  ],
  [
    "JSON",
    JSON.stringify(
      { format: 1, title: "T", start: "2027-01-04", tasks: [{ id: "a", name: "A", duration: 3 }] },
      null,
      2,
    ),
  ],
];

describe("setManyInPlan(text, changes)", () => {
  it.each(texts)("writes what one by one would write: %s", (_, text) => {
    const ids =
      readPlan(text)
        .plan?.tasks.filter(({ milestone }) => milestone === false)
        .map(({ id }) => id) ?? [];
    expect(ids.length).toBeGreaterThan(0);
    const changes = ids.flatMap((id) => [
      { path: ["tasks", id, "started"], value: "2027-01-05" },
      { path: ["tasks", id, "duration"], value: [1, 2, 5] },
      { path: ["tasks", id, "finished"], value: "2027-01-06" },
    ]);
    const single = changes.reduce((now, { path, value }) => setInPlan(now, path, value).text, text);
    expect(setManyInPlan(text, changes)).toEqual({ text: single, problems: [] });
  });
  it("takes keys away among others that come", () => {
    const text = `${HEAD}statusDate: 2027-01-08\ntasks:\n  - id: a\n    name: A\n    duration: 3\n    started: 2027-01-04 # early\n    remaining: 1\n`;
    const { text: made } = setManyInPlan(text, [
      { path: ["tasks", "a", "remaining"], value: undefined },
      { path: ["tasks", "a", "finished"], value: "2027-01-08" },
    ]);
    expect(made).toBe(text.replace("remaining: 1", "finished: 2027-01-08"));
  });
  it("tells of a place that is not there, and makes the others", () => {
    const text = `${HEAD}tasks:\n  - { id: a, name: A, duration: 3 }\n  - { id: b, name: B, duration: 3 }\n`;
    const { text: made, problems } = setManyInPlan(text, [
      { path: ["tasks", "nobody", "started"], value: "2027-01-05" },
      { path: ["tasks", "b", "started"], value: "2027-01-06" },
    ]);
    expect(problems.map(({ code }) => code)).toEqual(["no-such-place"]);
    expect(made).toBe(text.replace("name: B, duration: 3", "name: B, duration: 3, started: 2027-01-06"));
  });
});
