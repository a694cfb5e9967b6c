/** Per cent by which past projects of a kind took longer or cost more than their early estimate. */
export interface UpliftBounds {
  name: string;
  /** `[upper, lower]`: before any risk is managed, and where risks are managed as well as they were. */
  duration?: readonly [upper: number, lower: number];
  capital?: readonly [upper: number, lower: number];
  /** Outsourcing: of the running cost. */
  running?: readonly [upper: number, lower: number];
}

/**
 * Source: Mott MacDonald (2002), "Review of Large Public Procurement in the UK", for HM Treasury, Table 2; the same
 * values stand in HM Treasury, Supplementary Green Book Guidance: Optimism Bias, Table 1. Read. The sample is UK public
 * procurement of about 1980 to 2000: fifty projects (number recalled from memory).
 */
export const UPLIFT_BOUNDS = {
  "non-standard-buildings": { name: "Non-standard buildings", duration: [39, 2], capital: [51, 4] },
  "standard-buildings": { name: "Standard buildings", duration: [4, 1], capital: [24, 2] },
  "non-standard-civil-engineering": {
    name: "Non-standard civil engineering",
    duration: [25, 3],
    capital: [66, 6],
  },
  "standard-civil-engineering": { name: "Standard civil engineering", duration: [20, 1], capital: [44, 3] },
  "equipment-or-development": { name: "Equipment or development", duration: [54, 10], capital: [200, 10] },
  outsourcing: { name: "Outsourcing", running: [41, 0] },
} as const satisfies Record<UpliftKind, UpliftBounds>;
/** A kind of project with published uplifts for optimism. */
export type UpliftKind =
  | "non-standard-buildings"
  | "standard-buildings"
  | "non-standard-civil-engineering"
  | "standard-civil-engineering"
  | "equipment-or-development"
  | "outsourcing";

/**
 * Per cent on the capital cost by stage of appraisal, the third stage having the firmest design; no value where the
 * table has none. Source: Transport Scotland, Scottish Transport Appraisal Guidance, Technical Database, Table 13.4
 * (from Flyvbjerg 2004 and Mott MacDonald 2002). Read.
 */
export const STAGE_UPLIFTS = {
  roads: { name: "Roads", capital: [44, 15, 3] },
  "fixed-links": { name: "Fixed links (bridges, tunnels)", capital: [66, 23, 6] },
  "building-projects": { name: "Building projects", capital: [51, undefined, 4] },
  "it-projects": { name: "IT projects", capital: [200, undefined, 10] },
} as const satisfies Record<StageKind, { name: string; capital: readonly (number | undefined)[] }>;
/** A kind of project with uplifts by stage. */
export type StageKind = "roads" | "fixed-links" | "building-projects" | "it-projects";
