import type { Finding } from "@leeway/core";
import { plainText } from "./plainText.ts";

/** What a finding says, in one run of sentences. */
export function findingWords({ message }: Pick<Finding, "message">): string {
  return plainText(message);
}
