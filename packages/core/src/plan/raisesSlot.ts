import type { RegisterEntry } from "./types.ts";

/**
 * Whether the adopted responses make an entry of a group likelier than before, which the plan format forbids: its
 * slot of the group's draw would reach into the next one's.
 */
export function raisesSlot({ group, probability: own, responses }: RegisterEntry): boolean {
  if (group === undefined || own === 0) return false;
  let after = own;
  for (const { adopted, probability } of responses) {
    if (adopted && probability !== undefined) after *= probability / own;
  }
  return after > own + 1e-9;
}
