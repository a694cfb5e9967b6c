// `forecast --charts DIR`. Sources: the project's own published command line; SVG 1.1 section 5.4 (title, desc)
// and WAI-ARIA's `img` role, recalled from memory.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { newDocument } from "../charts/newDocument.ts";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

beforeAll(build);

function parseSvg(text: string): Document {
  const window = newDocument().defaultView;
  if (window === null) throw new Error("jsdom's document has a window");
  return new window.DOMParser().parseFromString(text, "image/svg+xml");
}

describe("forecast --charts", () => {
  it("writes whole SVG files, names them on standard error and leaves the answer as it is", async () => {
    const cwd = temporaryFolder();
    const { code, out, err } = await leeway(["forecast", "-", "--json", "--charts", "pictures"], {
      cwd,
      input: smallPlan,
    });
    expect(code).toBe(0);
    expect(out).toBe((await leeway(["forecast", "-", "--json"], { input: smallPlan })).out);
    const names = readdirSync(join(cwd, "pictures"));
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) {
      expect(name).toMatch(/^[a-z-]+\.svg$/);
      expect(err).toContain(`pictures/${name}`);
      const text = readFileSync(join(cwd, "pictures", name), "utf8");
      // As XML, which forgives nothing.
      const document = parseSvg(text);
      expect(document.documentElement.localName).toBe("svg");
      expect(document.documentElement.getAttribute("role")).toBe("img");
      expect(document.querySelector("svg > title")?.textContent ?? "").toMatch(/\w+ \w+/);
      expect(text).not.toMatch(/<script|href="(?!#)|url\((?!#)/);
    }
  });

  it("writes the same bytes again, over what is there", async () => {
    const cwd = temporaryFolder();
    const draw = () => leeway(["forecast", "-", "--charts", "."], { cwd, input: smallPlan });
    const read = () => readdirSync(cwd).map((name) => [name, readFileSync(join(cwd, name), "utf8")]);
    expect((await draw()).code).toBe(0);
    const first = read();
    expect((await draw()).code).toBe(0);
    expect(read()).toEqual(first);
  });

  it("adds the picture of spending where the forecast has months, and only there", async () => {
    const cwd = temporaryFolder();
    for (const plan of [examplePlan, "-"]) {
      const words = ["forecast", plan, "--json", "--charts", plan === "-" ? "small" : "clinic"];
      const { code, out } = await leeway([...words, "--iterations", "500"], { cwd, input: smallPlan });
      expect(code).toBe(0);
      expect("months" in JSON.parse(out)).toBe(plan !== "-");
    }
    expect(readdirSync(join(cwd, "clinic"))).toContain("spending.svg");
    expect(readdirSync(join(cwd, "small"))).not.toContain("spending.svg");
  });

  it("adds the tornado's pictures where the tornado is asked for", async () => {
    const cwd = temporaryFolder();
    const words = ["forecast", "-", "--charts", "a", "--iterations", "500"];
    await leeway(words, { cwd, input: smallPlan });
    await leeway([...words.with(3, "b"), "--tornado"], { cwd, input: smallPlan });
    expect(readdirSync(join(cwd, "b"))).toEqual(expect.arrayContaining(readdirSync(join(cwd, "a"))));
    expect(readdirSync(join(cwd, "b")).length).toBeGreaterThan(readdirSync(join(cwd, "a")).length);
  });
});
