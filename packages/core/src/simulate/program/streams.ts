import { streamText } from "../../sampling/index.ts";
import type { Model } from "../model.ts";

/**
 * The texts that a program's draws are seeded from: of each slot, of each entry, of each group. The words of ten blocks,
 * 160 bytes, stand in that order (`wordsOfSlot` ...).
 */
export function streamsOf(model: Model, seed: string): string[] {
  return [
    ...model.slots.map(({ item, purpose }) => streamText(seed, item, purpose)),
    ...model.register.map(({ item }) => streamText(seed, item, "occurs")),
    ...model.groups.map(({ name }) => streamText(seed, `group:${name}`, "occurs")),
  ];
}

/** Bytes of the words of ten blocks of all streams. */
export function bytesOfWords({ slots, register, groups }: Model): number {
  return 160 * (slots.length + register.length + groups.length);
}

export const wordsOfSlot = (slot: number): number => 160 * slot;
export const wordsOfEntry = ({ slots }: Model, entry: number): number => 160 * (slots.length + entry);
export const wordsOfGroup = ({ slots, register }: Model, group: number): number =>
  160 * (slots.length + register.length + group);
