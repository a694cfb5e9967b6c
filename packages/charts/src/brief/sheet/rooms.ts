import type { Room } from "./types.ts";

/** As much as a sheet says where nothing has to fit: Markdown, and the first try of a page. */
export const roomy: Room = {
  name: 90,
  text: 420,
  responses: 4,
  assumptions: 3,
  objections: 3,
  triggers: 6,
  scope: 8,
  approvers: 6,
  alternatives: 3,
  benefits: 4,
};

/** From the most that is said to the least: the first that fits a page is taken. */
export const rooms: readonly Room[] = [
  roomy,
  { ...roomy, name: 75, text: 280, scope: 7 },
  { ...roomy, name: 64, text: 200, scope: 6, objections: 2, benefits: 3, triggers: 5 },
  {
    ...roomy,
    name: 54,
    text: 140,
    scope: 4,
    objections: 2,
    responses: 3,
    benefits: 2,
    triggers: 4,
    alternatives: 2,
    approvers: 5,
  },
  {
    name: 44,
    text: 100,
    responses: 3,
    assumptions: 3,
    objections: 1,
    triggers: 4,
    scope: 3,
    approvers: 4,
    alternatives: 2,
    benefits: 1,
  },
  {
    name: 36,
    text: 64,
    responses: 2,
    assumptions: 2,
    objections: 1,
    triggers: 3,
    scope: 2,
    approvers: 4,
    alternatives: 1,
    benefits: 1,
  },
];
