/** Which stretch of the whole work each question of a brief is, roughly, 0 to 1. */
export const briefParts = {
  forecast: { from: 0, to: 0.08 },
  explain: { from: 0.08, to: 0.72 },
  responses: { from: 0.72, to: 0.92 },
  confidence: { from: 0.92, to: 0.96 },
  assumptions: { from: 0.96, to: 1 },
} as const;
