import type { Fault } from "./node.ts";

/** A plan of 200,000 tasks; beyond it the memory of a small machine would not do. */
const MOST_CHARACTERS = 20_000_000;
/**
 * The parser of YAML takes up to 2 kB of memory for each of its signs, text between them next to nothing (measured: a
 * million lines of `k: 1`, of `a`, of `- { id: a }`). This many are 50,000 tasks.
 */
const MOST_SIGNS = 1_000_000;

const fault = (received: string, rule: string, remedy: string): Fault => ({
  code: "too-large",
  at: 0,
  received,
  rule,
  remedy,
});

/** What is wrong with the size of a text, before anything is made of it. */
export function sizeFault(text: string): Fault | undefined {
  if (text.length <= MOST_CHARACTERS) return undefined;
  const rule = "A plan of more than 20 million characters is not read.";
  return fault(
    `${text.length} characters`,
    rule,
    "Make several plans of it, or leave out what no plan needs.",
  );
}

/** ... of a text that is to be read as YAML. */
export function yamlSizeFault(text: string): Fault | undefined {
  if (text.length <= MOST_SIGNS) return undefined;
  let signs = 0;
  for (let at = 0; at < text.length; at++) if (SIGNS[text.charCodeAt(at)] === 1) signs++;
  if (signs <= MOST_SIGNS) return undefined;
  const rule = "A plan of more than a million lines, commas, colons and other signs is not read as YAML.";
  return fault(`${signs} signs`, rule, "Write it as JSON, or make several plans of it.");
}

const SIGNS = new Uint8Array(0x10000);
for (const sign of "\n\r\t,:[]{}-?&*!|>#%@`\"'") SIGNS[sign.charCodeAt(0)] = 1;
