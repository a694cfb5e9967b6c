// Whole commands at once on one plan. No outside source for what is asked: whatever says that it wrote is in the plan, the
// plan reads, and who could not write says so; no lock is left.
import { spawn } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readHistory, readPlan } from "@leeway/core";
import { beforeAll, expect, it } from "vitest";
import { build, builtCommand } from "../../contract/command/leeway.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { PLAN } from "./families.ts";

const root = temporaryFolder();
beforeAll(build);

interface Ended {
  code: number | null;
  err: string;
}
function run(words: readonly string[]): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [builtCommand, ...words], { cwd: root });
    let err = "";
    child.stderr.on("data", (text) => {
      err += String(text);
    });
    child.stdout.resume();
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, err }));
    child.stdin.end();
  });
}

it("eight changes and forecasts at once: what says it was written is there, and nothing else", async () => {
  const plan = join(root, "shed.plan.yaml");
  writeFileSync(plan, PLAN);
  const what = Array.from({ length: 5 }, (_, k) => `Change number ${k}`);
  const changes = what.map((text) =>
    run([
      "change",
      plan,
      "--as",
      "ines",
      "--what",
      text,
      "--why",
      "Asked",
      "--approved-by",
      "ines",
      "--today",
      "2027-01-20",
    ]),
  );
  const histories = Array.from({ length: 3 }, () =>
    run(["history", plan, "--add", "--today", "2027-01-20", "--workers", "1"]),
  );
  const [changed, added] = [await Promise.all(changes), await Promise.all(histories)];
  for (const { code, err } of [...changed, ...added]) {
    // Refused in words, with the way out, or done.
    if (code !== 0)
      expect({ code, err }).toEqual({ code: 2, err: expect.stringMatching(/\S+.*\[[a-z-]+\]/) });
  }
  const text = readFileSync(plan, "utf8");
  const { plan: read, problems } = readPlan(text);
  expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
  const logged = read?.changes.map((one) => one.what) ?? [];
  expect([...logged].sort()).toEqual(what.filter((_, k) => changed[k]?.code === 0));
  expect(logged.length).toBeGreaterThan(0);
  const { entries, breaks, torn } = readHistory(readFileSync(join(root, "shed.history.jsonl"), "utf8"));
  expect([entries.length, breaks, torn]).toEqual([
    added.filter(({ code }) => code === 0).length,
    [],
    undefined,
  ]);
  expect(readdirSync(root).filter((name) => /lock|part/.test(name))).toEqual([]);
});
