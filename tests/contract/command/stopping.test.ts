// Being stopped and being left: exit code 3 with nothing half-written, and quiet when the reader goes away.
import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, builtCommand, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

/** Milliseconds until the signal comes: on a busy machine a command needs longer before it can hear one. */
const waits = [700, 2500, 8000];

/** How a command ends that is sent a signal: with a code, or null where the signal ended it before it could hear any. */
async function signalled(words: readonly string[], cwd: string, signal: "SIGINT" | "SIGTERM", input = "") {
  for (const wait of waits) {
    const child = spawn(process.execPath, [builtCommand, ...words], { cwd });
    let out = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stdin.on("error", () => {});
    if (input !== "") child.stdin.write(input);
    const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
    await new Promise((resolve) => setTimeout(resolve, wait));
    const asked = performance.now();
    child.kill(signal);
    const code = await ended;
    if (code !== null || wait === waits.at(-1)) return { code, out, took: performance.now() - asked };
  }
  throw new Error("There is at least one wait.");
}

describe("a signal", () => {
  it.each(["SIGINT", "SIGTERM"] as const)("%s during a long forecast ends it with code 3", async (signal) => {
    const cwd = temporaryFolder();
    const words = ["forecast", examplePlan, "--json", "--iterations", "1000000", "--charts", "charts"];
    const { code, out, took } = await signalled(words, cwd, signal);
    expect({ code, out }).toEqual({ code: 3, out: "" });
    expect(took).toBeLessThan(5000);
    expect(readdirSync(cwd)).toEqual([]);
  });

  it("is heard while waiting for standard input", async () => {
    const { code } = await signalled(["forecast", "-"], temporaryFolder(), "SIGINT", "format: 1\n");
    expect(code).toBe(3);
  });
});

describe("a reader that goes away", () => {
  it("ends the command quietly", async () => {
    const script = '"$0" "$1" forecast "$2" --json | head -c 1';
    const child = spawn("bash", [
      "-o",
      "pipefail",
      "-c",
      script,
      process.execPath,
      builtCommand,
      examplePlan,
    ]);
    let out = "";
    let err = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      err += text;
    });
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect({ code, out, err }).toEqual({ code: 0, out: "{", err: "" });
  });
});

describe("files", () => {
  it("leave nothing beside them", async () => {
    const cwd = temporaryFolder();
    const { code } = await leeway(["new", "--yes", "--out", "deep/er/plan.yaml"], { cwd });
    expect(code).toBe(0);
    expect(readdirSync(cwd, { recursive: true }).sort()).toEqual(["deep", "deep/er", "deep/er/plan.yaml"]);
  });

  it("that cannot be written are a problem in words", async () => {
    const cwd = temporaryFolder({ taken: "a file" });
    const { code, out, err } = await leeway(["new", "--yes", "--out", "taken/plan.yaml"], { cwd });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("taken/plan.yaml");
    expect(readdirSync(cwd)).toEqual(["taken"]);
    const charts = await leeway(["forecast", "-", "--charts", "taken"], { cwd, input: smallPlan });
    expect({ code: charts.code, out: charts.out }).toEqual({ code: 2, out: "" });
    expect(charts.err).toContain("taken");
  });
});
