import type { Fault, SourceTree } from "./node.ts";
import { readJson } from "./readJson.ts";
import { readYaml } from "./readYaml.ts";
import { sizeFault } from "./sizeFault.ts";

/**
 * Reads a text as JSON where it is JSON, as YAML 1.2 otherwise. JSON has its own path because it is an
 * order of magnitude faster (`npm run bench` tells how long that takes).
 */
export function readSource(text: string): SourceTree {
  const tooLarge = sizeFault(text);
  if (tooLarge !== undefined) return { text, faults: [tooLarge], brokenFrom: 0 };
  const encoding = wrongEncoding(text);
  if (encoding !== undefined) return { text, faults: [encoding], brokenFrom: 0 };
  if (/^\uFEFF?\s*$/.test(text)) {
    const fault = { code: "empty", at: 0, received: "", rule: "The document is empty.", remedy: STARTER };
    return { text, faults: [fault], brokenFrom: 0 };
  }
  if (!/^\uFEFF?\s*[{[]/.test(text)) return readYaml(text);
  const json = readJson(text);
  if (json.root !== undefined || json.faults.some((fault) => fault.code === "too-deep")) return json;
  const yaml = readYaml(text);
  // Braces may be YAML's; where it is neither, a document that begins `{"` was meant to be JSON.
  return yaml.faults.length > 0 && /^\uFEFF?\s*\{\s*"/.test(text) ? json : yaml;
}

const STARTER = "Begin with `format: 1`, `title`, `start` and `tasks`.";

function wrongEncoding(text: string): Fault | undefined {
  const at = text.indexOf("\u0000");
  if (at < 0) return undefined;
  return {
    code: "encoding",
    at,
    received: "a NUL character",
    rule: "A plan is UTF-8 text.",
    remedy: "Save the file as UTF-8.",
  };
}
