import { readFileSync } from "node:fs";
import { stringify } from "yaml";
import type { PlanDocument } from "../../oracle/document.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** Beyond this the cases take longer than they find. */
const MOST = 1000;

/** Correct plans of one to four tasks, by somebody who wrote them from the page of the format; the short ones. */
export const documents: readonly PlanDocument[] = Array.from({ length: 400 }, (_, index) =>
  randomPlanDocument(seededRng(9000 + index), { tasks: [1, 4] }),
).filter((document) => JSON.stringify(document).length < MOST);

const file = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");

/** A plan with every key there is, which takes the longest to read; it comes less often. */
const COMPLETE = file("tests/contract/plan/fixtures/complete.plan.yaml");
const MINIMAL = file("examples/minimal.plan.yaml");

/** The same plans as a person writes them: in blocks, in brackets, with comments, and the two of files. */
export const yamlTexts: readonly string[] = [
  ...documents.map((document, index) =>
    index % 3 === 0
      ? stringify(document, { collectionStyle: "flow" })
      : `# plan ${index}\n${stringify(document)}`,
  ),
  MINIMAL,
  COMPLETE,
];
export const jsonTexts: readonly string[] = documents.map((document, index) =>
  JSON.stringify(document, undefined, index % 2 === 0 ? 2 : undefined),
);
