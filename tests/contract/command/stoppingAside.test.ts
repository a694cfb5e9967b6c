// A long explanation hears a signal as a long forecast does, and a thread prints what no thread would.
import { spawn } from "node:child_process";
import { beforeAll, describe, expect, it } from "vitest";
import { answer } from "../../../apps/command/src/compute/answers.ts";
import { readPlan } from "../../../packages/core/src/index.ts";
import { build, builtCommand, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build, 120_000);

describe.each(["confidence", "people"] as const)("leeway %s on many futures", (verb) => {
  it("ends with code 3 and nothing printed when it is stopped", async () => {
    const iterations = verb === "confidence" ? "9000000" : "400000";
    const child = spawn(process.execPath, [
      builtCommand,
      verb,
      examplePlan,
      "--json",
      "--iterations",
      iterations,
    ]);
    let out = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    const ended = new Promise<number | null>((resolve) => child.on("close", resolve));
    await new Promise((resolve) => setTimeout(resolve, 1500));
    const asked = performance.now();
    child.kill("SIGINT");
    expect(await ended).toBe(3);
    expect(performance.now() - asked).toBeLessThan(5000);
    expect(out).toBe("");
  });

  it("prints the same figures on a thread as without one", async () => {
    const { plan } = readPlan(smallPlan);
    if (plan === undefined) throw new Error("not a plan");
    const iterations = 1_100_000; // three tasks: above what is done on the spot
    const here = answer({ kind: verb, plan, options: { iterations } }, () => {});
    const { out } = await leeway([verb, "-", "--json", "--iterations", String(iterations)], {
      input: smallPlan,
    });
    expect(JSON.parse(out)).toEqual(
      JSON.parse(JSON.stringify(verb in here ? here[verb as keyof typeof here] : {})),
    );
  });
});
