// Files in other encodings. Byte order marks: the Unicode Standard, section 23.8; ISO 8859-1; both from memory. That a plan
// is UTF-8 is the project's own rule.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { leeway, smallPlan } from "../../contract/command/leeway.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const text = smallPlan.replace("title: ", "title: Café ");
const swapped = (bytes: Buffer): Buffer => Buffer.from(bytes).swap16();
const marked = `\uFEFF${text}`;

it.each([
  ["UTF-16, little end first", Buffer.from(text, "utf16le")],
  ["UTF-16, little end first, marked", Buffer.from(marked, "utf16le")],
  ["UTF-16, big end first", swapped(Buffer.from(text, "utf16le"))],
  ["UTF-16, big end first, marked", swapped(Buffer.from(marked, "utf16le"))],
  ["UTF-32", Buffer.from(Uint32Array.from(marked, (char) => char.codePointAt(0) ?? 0).buffer)],
  ["Latin 1", Buffer.from(text, "latin1")],
  ["a picture", Buffer.from("89504e470d0a1a0a0000000d49484452", "hex")],
] as const)("%s is refused, with the way out", async (_, bytes) => {
  const cwd = temporaryFolder();
  writeFileSync(join(cwd, "p.yaml"), bytes);
  const { code, out, err } = await leeway(["forecast", "p.yaml", "--iterations", "50"], { cwd });
  expect({ code, out }).toEqual({ code: 2, out: "" });
  expect(err).toMatch(/^p\.yaml: .*UTF-8.*Save .*\[not-text\]$/m);
});

it("UTF-8 is read, with its mark or without", async () => {
  const cwd = temporaryFolder({ "bare.yaml": text, "marked.yaml": marked });
  const of = async (name: string) =>
    JSON.parse((await leeway(["forecast", name, "--iterations", "50", "--json"], { cwd })).out);
  const [bare, again] = [await of("bare.yaml"), await of("marked.yaml")];
  expect(bare.plan.title).toMatch(/^Café /);
  expect(again.finish).toEqual(bare.finish);
});
