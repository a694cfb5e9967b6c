import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** Names an event of a plan for good: from the plan's title, what it is and whose, never from a date that may move. */
export function uidOf(plan: { title: string }, kind: string, id: string): string {
  const whose = bytesToHex(sha256(utf8ToBytes(plan.title))).slice(0, 12);
  return `${kind}-${id}-${whose}@leeway`;
}
