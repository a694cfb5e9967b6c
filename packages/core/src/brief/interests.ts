import type { QuestionKey } from "./types.ts";

/** What somebody looks for, told by words in their role, interest and note, and the questions it brings forward. */
export interface InterestRule {
  /** Beginnings of words, in lower case. */
  words: readonly string[];
  /** In the order they are answered. */
  questions: readonly QuestionKey[];
}

/**
 * Whose eye falls on what. Common practice, no source: change it here, and nowhere else. A rule applies when one of its
 * words begins a word of the approver's role, interest or note; rules are taken in the order in which their words come
 * up there, interest first.
 */
export const interestRules: readonly InterestRule[] = [
  {
    words: ["financ", "money", "budget", "treasur", "cost", "cash", "audit", "reserve", "price"],
    questions: ["afford", "cut", "level", "benefit", "slip", "responses"],
  },
  {
    words: ["safe", "clinic", "medic", "patient", "health", "inspect", "quality", "test", "radiat"],
    questions: ["scope", "drivers", "assumptions", "earlier", "slip"],
  },
  {
    words: ["grant", "donor", "condition", "fund", "lender", "regulat", "authority", "complian", "contract"],
    questions: ["conditions", "afford", "assumptions", "slip", "back"],
  },
  {
    words: ["board", "chair", "sponsor", "reputation", "name", "director", "public", "announce", "date"],
    questions: ["level", "gap", "earlier", "slip", "benefit", "back"],
  },
  {
    words: ["oper", "staff", "people", "team", "union", "volunteer", "crew", "workforce", "roster"],
    questions: ["people", "drivers", "estimates", "earlier"],
  },
  {
    words: ["user", "customer", "rider", "member", "passenger", "visitor", "access", "communit", "neighbour"],
    questions: ["scope", "slip", "conditions", "assumptions"],
  },
  {
    words: ["engineer", "technic", "architect", "supplier", "build", "design", "deliver"],
    questions: ["estimates", "drivers", "gap", "people"],
  },
];

/** Asked by everybody, in this order, where nothing has brought them forward. */
export const everybody: readonly QuestionKey[] = [
  "level",
  "gap",
  "drivers",
  "earlier",
  "cut",
  "responses",
  "slip",
  "afford",
  "estimates",
  "before",
];
