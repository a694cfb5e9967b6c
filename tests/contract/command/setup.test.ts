// The loopback server and the count of checks. Sources: RFC 9110 (methods, status codes, media types), RFC 3986
// section 5.2.4 (dot segments), Content Security Policy Level 3; all recalled from memory. Who may be answered
// and what is served: the project's own published command line.
import { symlinkSync } from "node:fs";
import { type Server, request as send } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

interface Served {
  address: string;
  server: Server;
}
const from = (name: string) => new URL(`../../../apps/command/setup/${name}.mjs`, import.meta.url).href;
const { serve }: { serve(folder: string, from?: number): Promise<Served> } = await import(from("serve"));
const { tallyReport }: { tallyReport(path: string, code: number): { passed: number; failed: number } } =
  await import(from("tally"));

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}
/** Sends the path as it is: no client tidies up its dots. */
function get(port: number, path: string, method = "GET", host = "127.0.0.1"): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = send(
      { host: "127.0.0.1", port, path, method, headers: { host: `${host}:${port}` } },
      (got) => {
        let body = "";
        got.setEncoding("utf8").on("data", (text: string) => {
          body += text;
        });
        got.on("end", () => resolve({ status: got.statusCode ?? 0, headers: got.headers, body }));
      },
    );
    asked.on("error", reject).end();
  });
}

describe("the loopback server", () => {
  let served: Served;
  let port = 0;
  beforeAll(async () => {
    const outside = temporaryFolder({ "secret.txt": "secret" });
    const folder = temporaryFolder({
      "index.html": "<!doctype html><title>page</title>",
      "app.js": "export {};",
      "style.css": "",
      "face.woff2": "x",
      "picture.svg": "<svg xmlns='http://www.w3.org/2000/svg'/>",
    });
    symlinkSync(join(outside, "secret.txt"), join(folder, "link.txt"));
    symlinkSync(outside, join(folder, "out"));
    served = await serve(folder, 42180);
    port = (served.server.address() as AddressInfo).port; // a TCP server's address is one
  });
  afterAll(() => served.server.close());

  it("listens on loopback only and says where", () => {
    expect(served.server.address()).toMatchObject({ address: "127.0.0.1" });
    expect(served.address).toBe(`http://127.0.0.1:${port}/`);
  });

  it("takes the next port when one is taken", async () => {
    const second = await serve(temporaryFolder({ "index.html": "" }), port);
    expect((second.server.address() as AddressInfo).port).toBeGreaterThan(port);
    second.server.close();
  });

  it.each([
    ["/", "text/html"],
    ["/app.js", "text/javascript"],
    ["/style.css", "text/css"],
    ["/face.woff2", "font/woff2"],
    ["/picture.svg", "image/svg+xml"],
    ["/app.js?v=1", "text/javascript"],
  ])("serves %s as %s under a policy that reaches nobody else", async (path, type) => {
    const { status, headers } = await get(port, path);
    expect(status).toBe(200);
    expect(String(headers["content-type"])).toMatch(new RegExp(`^${type.replace("+", "\\+")}(;|$)`));
    expect(headers["x-content-type-options"]).toBe("nosniff");
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(path === "/" ? /connect-src 'none'/ : /^(?!.*connect-src)/);
    expect(policy).not.toMatch(/https?:|\*|'unsafe-eval'/);
    expect(policy).not.toMatch(/script-src[^;]*'unsafe-(inline|eval)'/);
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/..%5csecret.txt",
    "/link.txt",
    "/out/secret.txt",
    "/out/",
    "//etc/passwd",
    "/%00",
    "/%zz",
    "/missing",
  ])("has nothing at %s", async (path) => {
    const { status, body } = await get(port, path);
    expect(status).toBe(404);
    expect(body).not.toContain("secret");
  });

  it("answers to its own name and to reading only", async () => {
    expect((await get(port, "/", "GET", "plans.example")).status).toBe(403);
    expect((await get(port, "/", "POST")).status).toBe(405);
    const head = await get(port, "/", "HEAD");
    expect(head).toMatchObject({ status: 200, body: "" });
    expect(Number(head.headers["content-length"])).toBeGreaterThan(0);
  });
});

describe("tallyReport(path, code)", () => {
  const report = (files: object[], passed: number, failed: number) =>
    join(
      temporaryFolder({
        report: JSON.stringify({ numPassedTests: passed, numFailedTests: failed, testResults: files }),
      }),
      "report",
    );
  const file = (status: string, ...checks: string[]) => ({
    status,
    assertionResults: checks.map((check) => ({ status: check })),
  });

  it("counts checks", () => {
    const path = report([file("passed", "passed", "passed"), file("failed", "passed", "failed")], 3, 1);
    expect(tallyReport(path, 1)).toEqual({ passed: 3, failed: 1 });
  });
  it("counts a file that did not load as a failed check", () => {
    expect(tallyReport(report([file("passed", "passed"), file("failed")], 1, 0), 1)).toEqual({
      passed: 1,
      failed: 1,
    });
  });
  it("counts a failed run without a failed check, and a run without a report, as failed", () => {
    expect(tallyReport(report([file("passed", "passed")], 1, 0), 1)).toEqual({ passed: 1, failed: 1 });
    expect(tallyReport(join(temporaryFolder(), "none"), 0)).toEqual({ passed: 0, failed: 1 });
  });
});
