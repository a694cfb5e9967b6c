/**
 * Where rules come from. Page numbers are left out where the page itself was not at hand; what is marked "recalled" was
 * not read when it was written down.
 */
export const sources = {
  practice: "Common practice, no source.",
  /** Thresholds recalled; the limits of 5 % and 0.95 read at dau.edu and in the guide's appendix VII. */
  assessment: (section: string) =>
    `Fourteen-point schedule assessment, DCMA-EA PAM 200.1 (October 2012), section ${section} (threshold recalled from memory).`,
  schedule: (practice: string) => `GAO Schedule Assessment Guide, GAO-16-89G (2015), ${practice}.`,
  cost: (chapter: string) => `GAO Cost Estimating and Assessment Guide, GAO-20-195G (2020), ${chapter}.`,
  shock: "NASA Schedule Management Handbook (2024), section 6.2: zero, then lengthen (read in a digest).",
  index: "Critical path length index, Defense Acquisition University, dau.edu; DCMA-EA PAM 200.1, 4.13.",
  joint: "NASA NPR 7120.5 and GAO-16-89G, best practice 8, on stating the chance of a date.",
  format: "The plan format.",
} as const;
