// `--workers` through the built command: not a byte of the answer changes.
import { beforeAll, describe, expect, it } from "vitest";
import { build, leeway } from "../command/leeway.ts";
import { largeText } from "./support/plans.ts";

beforeAll(build);

describe("leeway forecast --workers", () => {
  it.each([
    ["on the caller's thread", ["--iterations", "3001"]],
    ["shared out", ["--iterations", "110001"]],
    ["with a tornado shared out", ["--iterations", "9001", "--tornado"]],
  ])("prints the same JSON %s", async (_, words) => {
    const answers = [];
    for (const workers of ["1", "2", "3", "8"]) {
      const call = ["forecast", "-", "--json", ...words, "--workers", workers];
      answers.push(await leeway(call, { input: largeText }));
    }
    for (const { code, out, err } of answers) {
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(out === answers[0]?.out).toBe(true);
      expect(JSON.parse(out).iterations).toBe(Number(words[1]));
    }
  });
});
