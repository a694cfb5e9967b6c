import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { boundFile } from "../../../apps/command/src/open/boundFile.ts";
import { type Served, serveNotebook } from "../../../apps/command/src/open/serveNotebook.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { smallPlan } from "../command/leeway.ts";

// What a server on loopback has to withstand: other pages of the same browser (Origin; DNS rebinding by Host, as
// CWE-350 and the OWASP notes on rebinding describe it, recalled), paths that lead out (CWE-22), bodies without end or
// cut off (CWE-770). Spoken over raw sockets, since no client library would send most of this.

const folder = temporaryFolder({ "shed.plan.yaml": smallPlan, "secret.txt": "secret" });
const page = join(folder, "page");
const plan = join(folder, "shed.plan.yaml");
let served: Served;
let port = 0;
let token = "";

beforeAll(async () => {
  mkdirSync(page);
  writeFileSync(join(page, "index.html"), "<!doctype html><title>Leeway</title>");
  writeFileSync(join(page, "a.js"), "1");
  symlinkSync(join(folder, "secret.txt"), join(page, "out.js"));
  served = await serveNotebook(page, boundFile(plan), `"<shed>" & co.yaml`);
  const address = new URL(served.address);
  port = Number(address.port);
  token = address.pathname.split("/")[1] ?? "";
});
afterAll(() => {
  served.server.closeAllConnections();
  served.server.close();
});

/** Sends these very bytes and gives all that comes back. */
function raw(bytes: string, end = false): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, "127.0.0.1", () => {
      socket.write(bytes);
      if (end) socket.end();
    });
    let back = "";
    socket.setEncoding("utf8");
    socket.on("data", (text) => {
      back += text;
    });
    socket.on("close", () => resolve(back));
    socket.on("error", reject);
    setTimeout(() => socket.destroy(), 3000);
  });
}

function ask(
  path: string,
  lines: string[] = [],
  { method = "GET", host = `127.0.0.1:${port}`, body = "" } = {},
) {
  const head = [`${method} ${path} HTTP/1.1`, ...(host === "" ? [] : [`Host: ${host}`]), ...lines];
  return raw(`${[...head, "Connection: close", "", ""].join("\r\n")}${body}`);
}
const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1]);
const bodyOf = (answer: string): string => answer.slice(answer.indexOf("\r\n\r\n") + 4);

async function tag(): Promise<string> {
  return /etag: ("[0-9a-f]+")/i.exec(await ask(`/${token}/plan`))?.[1] ?? "";
}
const put = (body: string, lines: string[]) =>
  ask(
    `/${token}/plan`,
    [`Content-Length: ${Buffer.byteLength(body)}`, "Content-Type: text/plain", ...lines],
    {
      method: "PUT",
      body,
    },
  );

