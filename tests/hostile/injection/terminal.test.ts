import { join } from "node:path";
import { afterEach, expect, it, vi } from "vitest";
import { main } from "../../../apps/command/src/main.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { hostilePlan } from "./hostilePlan.ts";

// What a terminal obeys (ECMA-48: C0, DEL and C1 controls; Unicode Standard Annex 9: marks that turn what follows) never
// comes from a plan, in no verb, beside no problem. Recalled from memory. Isolates (U+2068, U+2069) are ours: they end.

/** Two turns: each text comes to a dozen fields, of other kinds in each. */
const files = temporaryFolder({
  "a.plan.json": hostilePlan(4).text,
  "b.plan.json": hostilePlan(20).text.replace("30000", "31000"),
  "wrong.plan.json": hostilePlan(11).text.replace('"chanceWrong": 0.1', '"chanceWrong": 7'),
  "unknown.plan.json": hostilePlan(24).text.replaceAll(
    '"statement":',
    '"st\\u001b[31m\\u009b\\u202eatement":',
  ),
});
const [a, b, wrong, unknown] = ["a", "b", "wrong", "unknown"].map((name) =>
  join(files, `${name}.plan.json`),
) as [string, string, string, string];

const LOUD = /.{0,60}(?:[^\P{Cc}\n]|[\u202a-\u202e\u2066\u2067\u200e\u200f\u061c\p{Zl}\p{Zp}\p{Cs}]).{0,40}/u;

const calls: string[][] = [
  ["forecast", a, "--tornado"],
  ["explain", a],
  ["confidence", a, "--joint"],
  ["responses", a, "--sum", "5000"],
  ["reach", a, "--sum", "60000"],
  ["money", a],
  ["people", a],
  ["people", a, "--person", "otto"],
  ["paths", a],
  ["why", a, "build"],
  ["future", a, "--draws"],
  ["compare", a, b],
  ["brief", a],
  ["brief", b, "--for", "chair"],
  ["sign", b, "--as", "chair", "--decision", "approve", "--dry-run"],
  ["approvals", a],
  ["object", a],
  ["change", a],
  ["record", a],
  ["history", a],
  ["triggers", a],
  ["check", a],
  ["check", b],
  ["pool", a],
  ["pool", a, "build"],
  ["detail", a, b],
  ["scorecard", a],
  ["uplift", a, "--to", "0.2"],
  ["inform", a],
  ["roles", a],
  ["forecast", wrong],
  ["forecast", unknown],
  ["check", unknown],
  ["why", a, "\u001b[31m"],
  ["forecast", `${a}\u001b]0;x\u0007`],
  // What --json prints is for programs, and still lands in a terminal.
  ["forecast", a, "--json"],
  ["check", b, "--json"],
  ["approvals", b, "--json"],
  ["explain", b, "--json"],
];

afterEach(() => {
  vi.restoreAllMocks();
});

it.each(calls.map((words) => [words.map((word) => word.replace(/^.*\//, "")).join(" "), words] as const))(
  "leeway %j",
  async (_, words) => {
    let out = "";
    for (const stream of [process.stdout, process.stderr])
      vi.spyOn(stream, "write").mockImplementation((text) => {
        out += typeof text === "string" ? text : Buffer.from(text).toString("utf8");
        return true;
      });
    const code = await main(words);
    vi.restoreAllMocks();
    expect(out.match(LOUD)).toBeNull();
    expect(out).not.toContain("went wrong inside");
    expect(out.trim().length).toBeGreaterThan(20);
    expect(code).toBeLessThan(4);
    if (words.includes("--json")) expect(() => JSON.parse(out.slice(out.indexOf("{")))).not.toThrow();
  },
);