describe("leeway open, the server", () => {
  it("serves the page with its name made harmless, and the plan as it is", async () => {
    const html = await ask(`/${token}/`);
    expect(statusOf(html)).toBe(200);
    expect(html).toContain("&#34;&#60;shed&#62;&#34; &#38; co.yaml");
    expect(html.toLowerCase()).toContain("frame-ancestors 'none'");
    const answer = await ask(`/${token}/plan`);
    expect(statusOf(answer)).toBe(200);
    expect(answer).toContain(smallPlan.slice(0, 40));
    expect(statusOf(await ask(`/${token}/a.js`))).toBe(200);
  });

  it("listens on loopback alone", () => {
    expect(served.server.address()).toMatchObject({ address: "127.0.0.1" });
  });

  it.each([
    ["a name that was made to point here", () => ask(`/${token}/plan`, [], { host: "evil.example" }), 421],
    ["the same with our port", () => ask(`/${token}/plan`, [], { host: `evil.example:${port}` }), 421],
    ["an address of the network", () => ask(`/${token}/plan`, [], { host: `192.168.0.7:${port}` }), 421],
    ["another port", () => ask(`/${token}/plan`, [], { host: "127.0.0.1:1" }), 421],
    ["no host at all", () => raw(`GET /${token}/plan HTTP/1.0\r\n\r\n`), 421],
    ["a foreign origin", () => ask(`/${token}/plan`, ["Origin: https://evil.example"]), 403],
    ["an origin of nowhere", () => ask(`/${token}/plan`, ["Origin: null"]), 403],
    ["another site's picture or script", () => ask(`/${token}/plan`, ["Sec-Fetch-Site: cross-site"]), 403],
    ["no token", () => ask("/plan"), 404],
    ["another token", () => ask(`/${"0".repeat(32)}/plan`), 404],
    ["a token cut short", () => ask(`/${token.slice(0, 31)}/plan`), 404],
    ["a way out, plain", () => ask(`/${token}/../../secret.txt`), 404],
    ["a way out, written in code", () => ask(`/${token}/..%2f..%2fsecret.txt`), 404],
    ["a way out, twice in code", () => ask(`/${token}/%252e%252e%252fsecret.txt`), 404],
    ["a link that leads out", () => ask(`/${token}/out.js`), 404],
    ["a null byte", () => ask(`/${token}/a.js%00.html`), 404],
    ["a broken code", () => ask(`/${token}/%zz`), 400],
    ["a folder", () => ask(`/${token}/.`), 200],
    ["another method", () => ask(`/${token}/plan`, [], { method: "DELETE" }), 405],
    ["writing the page", () => ask(`/${token}/a.js`, ["Content-Length: 0"], { method: "PUT" }), 405],
  ])("answers %s as it should", async (_, send, status) => {
    const answer = await send();
    expect(statusOf(answer)).toBe(status);
    expect(answer).not.toContain("secret");
    if (status >= 400) expect(answer).not.toContain("Shed roof");
  });

  it("saves whole, keeps the file's rights, and knows its own saving again", async () => {
    const before = statSync(plan).mode;
    const answer = await put(`${smallPlan}# one\n`, [`If-Match: ${await tag()}`]);
    expect(statusOf(answer)).toBe(204);
    expect(readFileSync(plan, "utf8")).toBe(`${smallPlan}# one\n`);
    expect(statSync(plan).mode).toBe(before);
    const again = /etag: ("[0-9a-f]+")/i.exec(answer)?.[1] ?? "";
    expect(statusOf(await ask(`/${token}/plan`, [`If-None-Match: ${again}`]))).toBe(304);
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it("does not overwrite what another program wrote, and hands it over", async () => {
    const stale = await tag();
    writeFileSync(plan, `${smallPlan}# by hand\n`);
    const answer = await put("mine", [`If-Match: ${stale}`]);
    expect(statusOf(answer)).toBe(412);
    expect(bodyOf(answer)).toContain("# by hand");
    expect(readFileSync(plan, "utf8")).toBe(`${smallPlan}# by hand\n`);
  });

  it.each([
    ["without saying what it builds on", 400, async () => put("x", [])],
    ["with something else than a tag", 400, async () => put("x", ["If-Match: *"])],
    [
      "as a form, which any page may send",
      415,
      async () =>
        ask(
          `/${token}/plan`,
          [
            "Content-Length: 1",
            "Content-Type: application/x-www-form-urlencoded",
            `If-Match: ${await tag()}`,
          ],
          { method: "PUT", body: "x" },
        ),
    ],
    [
      "without a length",
      411,
      async () =>
        ask(
          `/${token}/plan`,
          ["Transfer-Encoding: chunked", "Content-Type: text/plain", `If-Match: ${await tag()}`],
          {
            method: "PUT",
            body: "1\r\nx\r\n0\r\n\r\n",
          },
        ),
    ],
    [
      "of 21 MB",
      413,
      async () =>
        ask(
          `/${token}/plan`,
          ["Content-Length: 21000000", "Content-Type: text/plain", `If-Match: ${await tag()}`],
          {
            method: "PUT",
            body: "x",
          },
        ),
    ],
    [
      "that is no UTF-8",
      500,
      async () => {
        const head = `PUT /${token}/plan HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: text/plain\r\nContent-Length: 2\r\nIf-Match: ${await tag()}\r\nConnection: close\r\n\r\n`;
        return new Promise<string>((resolve) => {
          const socket = connect(port, "127.0.0.1", () =>
            socket.write(Buffer.concat([Buffer.from(head), Buffer.from([0xff, 0xfe])])),
          );
          let back = "";
          socket.on("data", (part) => {
            back += String(part);
          });
          socket.on("close", () => resolve(back));
        });
      },
    ],
  ])("refuses a plan %s, and leaves the file alone", async (_, status, send) => {
    const before = readFileSync(plan, "utf8");
    expect(statusOf(await send())).toBe(status);
    expect(readFileSync(plan, "utf8")).toBe(before);
  });

  it("leaves the file alone when the plan is cut off on its way", async () => {
    const before = readFileSync(plan, "utf8");
    const head = `PUT /${token}/plan HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: text/plain\r\nContent-Length: 500\r\nIf-Match: ${await tag()}\r\n\r\n`;
    await raw(`${head}format: 1\n`, true);
    expect(readFileSync(plan, "utf8")).toBe(before);
    expect(statusOf(await ask(`/${token}/plan`))).toBe(200);
  });

  it("goes on when the file is gone, and says so", async () => {
    const text = readFileSync(plan, "utf8");
    rmSync(plan);
    const answer = await ask(`/${token}/plan`);
    expect(statusOf(answer)).toBe(500);
    expect(bodyOf(answer)).toContain("The file is not there any more. Put it back");
    writeFileSync(plan, text);
    expect(statusOf(await ask(`/${token}/plan`))).toBe(200);
  });
});

describe("boundFile", () => {
  it("follows a link once, so that saving goes where the reading came from", () => {
    const link = join(folder, "link.plan.yaml");
    symlinkSync(plan, link);
    const file = boundFile(link);
    const { text, tag: read } = file.read();
    expect(file.save(`${text}# by the link\n`, read).kind).toBe("saved");
    expect(readFileSync(plan, "utf8")).toContain("# by the link");
    expect(readFileSync(link, "utf8")).toBe(readFileSync(plan, "utf8"));
  });
});
